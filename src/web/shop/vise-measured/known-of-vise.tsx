import { wordLength, wordNumber } from '#model/length.ts'
import type { ViseMeasured } from '#model/vise-measured.ts'
import type { Units } from '#model/shop-record.ts'
import { plusMinus } from '#words/say-uncertainty.ts'
import { sayDay } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** What was measured of the vise so far, when and how. */
export function KnownOfVise({ measured }: { readonly measured: ViseMeasured | null }) {
  const units = useUnits(), { movingJaw } = useTerms(), um = (value: number) => `${value > 0 ? '+' : ''}${wordNumber(value, units.decimalMark, null, 1)} µm`
  const { bed, jawSlope, jawLift, rowBed } = measured ?? { bed: null, jawSlope: null, jawLift: null, rowBed: null }
  const rows = [
    { what: 'Bed, across', of: bed, says: bed && `${um(acrossUm(bed))} towards the ${movingJaw} ${plusMinus(bed.uUm, units)}` },
    { what: 'Bed, along', of: bed, says: bed && (hasAlong(bed) ? `${um(alongUm(bed))} towards the right end` : 'not read') },
    { what: 'Fixed jaw', of: jawSlope, says: jawSlope && `${um(jawSlope.umPerMm * perMm(units))} over ${wordLength(perMm(units), units)} ${units.length} ${plusMinus(jawSlope.uUmPerMm * perMm(units), units)}` },
    { what: 'Jaw lift', of: jawLift, says: jawLift && `${um(jawLift.um)} over ${wordLength(jawLift.overMm, units)} ${plusMinus(jawLift.uUm, units)}` },
    { what: 'Bed in the row', of: rowBed, says: rowBed && `${um(rowBed.um)} ${plusMinus(rowBed.uUm, units)}` },
  ]
  return (
    <section aria-label="Known so far">
      <dl className="known-vise">
        {rows.map(({ what, of, says }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{of === null ? 'not measured yet' : <><strong>{says}</strong><span className="small">{sayDay(of.atIso)}, {of.how}</span></>}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

type Bed = NonNullable<ViseMeasured['bed']>

/** Slopes are said over this length. */
const perMm = (units: Units): number => (units.length === 'mm' ? 100 : 101.6)

const hasAlong = ({ readings }: Bed): boolean => readings.some(({ xMm }) => xMm !== readings[0]!.xMm)

const mean = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0) / list.length

/** Means of the readings farthest out against those nearest: what the bed rises over the distance read on. */
function riseUm({ readings }: Bed, by: 'xMm' | 'yMm'): number {
  const at = readings.map((reading) => reading[by]), far = Math.max(...at), near = Math.min(...at)
  const of = (place: number) => mean(readings.filter((reading) => reading[by] === place).map(({ um }) => um))
  return of(far) - of(near)
}
const acrossUm = (bed: Bed): number => riseUm(bed, 'yMm')
const alongUm = (bed: Bed): number => riseUm(bed, 'xMm')
