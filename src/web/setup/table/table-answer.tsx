import { useMemo } from 'react'
import type { PictureRoom } from '#drafting/setup/scaled-piece.ts'
import { tablePicture } from '#drafting/setup/table-picture.ts'
import { withUnit, wordLength } from '#model/length.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { onTable } from '#web/setup/table/on-table.ts'
import type { TableTold } from '#web/setup/table/table-asked.ts'
import { tablePictureFrom } from '#web/setup/table/table-sheet-data.ts'
import type { TableAtHand } from '#web/setup/table/use-table.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly table: TableAtHand }

/** mm. Bars are drawn this high at least while nobody gave a height. */
const drawnAtLeastMm = 10

export function TableDrawing({ table: { told, barHeightMm, lowMm, pair } }: Props) {
  const drawnMm = barHeightMm ?? Math.max(lowMm, drawnAtLeastMm)
  const draw = useMemo(() => told && ((room: PictureRoom) => tablePicture(tablePictureFrom(told, drawnMm, pair), room)), [told, drawnMm, pair])
  return draw ? <RoomDrawing draw={draw} tall={1} mostMm={165} /> : <p className="small">Part, holes and bars are drawn here as soon as their sizes are there.</p>
}

/** How thick and how high the bars may be, and what the chosen ones meet. */
export function TableAnswer({ table }: Props) {
  const units = useUnits(), { told, mostMm, refusal, pair, stateOf } = table
  const isMarked = pair?.bars.some(({ standing }) => standing === 'marked')
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      {mostMm === null ? null : mostMm <= 0 ? <p className="beside-warn">No bar can lie along the edge: a hole is too near. Turn the bars across, or set them inboard.</p>
        : <h2>Bars at most {withUnit(mostMm, units)} thick along the edges</h2>}
      {told === null ? null : <Meets table={table} answer={told.answer} />}
      {refusal === null ? null : <p className="beside-warn" role="alert">{sayRefusal(onTable(refusal), units)}</p>}
      {pair === null ? null : <p><strong>{pair.label}</strong>, slot {pair.slot}: {wordLength(pair.heightMm, units)} high{isMarked ? ', as marked' : ''}{stateOf(pair.bars) || ', trusted'}.</p>}
    </section>
  )
}

/** What the bars come to with what stands above, below and beside them. */
function Meets({ table: { amiss, barHeightMm }, answer }: Props & { readonly answer: TableTold['answer'] }) {
  const units = useUnits(), { findings, fouledHoles, lowBecause, lowMm } = answer, below = lowBecause === 'drill-tip' ? 'the drill’s tip' : 'the cutter'
  return (
    <>
      <p>{lowBecause === 'table' ? 'Any height of bar serves: nothing comes out below.' : <>Bars at least <strong>{withUnit(lowMm, units)}</strong> high, so that {below} stays clear of the table.</>}</p>
      {amiss.isOverlapping ? <p className="beside-warn">The two bars do not lie side by side under the part: take thinner ones, or set them less far in.</p> : null}
      {amiss.isFouled ? <p className="beside-warn">{sayFouled(fouledHoles)} Take thinner bars, set them inboard or turn them.</p> : <p>Both bars are clear of every hole.</p>}
      {amiss.isTooLow ? <p className="beside-warn">Bars of {withUnit(barHeightMm!, units)} are too low for what comes out below: take higher ones, or the drill meets the table.</p> : null}
      {findings.map(({ code, index }) => <p key={`${code}${index}`} className="beside-warn">{sayFinding({ code, facts: { index } }, units)}</p>)}
      {findings.some(({ code }) => code === 'strap-not-over-bar') ? null : <p>Every strap presses above a bar.</p>}
    </>
  )
}

/** `Bar 1 stands in the way of hole 1, 3.` */
function sayFouled(fouledHoles: readonly (readonly number[])[]): string {
  const said = fouledHoles.map((of, k) => `Bar ${k + 1} stands in the way of hole ${of.map((index) => index + 1).join(', ')}.`)
  return said.filter((_, k) => fouledHoles[k]!.length > 0).join(' ')
}
