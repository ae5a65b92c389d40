import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { highReasonWords, lowReasonWords } from '#words/say-window.ts'
import { useDesk } from '#web/setup/desk.ts'

/** The window of heights, each end with what sets it, in both systems. */
export function HeightsThatWork() {
  const { view: { answered }, units } = useDesk()
  if (!answered || answered.answer.window.giveUp !== null) return null
  const { lowMm, highMm, lowBecause, highBecause } = answered.answer.window
  return (
    <section>
      <h2 className="setup-rule">Heights that work</h2>
      <dl className="figures setup-heights">
        <End mm={lowMm} said={`lowest, for ${lowReasonWords[lowBecause]}`} units={units} />
        <End mm={highMm} said={`highest, for ${highReasonWords[highBecause]}`} units={units} />
      </dl>
    </section>
  )
}

function End({ mm, said, units }: { readonly mm: number; readonly said: string; readonly units: Units }) {
  const other: Units = { ...units, length: units.length === 'mm' ? 'in' : 'mm' }
  return <div><dt>{said}<span className="setup-other">{wordLength(mm, other)} {other.length}</span></dt><dd>{wordLength(mm, units)}</dd></div>
}
