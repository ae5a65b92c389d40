import type { ReactNode } from 'react'
import type { RegrindOfShop } from '#engine/rack/regrind/regrind-of-shop.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import { cautionsFor } from '#words/cautions.ts'
import { listOf } from '#words/wording.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { happened } from '#web/rack/bar-deeds.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameAmong, nameOfBars } from '#web/rack/say-bar.ts'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'

/** `left`: mates of the bars that are not ground with them, by name; `job`: the way to a job of it. */
type Props = { readonly answer: RegrindOfShop; readonly bars: readonly RackBar[]; readonly left: readonly string[]; readonly job: ReactNode }

/** The new height, what comes off, and what it serves. */
export function RegrindAnswer({ answer: { regrind, sum, fits, now, after }, bars, left, job }: Props) {
  const units = useUnits(), exact = { decimals: units.length === 'mm' ? 3 : 5 }, um = (value: number) => `${wordNumber(value, units.decimalMark, null, 1)} µm`, off = (value: number) => um(-value)
  const [rough = 0, fine = 0] = regrind.passes, spark = regrind.passesTotal - rough - fine
  const done = () => {
    happened('reground', bars.map(({ record }) => record.id), nameOfBars(bars, units))
    go(`/rack/${bars[0]!.record.id}`)
  }
  return (
    <section className="sign" aria-label="The new height">
      <p className="big-line"><strong className="big">{wordLength(regrind.newHeightMm, units, exact)}</strong> new height</p>
      <p>Never back to what is marked: the lowest place of all sets it. Mark the bars anew once they are measured.</p>
      <table className="regrind-table">
        <thead><tr><th scope="col">bar</th><th scope="col">highest place</th><th scope="col">lowest place</th><th scope="col">new height</th></tr></thead>
        <tbody>
          {regrind.bars.map((one) => {
            const bar = bars.find(({ record }) => record.id === one.id)
            return (
              <tr key={one.id}>
                <th scope="row" className="name-text">{bar ? nameAmong(bar, bars, units) : '?'}</th>
                <td>{off(one.removalHighestUm)}</td><td>{off(one.removalLowestUm)}</td><td>{wordLength(one.newHeightMm ?? regrind.newHeightMm, units, exact)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
      {bars.length === 1 && bars[0]!.mates && !bars[0]!.orphan ? <p><span className="mark" aria-hidden="true">!</span> One bar alone: it will no longer match its mates.</p> : null}
      <p>
        <strong>{regrind.passesTotal} passes</strong>: {rough} rough, {fine} fine, {spark} spark-out; {um(regrind.totalUm)} in all from where the wheel first touches.
        {regrind.passesByFace ? ` First face ${regrind.passesByFace[0]!.join(' + ')}, second ${regrind.passesByFace[1]!.join(' + ')}.` : ''}
      </p>
      {regrind.note ? <p><span className="mark" aria-hidden="true">!</span> The face on the chuck{regrind.datumFace ? `, ${regrind.datumFace},` : ''} is taken as true: what it is out of flat or bent comes out in the bar. Look at it on the plate first.</p> : null}
      <p>{fits === 0 ? 'None of the setups that are counted takes the new height.' : `${fits === 1 ? '1 setup takes' : `${fits} setups take`} the new height.`} The rack serves {now.served} of {now.setups} now and {after.served} then.</p>
      <ul className="small">{cautionsFor(new Set(['grinding wheel', 'grinding thin bars'] as const), units).map((caution) => <li key={caution}>{caution}</li>)}</ul>
      {left.length > 0 && bars.length > 1 ? <p><span className="mark" aria-hidden="true">!</span> Mates that are left out will no longer match: {listOf(left)}.</p> : null}
      {job}
      <div className="rack-ways"><button type="button" className="action" onClick={done}>They are reground already</button></div>
      <p className="small">Once reground they are to be looked at first, and their height is only marked until a check has read it.</p>
      <ShowSum sums={sum} />
    </section>
  )
}
