import { addressSvg } from '#tasks/access/draw-address.ts'

export type TrustFacts = {
  /** Of the shop, https, the likeliest first. */
  readonly addresses: readonly string[]
  /** Null: no authority of the shop's own stands behind what the server shows. */
  readonly fingerprint: string | null
}

/** Walks a device through trusting the shop's authority. A page of its own, without scripts: it is what a device sees that trusts nothing yet. */
export function trustPage({ addresses, fingerprint }: TrustFacts): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>Trust this shop · Twinrest</title>
<style>${style}</style>
</head>
<body><main>
${fingerprint === null ? withoutAuthority : withAuthority(addresses, fingerprint)}
</main></body>
</html>
`
}

const withoutAuthority = `<h1>This shop has no authority of its own</h1>
<p>Whoever keeps the machine it runs on can make one there, and start the shop again:</p>
<p><code>twinrest certificate</code><br><code>twinrest serve --lan</code></p>
<p>Where the shop was given a certificate from elsewhere, devices trust it already and there is nothing to do here.</p>`

function withAuthority(addresses: readonly string[], fingerprint: string): string {
  const plain = addresses.map((address) => `${address.replace(/^https:/, 'http:')}/trust`)
  return `<h1>Make this device trust the shop</h1>
<p>Then it works without the network, can keep Twinrest like an app, and gauges can be read by cable. Done once on each device.</p>
<ol>
<li><h2>Fetch the authority of the shop</h2>
<p><a class="action" href="/trust/authority.crt" download="twinrest-authority.crt">Fetch the file</a></p></li>
<li><h2>Compare its fingerprint</h2>
<p class="print">${groups(fingerprint)}</p>
<p>On the shop’s own machine the same stands under Shop, Devices, and <code>twinrest certificate</code> says it. If one group differs, stop: somebody else answers in its place.</p></li>
<li><h2>Let the device trust it</h2>
<ul>
<li>Most tablets and phones: in the settings search for <b>certificate</b>, choose <b>CA certificate</b> (not for networks, not for apps), and the file.</li>
<li>Where the settings say <b>profile downloaded</b>: install it there; then, under General, About, <b>Certificate trust settings</b>, switch it on.</li>
<li>A PC: open the file, <b>install certificate</b>, among the <b>trusted root authorities</b>.</li>
<li>A browser that keeps certificates of its own: its settings, certificates, <b>authorities</b>, import; trust it for websites.</li>
</ul>
<p>The names differ a little from one system to another. The authority can vouch for private addresses and this shop’s own names alone, for no other site.</p></li>
<li><h2>Open the shop</h2>
<p class="list">${addresses.map((address) => `<a class="action" href="${address}/">${address.replace('https://', '')}</a>`).join('')}</p>
<p>If the browser still warns, close it altogether and open it again. Do not go on past the warning: offline work stays switched off then.</p></li>
</ol>
<h2>The next device</h2>
<p>Scan this with it to come to this page.</p>
${plain[0] === undefined ? '' : `<div class="code">${addressSvg(plain[0], 'This page for another device', 'trust')}<p>${plain[0]}</p></div>`}
<p>When a device leaves the shop, revoke it under Shop, Devices, and take the authority away where it was put in.</p>`
}

/** `AA BB CC DD`, four to a group. */
function groups(fingerprint: string): string {
  return fingerprint.split(':').reduce<string[]>((all, byte, at) => (at % 4 === 0 ? [...all, byte] : [...all.slice(0, -1), `${all.at(-1)} ${byte}`]), []).map((group) => `<span>${group}</span>`).join(' ')
}

const style = `
:root { color-scheme: light dark; background: light-dark(#f6f4ee, #15191b); color: light-dark(#1d2326, #ece9e1); font: 400 17px/1.45 system-ui, sans-serif; }
* { box-sizing: border-box; }
body { margin: 0; } main { max-width: 720px; margin: 0 auto; padding: 20px 16px 60px; }
h1 { font-size: 1.55rem; line-height: 1.2; margin: 0 0 12px; } h2 { font-size: 1.15rem; margin: 0 0 8px; }
ol { list-style: none; counter-reset: step; margin: 20px 0; padding: 0; }
ol > li { counter-increment: step; position: relative; padding: 16px 0 16px 44px; border-top: 2px solid light-dark(#1d2326, #ece9e1); }
ol > li::before { content: counter(step); position: absolute; left: 0; top: 12px; font-size: 1.55rem; font-weight: 700; }
ul { margin: 0 0 12px; padding-left: 20px; } li > p:last-child { margin-bottom: 0; } ul li { margin-bottom: 8px; }
p { margin: 0 0 12px; } code { font-size: 0.95em; }
.action { display: inline-flex; align-items: center; min-height: 72px; padding: 8px 20px; border: 2px solid light-dark(#1f4aa8, #8db1ff); color: light-dark(#1f4aa8, #8db1ff); font-weight: 700; text-decoration: none; overflow-wrap: anywhere; }
.list { display: flex; flex-wrap: wrap; gap: 12px; }
.print { display: flex; flex-wrap: wrap; gap: 4px 20px; font: 700 1.1rem/1.5 ui-monospace, monospace; }
.code { display: inline-block; max-width: 100%; padding: 8px; background: #fff; color: #000; overflow-wrap: anywhere; } .code p { margin: 8px 0 0; }
.code svg { display: block; max-width: 100%; height: auto; }
`
