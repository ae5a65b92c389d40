import { useMemo, useState } from 'react'
import { chuckPicture } from '#drafting/setup/chuck-picture.ts'
import type { PictureRoom } from '#drafting/setup/scaled-piece.ts'
import { answerChuck } from '#engine/setup/chuck/answer-chuck.ts'
import { sides, type Travel } from '#engine/setup/chuck/chuck.ts'
import { readLengthMm, withUnit, wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { asked } from '#web/setup/beside/asked.ts'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { grouped } from '#web/setup/beside/grouped.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { notNamed, SheetFields, type SheetNamed } from '#web/setup/beside/sheet-named.tsx'
import { ChuckPrint } from '#web/setup/chuck/chuck-print.tsx'
import { chuckPictureFrom, type ChuckTold, sideWords } from '#web/setup/chuck/chuck-sheet-data.ts'
import { useUnits } from '#web/units.ts'

const mostShown = 12

/** A part on the magnetic chuck, blocked in by bars that lie flat. */
export function ChuckScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), rack = useMemo(() => rackHere(shop, units), [shop, units]), { bars, labelOf, slotOf, stateOf } = rack
  const [texts, setTexts] = useState({ height: '', across: '', along: '' }), [travel, setTravel] = useState<Travel>('along'), [chosen, setChosen] = useState<readonly string[] | null>(null), [named, setNamed] = useState<SheetNamed>(notNamed)
  const chuck = useMemo(() => asked(() => {
    const mm = (text: string, field: string) => readLengthMm(text, units.length, field)
    const part = { betweenJawsMm: mm(texts.across, 'part.betweenJawsMm'), alongJawsMm: mm(texts.along, 'part.alongJawsMm'), heightMm: mm(texts.height, 'part.heightMm') }
    return { part, answer: answerChuck({ part, bars, travel }) }
  }), [texts, travel, bars, units.length])
  const { answer } = 'answer' in chuck ? chuck.answer : { answer: null }
  const kinds = useMemo(() => [...grouped(bars.filter(({ id }) => answer?.serve.includes(id)), (bar) => `${labelOf(bar.id)}|${slotOf([bar.id])}|${wordLength(bar.thicknessMm, units)}|${stateOf([bar])}`)]
    .map(([key, of]) => ({ key, of })).toSorted((a, b) => b.of.length - a.of.length), [bars, answer, labelOf, slotOf, stateOf, units])
  const on = useMemo(() => (chosen ?? firstOf(kinds)).filter((key) => kinds.some((kind) => kind.key === key)), [chosen, kinds])
  const told = useMemo((): ChuckTold | null => ('answer' in chuck ? { ...chuck.answer, travel, taken: on.flatMap((key) => kinds.find((kind) => kind.key === key)!.of).slice(0, sides.length) } : null), [chuck, travel, on, kinds])
  const draw = useMemo(() => (room: PictureRoom) => chuckPicture(chuckPictureFrom(told!, labelOf), room), [told, labelOf])
  if (named.printed !== null && told !== null) return <ChuckPrint shop={shop} told={told} rack={rack} named={named} printed={named.printed} onBack={() => setNamed({ ...named, printed: null })} />
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
        <>
          <section className="beside-answer" aria-label="Answer" aria-live="polite">
            <h2>Bars {wordLength(told.answer.lowMm, units)} to {withUnit(told.answer.highMm, units)} thick, lying flat</h2>
            <p>Cover first the {listOf(told.answer.order.slice(0, 2).map((side) => sideWords[side]))}, then {listOf(told.answer.order.slice(2).map((side) => sideWords[side]))}. Holding force: {told.answer.holdingForce}.</p>
            {kinds.length === 0 ? <p className="beside-warn">No bar of the rack is that thick.</p> : null}
            <ul className="beside-rows">{told.answer.order.map((side, k) => {
              const bar = told.taken[k]
              return <li key={side}><span><strong>{k + 1} {sideWords[side]}</strong>: {bar === undefined ? 'no bar taken' : `${labelOf(bar.id)}, slot ${slotOf([bar.id])}${stateOf([bar]) || ', trusted'}`}</span></li>
            })}</ul>
          </section>
          {kinds.length === 0 ? null : <Toggles label="Bars that serve" options={kinds.slice(0, mostShown).map(({ key, of: [first, ...rest] }) => ({ value: key, label: `${rest.length > 0 ? `${rest.length + 1} × ` : ''}${labelOf(first!.id)}, slot ${slotOf([first!.id])}: ${wordLength(first!.thicknessMm, units)} thick${first!.thicknessStanding === 'marked' ? ', as marked' : ''}${stateOf([first!])}` }))} chosen={on} onChange={setChosen} />}
          <p className="small">Demagnetise them before they go back to the rack: chips stick to magnetised bars.</p>
          <SheetFields named={named} onChange={setNamed} isReady={told.taken.length > 0} />
          <ShowSum sums={told.answer.sum} />
        </>
      ) : null}
      <Cautions situations={['magnetic chuck']} />
    </BesidePage>
  )
}

/** Bars of which there are most, as many as the four sides need. */
function firstOf(kinds: readonly { readonly key: string; readonly of: readonly unknown[] }[]): readonly string[] {
  let many = 0
  return kinds.flatMap(({ key, of }) => { if (many >= sides.length) return []; many += of.length; return [key] })
}
