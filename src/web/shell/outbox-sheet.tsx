import { sayRefusal } from '#words/say-refusal.ts'
import { isPlainHttp } from '#web/access.ts'
import { openClashes } from '#web/keep/open-clashes.ts'
import { Sheet } from '#web/parts/sheet.tsx'
import { ClashChoice } from '#web/shell/clash-choice.tsx'
import { sayEntry } from '#web/shell/say-entry.ts'
import { outbox, useShop } from '#web/shop-store.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** Everything between this device and the shop: what was refused, what two people both changed, what still waits. */
export function OutboxSheet({ onClose }: { readonly onClose: () => void }) {
  const { shop, server, outbox: { waiting, aside, trouble, unkept } } = useShop(), units = useUnits(), { gauge } = useTerms()
  return (
    <Sheet title="Saved" onClose={onClose}>
      {isPlainHttp ? (
        <section className="boxed">
          <h3>Plain http</h3>
          <p>This device reaches the shop by plain http: it works only while the shop answers, cannot keep Twinrest like an app, and reads no {gauge} by cable. Others on the network could read along. What you do here is kept on the device until the shop has it, but this page does not open again while the shop is away.</p>
          <p><a href="/trust">How https comes to this shop</a></p>
        </section>
      ) : null}
      {unkept ? <p className="status--danger">This browser keeps nothing on the device (a private window, or a full disk). What waits below is lost if this page is closed.</p> : null}
      {aside.map((one) => (
        <section key={one.seq} className="boxed">
          <h3>Not taken by the shop</h3>
          <p className="name-text">{sayEntry(one.entry, shop)}</p>
          <p className="status--danger name-text">{sayRefusal(one.refusal, units)}</p>
          <button type="button" className="press" onClick={() => outbox.forgetAside(one)}>Seen, put it away</button>
        </section>
      ))}
      {shop ? openClashes(shop).map((clash) => <ClashChoice key={`${clash.record} ${clash.field}`} clash={clash} />) : null}
      {waiting.length > 0 ? (
        <section>
          <h3>On this device, not yet in the shop</h3>
          <ul className="rows">{waiting.map(({ entry }, at) => <li key={at} className="name-text">{sayEntry(entry, shop)}</li>)}</ul>
          <p className="small">{trouble !== null && typeof trouble === 'object' && 'unable' in trouble ? `${sayRefusal(trouble.unable, units)} What waits here is kept on this device and tried again by itself.` : sayTrouble(trouble)}</p>
          <button type="button" className="press" onClick={() => outbox.nudge()}>Try now</button>
        </section>
      ) : (
        <p>{server === 'here' ? 'Everything done here is in the shop.'
          : server === 'stranger' ? 'The shop does not let this device in. What you do here is kept on it, and sent once it is enrolled.'
          : 'Everything done here is in the shop. Its server does not answer just now; go on working, what you do is kept on this device.'}</p>
      )}
    </Sheet>
  )
}

function sayTrouble(trouble: Exclude<ReturnType<typeof outbox.now>['trouble'], { readonly unable: unknown }>): string {
  if (trouble === null) return 'Being sent.'
  if (trouble === 'stranger') return 'The shop does not let this device in. Nothing is lost: it is sent as soon as the device is enrolled.'
  if (trouble === 'away') return 'The shop’s server does not answer. It is tried again by itself; nothing is lost meanwhile.'
  return `The shop’s server failed (${trouble.fault} in its log). It is tried again by itself; nothing is lost meanwhile.`
}
