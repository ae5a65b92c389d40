import { useState, type FormEvent } from 'react'
import { readNumber, wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopFields } from '#model/shop-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { useRefused } from '#web/parts/use-refused.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

type Limits = ShopFields['limitsUm']
const uses = [['drilling', 'drilling'], ['milling', 'milling'], ['fineMilling', 'fine milling'], ['grinding', 'grinding']] as const satisfies readonly (readonly [keyof Limits, string])[]

/** How far apart the heights of two mates may be for each use, in micrometres: the shop's own to change. */
export function LimitSettings({ limitsUm }: { readonly limitsUm: Limits }) {
  const units = useUnits()
  const before = textsOf(limitsUm, (um) => wordNumber(um, units.decimalMark))
  const [typed, setTyped] = useState(before)
  const read = readFields<Limits>(textsOf(typed, (text) => () => readLimitUm(text))), [wrong, setTried] = useRefused(read)
  const unchanged = uses.every(([use]) => typed[use] === before[use])
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    setTried(false)
    writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { limitsUm: read.values } }] })
    offerUndo('Limits for each use: changed.', () => { writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { limitsUm } }] }); setTyped(before) })
  }
  return (
    <section>
      <h2>Limits for each use</h2>
      <p>The largest difference of two mates that still counts as matched. Common practice, no source: change them to your own.</p>
      <form onSubmit={save} noValidate>
        <div className="field-list">
          {uses.map(([use, name]) => (
            <NumberField
              key={use} label={`${name}, µm`} value={typed[use]} onChange={(text) => setTyped({ ...typed, [use]: text })}
              error={wrong[use] ? sayRefusal(wrong[use], units) : null}
            />
          ))}
        </div>
        <div className="actions"><button className="action" disabled={unchanged}>Save the limits</button></div>
      </form>
    </section>
  )
}

function textsOf<From, To>(from: { readonly [use in keyof Limits]: From }, make: (one: From) => To): { readonly [use in keyof Limits]: To } {
  return { drilling: make(from.drilling), milling: make(from.milling), fineMilling: make(from.fineMilling), grinding: make(from.grinding) }
}

/** @throws Refusal as `readNumber`, and `size-not-positive` */
function readLimitUm(text: string): number {
  const um = readNumber(text, 'match')
  if (um <= 0) throw new Refusal('size-not-positive', { field: 'match', given: text, needed: { above: 0 } })
  return um
}
