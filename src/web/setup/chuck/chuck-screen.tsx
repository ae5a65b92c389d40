import { useMemo, useState } from 'react'
import { chuckPicture } from '#drafting/setup/chuck-picture.ts'
import { answerChuck } from '#engine/setup/chuck/answer-chuck.ts'
import type { Travel } from '#engine/setup/chuck/chuck.ts'
import { readLengthMm, withUnit, wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { asked } from '#web/setup/beside/asked.ts'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { grouped } from '#web/setup/beside/grouped.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { useUnits } from '#web/units.ts'

const sideWords = { left: 'left end', right: 'right end', front: 'front', back: 'back' } as const

/** A part on the magnetic chuck, blocked in by bars that lie flat. */
export function ChuckScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), { bars, labelOf, slotOf } = useMemo(() => rackHere(shop, units), [shop, units])
  const [texts, setTexts] = useState({ height: '', across: '', along: '' }), [travel, setTravel] = useState<Travel>('along')
  const chuck = useMemo(() => asked(() => {
    const mm = (text: string, field: string) => readLengthMm(text, units.length, field)
    const part = { betweenJawsMm: mm(texts.across, 'part.betweenJawsMm'), alongJawsMm: mm(texts.along, 'part.alongJawsMm'), heightMm: mm(texts.height, 'part.heightMm') }
    return { part, ...answerChuck({ part, bars, travel }) }
  }), [texts, travel, bars, units.length])
  const told = 'answer' in chuck ? chuck.answer : null, first = bars.find(({ id }) => id === told?.serve[0])
  const draw = useMemo(() => (room: { readonly widthMm: number; readonly heightMm: number }) => chuckPicture({
    title: 'On the magnetic chuck', description: 'The part blocked in, from the side and from above.', acrossMm: told!.part.betweenJawsMm, alongMm: told!.part.alongJawsMm, heightMm: told!.part.heightMm,
    barUpMm: first?.thicknessMm ?? told!.lowMm, barWideMm: Math.min(first?.heightMm ?? 25, 1.2 * told!.part.betweenJawsMm), order: told!.order, travel, travels: `travel ${travel}`, chuck: 'magnetic chuck',
  }, room), [told, first, travel])
  const flat = grouped(bars.filter(({ id }) => told?.serve.includes(id)), (bar) => `${labelOf(bar.id)}|${slotOf([bar.id])}|${wordLength(bar.thicknessMm, units)}`)
  return (
    <BesidePage title="On the magnetic chuck" typedFirst sheet={told ? <RoomDrawing draw={draw} tall={0.95} mostMm={155} /> : <p className="small">The part and the bars around it are drawn here as soon as its sizes are there.</p>}>
      <p>Bars lie flat around the part, across the poles, lower than the part and at least half its height: they keep it from sliding and tipping.</p>
      <div className="field-list">
        <LengthField label="height" more="of the part" value={texts.height} onChange={(height) => setTexts({ ...texts, height })} />
        <LengthField label="along" more="of the part" value={texts.along} onChange={(along) => setTexts({ ...texts, along })} />
        <LengthField label="across" more="of the part" value={texts.across} onChange={(across) => setTexts({ ...texts, across })} />
      </div>
      <Choice label="The table travels" value={travel} onChange={setTravel} options={[{ value: 'along', label: 'along the part' }, { value: 'across', label: 'across it' }]} />
      {'refusal' in chuck && Object.values(texts).every((text) => text.trim() !== '') ? <p className="beside-warn" role="alert">{sayRefusal(chuck.refusal, units)}</p> : null}
      {told ? (
        <section className="beside-answer" aria-label="Answer" aria-live="polite">
          <h2>Bars {wordLength(told.lowMm, units)} to {withUnit(told.highMm, units)} thick, lying flat</h2>
          <p>Cover first the {listOf(told.order.slice(0, 2).map((side) => sideWords[side]))}, then {listOf(told.order.slice(2).map((side) => sideWords[side]))}. Holding force: {told.holdingForce}.</p>
          {flat.size === 0 ? <p className="beside-warn">No bar of the rack is that thick.</p> : null}
          <ul className="beside-rows">{[...flat].slice(0, 12).map(([key, of]) => <li key={key}><span><strong>{of.length > 1 ? `${of.length} × ` : ''}{labelOf(of[0]!.id)}</strong>, slot {slotOf([of[0]!.id])}: {wordLength(of[0]!.thicknessMm, units)} thick{of[0]!.thicknessStanding === 'marked' ? ', as marked' : ''}</span></li>)}</ul>
          <p className="small">Demagnetise them before they go back to the rack: chips stick to magnetised bars.</p>
          <ShowSum sums={told.sum} />
        </section>
      ) : null}
      <Cautions situations={['magnetic chuck']} />
    </BesidePage>
  )
}
