import type { Finding } from '#model/finding.ts'
import type { Fact } from '#model/refusal.ts'
import { summaryOf } from '#engine/numeric/summary.ts'
import { loneHighReading } from '#engine/inspect/lone-reading.ts'
import { type BarReadings, stationValuesOf } from '#engine/inspect/shape.ts'
import { unitSlipOf } from '#engine/inspect/unit-slip.ts'

/** µm. A zero that came back further off than this is told. Common practice, no source. */
export const driftToldUm = 1
/** µm. Around zero readings differ by large factors; nearer to its neighbours than this none is asked about. Common practice, no source. */
const slipToldUm = 2
/** So many repeats at a place show whether each follows from the one before. Common practice, no source. */
const longSeries = 10

/** What to look at again before the readings of a bar are believed. Lines and repeats are counted from 0. */
export function findingsOf(bar: BarReadings): readonly Finding[] {
  const { stationsMm, lines } = stationValuesOf(bar)
  const about = (code: string, facts: { readonly [name: string]: Fact }): Finding => ({ code, facts: { bar: bar.id, ...facts } })
  const lone = lines.flatMap((line, l) => {
    const found = loneHighReading(stationsMm, line)
    return found ? [about('lone-high-reading', { line: l, xMm: stationsMm[found.station]!, aboveUm: found.aboveUm })] : []
  })
  const slips = lines.flatMap((line, l) => line.flatMap((value, s) => {
    const rest = line.toSpliced(s, 1), factor = unitSlipOf(value, rest), apartUm = Math.min(...rest.map((other) => Math.abs(value - other)))
    return factor === null || apartUm < slipToldUm ? [] : [about('unit-slip', { line: l, xMm: stationsMm[s]!, readingUm: value, factor })]
  }))
  const following = bar.lines.flatMap((line, l) => line.flatMap((repeats, s) => {
    const { lag1 } = summaryOf(repeats)
    // Independent readings keep within two standard deviations of the lag-1 autocorrelation, 1/√n.
    return repeats.length < longSeries || lag1 === null || Math.abs(lag1) < 2 / Math.sqrt(repeats.length) ? [] : [about('readings-not-independent', { line: l, xMm: bar.stationsMm[s]!, lag1 })]
  }))
  const drifted = bar.closingZeroUm !== null && Math.abs(bar.closingZeroUm) >= driftToldUm ? [about('zero-drifted', { driftUm: bar.closingZeroUm })] : []
  return [...slips, ...lone, ...following, ...drifted]
}
