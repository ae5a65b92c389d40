import type { ProfileData } from '#drafting/inspect/profile.ts'
import type { Checked } from '#engine/inspect/checked.ts'
import { stationValuesOf } from '#engine/inspect/shape.ts'
import { withUnit } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { NameOf } from '#words/wording.ts'

/** Up to so many lines can be told apart. */
const mostSeries = 4

/** The heights along the bars of a check; null where no bar was read at two places. */
export function profileOf({ bars, zeroMm }: Checked, nameOf: NameOf, units: Units, lengthMmOf: (bar: string) => number | null): (ProfileData & { title: string; description: string; lengthMm: number }) | null {
  const series = bars.flatMap(({ id, readings, turnOver }) => {
    if (turnOver?.heightsUm) return [{ label: nameOf(id), points: turnOver.heightsUm.map((um, at) => ({ xMm: turnOver.stationsMm[at]!, um, uUm: null })) }]
    if (readings === null) return []
    const { stationsMm, lines } = stationValuesOf(readings)
    return lines.map((line, at) => ({ label: lines.length === 1 ? nameOf(id) : `${nameOf(id)}, line ${at + 1}`, points: line.map((um, i) => ({ xMm: stationsMm[i]!, um, uUm: null })) }))
  }).slice(0, mostSeries)
  if (series.length === 0) return null
  return {
    series, zero: `zero = ${withUnit(zeroMm, units)}`, band: null, whiskers: '', title: 'Profile', description: `Heights of ${series.map(({ label }) => label).join(', ')} along their length.`,
    lengthMm: Math.max(...bars.map(({ id }) => lengthMmOf(id) ?? 0), ...series.flatMap(({ points }) => points.map(({ xMm }) => xMm))),
  }
}
