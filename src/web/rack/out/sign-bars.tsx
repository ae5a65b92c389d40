import { isFinished } from '#model/bar.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useState } from 'react'
import { Choice } from '#web/parts/choice.tsx'
import { BringBack } from '#web/rack/out/bring-back.tsx'
import { TakeOut } from '#web/rack/out/take-out.tsx'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'

type Props = { readonly bar: RackBar; readonly group: RackGroup; readonly shop: ShopSnapshot }

/** Out and back: of mates all together unless only this one is meant. Bars that are in work or gone stay where they are. */
export function SignBars({ bar, group, shop }: Props) {
  const [alone, setAlone] = useState(false)
  if (!isFinished(bar.trust)) return null
  const whole = group.bars.filter(({ trust, record }) => isFinished(trust) && (record.where.at === 'slot') === (bar.record.where.at === 'slot'))
  const meant = alone ? [bar] : whole
  return (
    <section className="sign" aria-label="Out and back">
      {whole.length > 1 ? <Choice label="Out and back" quiet value={alone ? 'one' : 'all'} onChange={(which) => setAlone(which === 'one')} options={[{ value: 'all', label: whole.length === 2 ? 'the pair' : `all ${whole.length}` }, { value: 'one', label: 'only this one' }]} /> : null}
      {bar.record.where.at === 'slot' ? <TakeOut bars={meant} shop={shop} /> : <BringBack bars={meant} where={bar.record.where} shop={shop} />}
    </section>
  )
}
