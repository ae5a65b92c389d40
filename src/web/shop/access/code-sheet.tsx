import { useEffect, useState } from 'react'
import { qrScene } from '#drafting/qr.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Sheet } from '#web/parts/sheet.tsx'
import type { Listed } from '#web/shop/access/devices.tsx'

export type Invited = { readonly code: string; readonly untilIso: string }

/** A code for one device, to scan or to type there; before it, where the device is made to trust the shop. */
export function CodeSheet({ invited: { code, untilIso }, listed, onAgain, onClose }: { readonly invited: Invited; readonly listed: Listed; readonly onAgain: () => void; readonly onClose: () => void }) {
  const minutes = useMinutesUntil(untilIso), address = addressFor(listed.addresses), { trust } = listed
  return (
    <Sheet title="Let in a device" onClose={onClose}>
      {trust && trust.addresses[0] ? (
        <section className="scan">
          <h3>1. Make it trust the shop</h3>
          <p>Scan this with the new device, or open <b className="name-text">{trust.addresses[0]}</b> on it. Once is enough; where it trusts the shop already, go on to 2.</p>
          <Scan text={trust.addresses[0]} title="Address of the page that makes a device trust the shop" />
          <p>There, compare the fingerprint with this one:</p>
          <p className="fingerprint">{trust.fingerprint.replaceAll(':', ' ')}</p>
        </section>
      ) : null}
      <section className="scan">
        <h3>{trust ? '2. Enrol it' : 'Enrol it'}</h3>
        {minutes > 0 ? (
          <>
            <p>Scan this, or open <b className="name-text">{address}</b> on the device and type the code. It lets one device in, once, within {minutes === 1 ? 'a minute' : `${minutes} minutes`}.</p>
            <p className="code-said">{code.slice(0, 4)} {code.slice(4)}</p>
            <Scan text={`${address}/shop/enrol#${code}`} title="Address with the code" />
          </>
        ) : (
          <>
            <p>The code has run out.</p>
            <div className="actions"><button type="button" className="action" onClick={onAgain}>Make another</button></div>
          </>
        )}
      </section>
    </Sheet>
  )
}

/** Always black on white, so that a dark screen can be scanned too. */
function Scan({ text, title }: { readonly text: string; readonly title: string }) {
  return <div className="qr"><Drawing scene={qrScene(text, { title, widthMm: 60 })} medium="print" /></div>
}

/** Where this page came from, if others can come the same way. */
function addressFor(addresses: readonly string[]): string {
  const own = /^(localhost|127\.0\.0\.1|\[::1\])$/.test(location.hostname)
  return own ? addresses[0] ?? location.origin : location.origin
}

function useMinutesUntil(untilIso: string): number {
  const left = () => Math.max(0, Math.ceil((Date.parse(untilIso) - Date.now()) / 60_000))
  const [minutes, setMinutes] = useState(left)
  useEffect(() => {
    setMinutes(left)
    const timer = setInterval(() => setMinutes(left), 5000)
    return () => clearInterval(timer)
    // oxlint-disable-next-line react/exhaustive-deps -- `left` reads the clock, and is made anew with `untilIso`
  }, [untilIso])
  return minutes
}
