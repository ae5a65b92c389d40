import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import type { RackPair } from '#web/setup/beside/rack-here.ts'
import type { DayList, Operation } from '#web/setup/day/day-list.ts'
import { nameOfSetup, viseOf } from '#web/setup/day/say-saved.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly shop: ShopSnapshot; readonly pairs: readonly RackPair[]; readonly day: DayList }

/** What to take out of the rack, and what it serves in which order. */
export function DayAnswer({ shop, pairs, day: { list, many, operations } }: Props) {
  const units = useUnits(), nameOf = (k: number) => nameOfSetup(operations[k]!.setup)
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      <h2>{sayPull(list, pairs)}</h2>
      <ul className="beside-rows">{list.pull.map(({ pair, serves }) => <PulledPair key={pair} pair={pairs[pair]!} serves={serves.map(nameOf)} />)}</ul>
      {list.unserved.length === 0 ? null : <p className="beside-warn">No pair on edge serves {listOf(list.unserved.map(nameOf))}: open it on Set up, where the other ways stand.</p>}
      {many === null || operations.length < 2 ? null : many.oneMm === null ? <p>No one height could serve all of them: their heights that work have none in common.</p>
        : <p>One height for all would be {wordLength(many.oneMm.lowMm, units)} to {wordLength(many.oneMm.highMm, units)}.</p>}
      <h3>In this order</h3>
      <ol className="beside-points" data-counted="">
        {operations.map((one) => <li key={one.setup.id}><strong className="name-text">{nameOfSetup(one.setup)}</strong>{viseOf(shop, one.setup)?.name}: {sayHeights(one, units)}</li>)}
      </ol>
    </section>
  )
}

function PulledPair({ pair: { label, slot, state }, serves }: { readonly pair: RackPair; readonly serves: readonly string[] }) {
  return (
    <li>
      <div className="setup-first">
        <p className="big-line"><strong className="day-pair name-text">{label}</strong></p>
        <p className="slot-box"><strong className="name-text">{slot}</strong><span>slot</span></p>
      </div>
      <span>for {listOf(serves)}{state}</span>
    </li>
  )
}

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** `One pair serves all: 30 A`, `3 pairs, 2 changes`. */
function sayPull({ one: [first], pull, changes }: DayList['list'], pairs: readonly RackPair[]): string {
  if (first !== undefined) return `One pair serves all: ${pairs[first]!.label}`
  return pull.length === 0 ? 'No pair serves' : `${counted(pull.length, 'pair')}, ${counted(changes, 'change')}`
}

function sayHeights({ window, refused }: Operation, units: Units): string | null {
  return refused ? sayRefusal(refused, units) : window && `heights that work ${wordLength(window.lowMm, units)} to ${wordLength(window.highMm, units)}`
}
