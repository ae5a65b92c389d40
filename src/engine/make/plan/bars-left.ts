import type { Blank } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { BarLeft, PackLeft } from '#model/make-plan.ts'
import type { Making } from '#model/making.ts'
import { type Actuals, type MadeBar, type ReadingKind, type StepKind, stepKinds } from '#model/make-step.ts'
import { passesOf } from '#engine/rack/regrind/passes.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The latest in the order of work that was read of a bar by the given steps; null: nothing. */
export function latest({ readings }: Actuals, bar: string, what: ReadingKind, upTo: (step: StepKind) => boolean): readonly number[] | null {
  const own = readings.filter((one) => one.bar === bar && one.what === what && upTo(one.step))
  return own.reduce<(typeof own)[number] | null>((last, one) => (last === null || stepKinds.indexOf(one.step) >= stepKinds.indexOf(last.step) ? one : last), null)?.values ?? null
}

/** Up to and with straightening, from hardening on: what the last tool finds. */
const isBeforeLastTool = (step: StepKind): boolean => step === 'read after hardening' || step === 'straighten' || step === 'temper again'

/**
 * What is left on each side of every bar against what it needs: bow + clean-up + skin, the bow as read, or as planned where it was not.
 * A height that was not read is that of the blank; growth is not counted on.
 *
 * @source MAKE-RULES
 */
export function barsLeft(bars: readonly MadeBar[], blanks: readonly Blank[], { leave }: Making, actuals: Actuals): readonly BarLeft[] {
  return bars.flatMap(({ id, heightMm }) => {
    const blank = blanks.find((one) => one.heightMm === heightMm)
    if (blank === undefined) return []
    const read = latest(actuals, id, 'height', isBeforeLastTool), bow = latest(actuals, id, 'bow of the edges', isBeforeLastTool), hardness = latest(actuals, id, 'hardness', isBeforeLastTool)
    const nowMm = read === null ? heightMm + 2 * blank.perSideMm.height : least(read), bowMm = bow === null ? null : most(bow)
    const perSideMm = round((nowMm - heightMm) / 2), neededPerSideMm = round((bowMm ?? leave.bowMm) + leave.cleanUpMm + leave.skinMm)
    return [{
      id, heightMm, nowMm: round(nowMm), measured: read !== null, perSideMm, bowMm, neededPerSideMm, isEnough: bowMm === null ? null : perSideMm >= neededPerSideMm - touchMm,
      hrc: hardness === null ? null : hardness.reduce((sum, one) => sum + one, 0) / hardness.length,
    }]
  })
}

/**
 * Mates ground in one pack, half of what is left on each side. The wheel starts at the highest place, half the bow above; the lowest bar
 * and the largest bow say whether all clean up.
 *
 * @source MAKE-RULES
 */
export function packsLeft(made: readonly MadeBar[], bars: readonly BarLeft[], { infeeds, leave }: Making, actuals: Actuals): readonly PackLeft[] {
  const ids = [...new Set(made.map(({ matesId }) => matesId))]
  return ids.flatMap((matesId) => {
    const own = bars.filter(({ id }) => made.some((one) => one.id === id && one.matesId === matesId))
    if (own.length === 0) return []
    const { heightMm } = own[0]!, bows = own.map(({ bowMm }) => bowMm ?? leave.bowMm), highest = own.map(({ id, nowMm }) => Math.max(nowMm, most(latest(actuals, id, 'height', isBeforeLastTool) ?? [nowMm])))
    const downfeedMm = round(Math.max(0, (most(highest) - heightMm + most(bows)) / 2)), lowestMm = least(own.map(({ nowMm }) => nowMm)), neededMm = most(own.map((bar) => bar.neededPerSideMm))
    const passes = passesOf(infeeds.stages.map(({ infeedUm, takesUm }) => ({ infeedPm: Math.round(infeedUm * pmPerUm), takesPm: Math.round(takesUm * pmPerUm) })), Math.round(downfeedMm * 1000 * pmPerUm))
    return [{
      matesId, bars: own.map(({ id }) => id), heightMm, downfeedMm, passes, passesTotal: passes.reduce((sum, one) => sum + one, 0) + infeeds.sparkOut,
      shimsMm: own.map(({ bowMm }) => hundredths(bowMm ?? 0)), lowerHeightMm: own.some(({ isEnough }) => isEnough === false) ? downHundredths(lowestMm - 2 * neededMm) : null,
    }]
  })
}

/** Said before the wheel touches: is the allowance enough, how straight would be, how low would be. */
export function leftFindings(bars: readonly BarLeft[], lowerOf: (bar: BarLeft) => number | null, { leave }: Making): readonly Finding[] {
  return bars.flatMap((bar): Finding[] => {
    const { id, bowMm, perSideMm, neededPerSideMm, heightMm, nowMm, isEnough } = bar, roomMm = round(perSideMm - leave.cleanUpMm - leave.skinMm)
    if (perSideMm < -touchMm) return [{ code: 'height-lost', facts: { bar: id, nowMm, heightMm } }]
    if (isEnough === null) return []
    const facts = { bar: id, bowMm, perSideMm, neededPerSideMm, roomMm: Math.max(0, roomMm) }
    if (isEnough) return [{ code: 'allowance-enough', facts }]
    return [{ code: roomMm > touchMm ? 'allowance-not-enough' : 'allowance-gone', facts: { ...facts, shortMm: round(neededPerSideMm - perSideMm), lowerHeightMm: lowerOf(bar) } }]
  })
}

const pmPerUm = 1e6
const most = (list: readonly number[]): number => list.reduce((a, b) => Math.max(a, b), -Infinity)
const least = (list: readonly number[]): number => list.reduce((a, b) => Math.min(a, b), Infinity)
const round = (mm: number): number => Math.round(mm * 1e6) / 1e6
const hundredths = (mm: number): number => Math.round(mm * 100) / 100
const downHundredths = (mm: number): number => Math.floor(mm * 100 + 1e-6) / 100
