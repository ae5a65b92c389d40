import { useMemo } from 'react'
import { chuckPicture } from '#drafting/setup/chuck-picture.ts'
import type { PictureRoom } from '#drafting/setup/scaled-piece.ts'
import { withUnit, wordLength } from '#model/length.ts'
import { listOf } from '#words/wording.ts'
import type { RackHere } from '#web/setup/beside/rack-here.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { chuckPictureFrom, type ChuckTold, sideWords } from '#web/setup/chuck/chuck-sheet-data.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly told: ChuckTold; readonly rack: RackHere }

export function ChuckDrawing({ told, rack: { labelOf } }: Props) {
  const draw = useMemo(() => (room: PictureRoom) => chuckPicture(chuckPictureFrom(told, labelOf), room), [told, labelOf])
  return <RoomDrawing draw={draw} tall={0.95} mostMm={155} />
}

/** How thick the bars are to be, and which of them lies where, in the order in which the sides are covered. */
export function ChuckAnswer({ told: { answer, taken }, rack: { labelOf, slotOf, stateOf } }: Props) {
  const units = useUnits(), named = answer.order.map((side) => sideWords[side])
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      <h2>Bars {wordLength(answer.lowMm, units)} to {withUnit(answer.highMm, units)} thick, lying flat</h2>
      <p>Cover first the {listOf(named.slice(0, 2))}, then {listOf(named.slice(2))}. Holding force: {answer.holdingForce}.</p>
      {answer.serve.length === 0 ? <p className="beside-warn">No bar of the rack is that thick.</p> : null}
      <ul className="beside-rows">{answer.order.map((side, k) => {
        const bar = taken[k], lies = bar === undefined ? 'no bar taken' : `${labelOf(bar.id)}, slot ${slotOf([bar.id])}${stateOf([bar]) || ', trusted'}`
        return <li key={side}><span><strong>{k + 1} {named[k]}</strong>: {lies}</span></li>
      })}</ul>
    </section>
  )
}
