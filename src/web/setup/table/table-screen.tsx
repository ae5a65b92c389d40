import { useMemo, useState } from 'react'
import { tablePicture } from '#drafting/setup/table-picture.ts'
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
import { HoleFields, StrapFields } from '#web/setup/table/table-fields.tsx'
import { emptyHole, emptyTable, tableAnswered, type TableTexts, thickestFor } from '#web/setup/table/table-asked.ts'
import { useUnits } from '#web/units.ts'

/** A part on two bars on the table of a drill press or mill, under straps. */
export function TableScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), { pairs } = useMemo(() => rackHere(shop, units), [shop, units])
  const [texts, setTexts] = useState<TableTexts>(emptyTable), put = (part: Partial<TableTexts>) => setTexts({ ...texts, ...part })
  const thickest = useMemo(() => asked(() => thickestFor(texts, units.length)), [texts, units.length]), table = useMemo(() => asked(() => tableAnswered(texts, units.length)), [texts, units.length])
  const said = 'answer' in table ? table.answer : null, mostMm = 'answer' in thickest ? leastOf(thickest.answer) : null
  const lowMm = said?.answer.lowMm ?? 0, fits = pairs.filter(({ thicknessMm, heightMm }) => (mostMm === null || thicknessMm <= mostMm + 1e-6) && heightMm >= lowMm - 1e-6)
  const barUp = useMemo(() => asked(() => tableAnswered({ ...texts, thickness: texts.barHeight }, units.length).raw.bars[0]!.thicknessMm), [texts, units.length]), barHeightMm = 'answer' in barUp ? barUp.answer : Math.max(lowMm, 10)
  const draw = useMemo(() => (room: { readonly widthMm: number; readonly heightMm: number }) => {
    const { question, answer, tips } = said!, { part } = question
    return tablePicture({
      title: 'On the table', description: 'The part on its bars, from the end and from above.', acrossMm: part.betweenJawsMm!, alongMm: part.alongJawsMm!, heightMm: part.heightMm, barHeightMm, table: 'table',
      bars: question.bars.map((bar, k) => ({ ...bar, fouled: answer.fouledHoles[k]!.length > 0 })),
      holes: question.cuts.flatMap((cut, k) => (cut.kind === 'hole' ? [{ xMm: cut.xMm, yMm: cut.yMm, diameterMm: cut.diameterMm, tipMm: tips[k] ?? null }] : [])),
      straps: question.straps.map((strap, k) => ({ ...strap, over: !answer.findings.some(({ code, index }) => code === 'strap-not-over-bar' && index === k) })),
    }, room)
  }, [said, barHeightMm])
  const isBegun = texts.across !== '' && texts.along !== '' && texts.height !== ''
  return (
    <BesidePage title="On the table" typedFirst sheet={said ? <RoomDrawing draw={draw} tall={1} mostMm={165} /> : <p className="small">Part, holes and bars are drawn here as soon as their sizes are there.</p>}>
      <p>Two bars on the table of a drill press or mill, the part on them, straps above the bars. Sizes across count from the near edge.</p>
      <section className="beside-answer" aria-label="Answer" aria-live="polite">
        {mostMm === null ? null : mostMm <= 0 ? <p className="beside-warn">No bar can lie along the edge: a hole is too near. Turn the bars across, or set them inboard.</p>
          : <h2>Bars at most {withUnit(mostMm, units)} thick along the edges</h2>}
        {said === null ? null : (
          <>
            <p>{said.answer.lowBecause === 'table' ? 'Any height of bar serves: nothing comes out below.' : <>Bars at least <strong>{withUnit(said.answer.lowMm, units)}</strong> high, so that {said.answer.lowBecause === 'drill-tip' ? 'the drill’s tip' : 'the cutter'} stays clear of the table.</>}</p>
            {said.answer.fouledHoles.some((of) => of.length > 0) ? <p className="beside-warn">{said.answer.fouledHoles.flatMap((of, k) => (of.length > 0 ? [`Bar ${k + 1} stands in the way of hole ${of.map((index) => index + 1).join(', ')}.`] : [])).join(' ')} Take thinner bars, set them inboard or turn them.</p> : <p>Both bars are clear of every hole.</p>}
            {said.answer.findings.map(({ code, index }) => <p key={`${code}${index}`} className="beside-warn">{sayFinding({ code, facts: { index } }, units)}</p>)}
            {said.answer.findings.some(({ code }) => code === 'strap-not-over-bar') ? null : <p>Every strap presses above a bar.</p>}
          </>
        )}
        {'refusal' in table && isBegun && texts.thickness !== '' ? <p className="beside-warn" role="alert">{sayRefusal(table.refusal, units)}</p> : null}
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
          <LengthField label="thickness" more="of a bar" value={texts.thickness} onChange={(thickness) => put({ thickness })} />
          <LengthField label="bar height" value={texts.barHeight} onChange={(barHeight) => put({ barHeight })} />
          <LengthField label="bar length" value={texts.length} onChange={(length) => put({ length })} ifEmpty="as the part" />
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
            {fits.slice(0, 8).map((pair) => (
              <li key={pair.id}><button type="button" className="action" onClick={() => put({ thickness: `${wordLength(pair.thicknessMm, units)}`, barHeight: wordLength(pair.heightMm, units), length: wordLength(pair.bars[0].lengthMm, units) })}>{pair.label}, slot {pair.slot}: {wordLength(pair.thicknessMm, units)} thick{pair.state}</button></li>
            ))}
          </ul>
        </section>
      )}
      {said ? <ShowSum sums={said.answer.sum} /> : null}
      <Cautions situations={said?.answer.situations ?? ['straps']} />
    </BesidePage>
  )
}

function leastOf({ frontMm, backMm }: { readonly frontMm: number | null; readonly backMm: number | null }): number | null {
  return frontMm === null || backMm === null ? frontMm ?? backMm : Math.min(frontMm, backMm)
}
