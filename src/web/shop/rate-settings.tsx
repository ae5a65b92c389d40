import { useState, type FormEvent } from 'react'
import { noRates, type Rates } from '#model/rates.ts'
import type { Units } from '#model/shop-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { useRefused } from '#web/parts/use-refused.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { amountText, readAbove0, readAmount } from '#web/shop/shop-money.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

type Texts = { readonly hand: string; readonly day: string; readonly hardening: string; readonly away: string; readonly cutter: string }
type Read = { hand: number | null; day: number | null; hardening: number | null; away: number | null; cutter: number | null }

/** What making costs, in the shop's own money; jobs begun before keep the rates they were planned with. */
export function RateSettings({ rates }: { readonly rates: Rates | null }) {
  const units = useUnits(), [texts, setTexts] = useState<Texts>(() => textsOf(rates ?? noRates, units))
  const read = readFields<Read>({
    hand: () => readAmount(texts.hand, 'handPerHour'), day: () => readAbove0(texts.day, 'hoursPerDay'), hardening: () => readAmount(texts.hardening, 'hardening.cost'), away: () => readAmount(texts.away, 'hardening.days'), cutter: () => readAmount(texts.cutter, 'cutterCost'),
  }), [wrong, setTried] = useRefused(read)
  const put = (part: Partial<Texts>) => setTexts({ ...texts, ...part }), say = (field: keyof Read) => { const refusal = wrong[field]; return refusal ? sayRefusal(refusal, units) : null }
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    setTried(false)
    const { hand, day, hardening, away, cutter } = read.values, making: Rates = { handPerHour: hand, hoursPerDay: day, hardening: hardening === null && away === null ? null : { cost: hardening, days: away ?? 0 }, cutterCost: cutter }
    writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { making } }] })
    offerUndo('What making costs: changed.', () => { writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { making: rates } }] }); setTexts(textsOf(rates ?? noRates, units)) })
  }
  return (
    <section>
      <h2>What making costs</h2>
      <form className="card-head" onSubmit={save} noValidate>
        <div className="field-list">
          <NumberField label="a person’s hour" value={texts.hand} ifEmpty="not priced" onChange={(hand) => put({ hand })} error={say('hand')} />
          <NumberField label="hours a day" value={texts.day} ifEmpty="6" onChange={(day) => put({ day })} error={say('day')} />
          <NumberField label="hardening, a lot" value={texts.hardening} ifEmpty="nobody does it" onChange={(hardening) => put({ hardening })} error={say('hardening')} />
          <NumberField label="days it is away" value={texts.away} onChange={(away) => put({ away })} error={say('away')} />
          <NumberField label="a cutter for hard milling" value={texts.cutter} ifEmpty="not priced" onChange={(cutter) => put({ cutter })} error={say('cutter')} />
        </div>
        <div className="actions"><button className="action">Save what it costs</button></div>
      </form>
    </section>
  )
}

function textsOf({ handPerHour, hoursPerDay, hardening, cutterCost }: Rates, units: Units): Texts {
  return { hand: amountText(handPerHour, units), day: amountText(hoursPerDay, units), hardening: amountText(hardening?.cost ?? null, units), away: amountText(hardening?.days ?? null, units), cutter: amountText(cutterCost, units) }
}
