import { useMemo, useState } from 'react'
import type { PictureRoom } from '#drafting/setup/scaled-piece.ts'
import { tablePicture } from '#drafting/setup/table-picture.ts'
import { doOverlap } from '#engine/setup/table/overlap.ts'
import { thickestAtBothMm } from '#engine/setup/table/thickest.ts'
import { withUnit, wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { asked } from '#web/setup/beside/asked.ts'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { notNamed, SheetFields, type SheetNamed } from '#web/setup/beside/sheet-named.tsx'
import { typedLength } from '#web/setup/beside/typed-length.ts'
import { HoleFields, StrapFields } from '#web/setup/table/table-fields.tsx'
import { onTable } from '#web/setup/table/on-table.ts'
import { barsFor, emptyHole, emptyTable, tableAnswered, type TableTexts } from '#web/setup/table/table-asked.ts'
import { TablePrint } from '#web/setup/table/table-print.tsx'
import { tablePictureFrom } from '#web/setup/table/table-sheet-data.ts'
import { useUnits } from '#web/units.ts'

/** A part on two bars on the table of a drill press or mill, under straps. */
export function TableScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), { pairs, stateOf } = useMemo(() => rackHere(shop, units), [shop, units])
  const [texts, setTexts] = useState<TableTexts>(emptyTable), [pairId, setPairId] = useState<string | null>(null), [named, setNamed] = useState<SheetNamed>(notNamed)
  const put = (part: Partial<TableTexts>) => setTexts({ ...texts, ...part }), putBars = (part: Partial<TableTexts>) => { setPairId(null); put(part) }
  const wanted = useMemo(() => asked(() => barsFor(texts, units.length)), [texts, units.length]), table = useMemo(() => asked(() => tableAnswered(texts, units.length)), [texts, units.length])
  const told = 'answer' in table ? table.answer : null, said = told?.answer ?? null, mostMm = 'answer' in wanted ? thickestAtBothMm(wanted.answer) : null
  const lowMm = 'answer' in wanted ? wanted.answer.lowMm : 0, fits = pairs.filter(({ thicknessMm, heightMm }) => (mostMm === null || thicknessMm <= mostMm + 1e-6) && heightMm >= lowMm - 1e-6)
  const pair = pairs.find(({ id }) => id === pairId) ?? null, typed = typedLength(texts.barHeight, units.length, 'bars[0].heightMm', null), barHeightMm = pair?.heightMm ?? typed.mm
  const drawnMm = barHeightMm ?? Math.max(lowMm, 10), isTooLow = barHeightMm !== null && barHeightMm < lowMm - 1e-6, isOverlapping = told !== null && doOverlap(told.question.bars[0]!, told.question.bars[1]!), isFouled = said?.fouledHoles.some((of) => of.length > 0) ?? false
  const draw = useMemo(() => (room: PictureRoom) => tablePicture(tablePictureFrom(told!, drawnMm, pair), room), [told, drawnMm, pair])
  const isBegun = texts.across !== '' && texts.along !== '' && texts.height !== ''
  // What is still to be typed is not told as a fault: nothing was given there.
  const refusal = typed.refused ?? ('refusal' in wanted ? wanted.refusal : 'refusal' in table && texts.thickness !== '' ? table.refusal : null)
  if (named.printed !== null && told !== null && barHeightMm !== null) return <TablePrint shop={shop} told={told} barHeightMm={barHeightMm} pair={pair} stateOf={stateOf} named={named} printed={named.printed} onBack={() => setNamed({ ...named, printed: null })} />
  return (
    <BesidePage title="On the table" typedFirst sheet={told ? <RoomDrawing draw={draw} tall={1} mostMm={165} /> : <p className="small">Part, holes and bars are drawn here as soon as their sizes are there.</p>}>
      <p>Two bars on the table of a drill press or mill, the part on them, straps above the bars. Sizes across count from the near edge.</p>
      <section className="beside-answer" aria-label="Answer" aria-live="polite">
        {mostMm === null ? null : mostMm <= 0 ? <p className="beside-warn">No bar can lie along the edge: a hole is too near. Turn the bars across, or set them inboard.</p>
          : <h2>Bars at most {withUnit(mostMm, units)} thick along the edges</h2>}
        {said === null ? null : (
          <>
            <p>{said.lowBecause === 'table' ? 'Any height of bar serves: nothing comes out below.' : <>Bars at least <strong>{withUnit(said.lowMm, units)}</strong> high, so that {said.lowBecause === 'drill-tip' ? 'the drill’s tip' : 'the cutter'} stays clear of the table.</>}</p>
            {isOverlapping ? <p className="beside-warn">The two bars do not lie side by side under the part: take thinner ones, or set them less far in.</p> : null}
            {isFouled ? <p className="beside-warn">{said.fouledHoles.flatMap((of, k) => (of.length > 0 ? [`Bar ${k + 1} stands in the way of hole ${of.map((index) => index + 1).join(', ')}.`] : [])).join(' ')} Take thinner bars, set them inboard or turn them.</p> : <p>Both bars are clear of every hole.</p>}
            {isTooLow ? <p className="beside-warn">Bars of {withUnit(barHeightMm, units)} are too low for what comes out below: take higher ones, or the drill meets the table.</p> : null}
            {said.findings.map(({ code, index }) => <p key={`${code}${index}`} className="beside-warn">{sayFinding({ code, facts: { index } }, units)}</p>)}
            {said.findings.some(({ code }) => code === 'strap-not-over-bar') ? null : <p>Every strap presses above a bar.</p>}
          </>
        )}
        {refusal !== null && isBegun && refusal.facts.given !== null ? <p className="beside-warn" role="alert">{sayRefusal(onTable(refusal), units)}</p> : null}
        {pair === null ? null : <p><strong>{pair.label}</strong>, slot {pair.slot}: {wordLength(pair.heightMm, units)} high{pair.bars.some(({ standing }) => standing === 'marked') ? ', as marked' : ''}{stateOf(pair.bars) || ', trusted'}.</p>}
      </section>
      <fieldset className="boxed"><legend>Part</legend>
        <div className="field-list">
          <LengthField label="across" more="of the part" value={texts.across} onChange={(across) => put({ across })} />
          <LengthField label="along" more="of the part" value={texts.along} onChange={(along) => put({ along })} />
          <LengthField label="height" more="of the part" value={texts.height} onChange={(height) => put({ height })} />
        </div>
      </fieldset>
      <HoleFields holes={texts.holes} onChange={(holes) => put({ holes })} onAdd={() => put({ holes: [...texts.holes, emptyHole] })} />
      <fieldset className="boxed"><legend>Bars</legend>
        <Choice label="They lie" value={texts.turned ? 'across' : 'along'} onChange={(value) => put({ turned: value === 'across' })} options={[{ value: 'along', label: 'along the edges' }, { value: 'across', label: 'across, at the ends' }]} />
        <div className="field-list">
          <LengthField label="thickness" more="of a bar" value={texts.thickness} onChange={(thickness) => putBars({ thickness })} />
          <LengthField label="bar height" value={texts.barHeight} onChange={(barHeight) => putBars({ barHeight })} />
          <LengthField label="bar length" value={texts.length} onChange={(length) => putBars({ length })} ifEmpty="as the part" />
          <LengthField label="in from the edge" value={texts.inboard} onChange={(inboard) => put({ inboard })} ifEmpty="0" />
          <LengthField label="clear of holes" more="at least" value={texts.air} onChange={(air) => put({ air })} ifEmpty={wordLength(0.5, units)} />
        </div>
      </fieldset>
      <StrapFields straps={texts.straps} onChange={(straps) => put({ straps })} />
      {!isBegun ? null : (
        <section>
          <h3>Out of the rack</h3>
          {fits.length === 0 ? <p>No pair of the rack is high and thin enough.</p> : null}
          <ul className="beside-rows">
            {fits.slice(0, 8).map((one) => (
              <li key={one.id}><button type="button" className="action" aria-pressed={one.id === pairId} onClick={() => { setPairId(one.id); put({ thickness: wordLength(one.thicknessMm, units), barHeight: wordLength(one.heightMm, units), length: wordLength(one.bars[0].lengthMm, units) }) }}>{one.label}, slot {one.slot}: {wordLength(one.thicknessMm, units)} thick{stateOf(one.bars)}</button></li>
            ))}
          </ul>
        </section>
      )}
      {isBegun ? <SheetFields named={named} onChange={setNamed} isReady={told !== null && barHeightMm !== null && !isTooLow && !isFouled && !isOverlapping} /> : null}
      {said ? <ShowSum sums={said.sum} /> : null}
      <Cautions situations={said?.situations ?? ['straps']} />
    </BesidePage>
  )
}
