import type { Blank } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { BarLeft, PackLeft, Worked } from '#model/make-plan.ts'
import type { Making } from '#model/making.ts'
import { type Actuals, type MadeBar, type ReadingKind, type StepKind, stepKinds } from '#model/make-step.ts'
import { passesOf } from '#engine/rack/regrind/passes.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** What is read of edges and faces. */
export const readOf: { readonly [side in Worked]: { readonly size: ReadingKind; readonly bow: ReadingKind } } = {
  edges: { size: 'height', bow: 'bow of the edges' }, faces: { size: 'thickness', bow: 'bow of the faces' },
}

/** The latest in the order of work that was read of a bar from hardening up to its last tool; null: nothing. */
export function latest({ readings }: Actuals, bar: string, what: ReadingKind): readonly number[] | null {
  const own = readings.filter((one) => one.bar === bar && one.what === what && isBeforeLastTool(one.step))
  return own.reduce<(typeof own)[number] | null>((last, one) => (last === null || stepKinds.indexOf(one.step) >= stepKinds.indexOf(last.step) ? one : last), null)?.values ?? null
}

const isBeforeLastTool = (step: StepKind): boolean => step === 'read after hardening' || step === 'straighten' || step === 'temper again'

/**
 * What is left on each side of every bar against what it needs: bow + clean-up + skin, the bow as read, or as planned where it was not.
 * A size that was not read is that of the blank; growth is not counted on.
 *
 * @source MAKE-RULES
 */
export function barsLeft(side: Worked, bars: readonly MadeBar[], blanks: readonly Blank[], { leave }: Making, actuals: Actuals): readonly BarLeft[] {
  return bars.flatMap(({ id, heightMm }) => {
    const blank = blanks.find((one) => one.heightMm === heightMm)
    if (blank === undefined) return []
    const plannedMm = side === 'edges' ? blank.perSideMm.height : blank.perSideMm.thickness, finishedMm = side === 'edges' ? heightMm : blank.finished.thicknessMm
    const read = latest(actuals, id, readOf[side].size), bow = latest(actuals, id, readOf[side].bow), hardness = latest(actuals, id, 'hardness')
    const nowMm = read === null ? finishedMm + 2 * plannedMm : least(read), bowMm = bow === null ? null : most(bow)
    const perSideMm = round((nowMm - finishedMm) / 2), neededPerSideMm = round((bowMm ?? leave.bowMm) + leave.cleanUpMm + leave.skinMm)
    return [{
      id, side, finishedMm, nowMm: round(nowMm), measured: read !== null, perSideMm, bowMm, neededPerSideMm, isEnough: bowMm === null ? null : perSideMm >= neededPerSideMm - touchMm,
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
export function packsLeft(side: Worked, made: readonly MadeBar[], bars: readonly BarLeft[], { infeeds, leave }: Making, actuals: Actuals): readonly PackLeft[] {
  const stages = infeeds.stages.map(({ infeedUm, takesUm }) => ({ infeedPm: Math.round(infeedUm * pmPerUm), takesPm: Math.round(takesUm * pmPerUm) }))
  return [...new Set(made.map(({ matesId }) => matesId))].flatMap((matesId) => {
    const own = bars.filter((bar) => bar.side === side && made.some(({ id, matesId: mates }) => id === bar.id && mates === matesId))
    if (own.length === 0) return []
    const { finishedMm } = own[0]!, highestMm = most(own.flatMap(({ id, nowMm }) => [nowMm, ...(latest(actuals, id, readOf[side].size) ?? [])]))
    const bowMm = most(own.map((bar) => bar.bowMm ?? leave.bowMm)), downfeedMm = round(Math.max(0, (highestMm - finishedMm + bowMm) / 2))
    const passes = passesOf(stages, Math.round(downfeedMm * 1000 * pmPerUm)), lowestMm = least(own.map(({ nowMm }) => nowMm)), neededMm = most(own.map(({ neededPerSideMm }) => neededPerSideMm))
    return [{
      matesId, side, bars: own.map(({ id }) => id), finishedMm, downfeedMm, passes, passesTotal: passes.reduce((sum, one) => sum + one, 0) + infeeds.sparkOut,
      shimsMm: own.map((bar) => hundredths(bar.bowMm ?? 0)), lowerMm: own.some(({ isEnough }) => isEnough === false) ? downHundredths(lowestMm - 2 * neededMm) : null,
    }]
  })
}

/** Said before the wheel touches: is the allowance enough, how straight would be, how low would be. */
export function leftFindings(bars: readonly BarLeft[], packs: readonly PackLeft[], { leave }: Making): readonly Finding[] {
  return bars.flatMap(({ id, side, bowMm, perSideMm, neededPerSideMm, finishedMm, nowMm, isEnough }): Finding[] => {
    const roomMm = round(perSideMm - leave.cleanUpMm - leave.skinMm)
    if (perSideMm < -touchMm) return [{ code: 'size-lost', facts: { bar: id, side, nowMm, finishedMm } }]
    if (isEnough === null) return []
    const facts = { bar: id, side, bowMm, perSideMm, neededPerSideMm, roomMm: Math.max(0, roomMm) }
    if (isEnough) return [{ code: 'allowance-enough', facts }]
    const lowerMm = packs.find((pack) => pack.side === side && pack.bars.includes(id))?.lowerMm ?? null
    return [{ code: roomMm > touchMm ? 'allowance-not-enough' : 'allowance-gone', facts: { ...facts, shortMm: round(neededPerSideMm - perSideMm), lowerMm } }]
  })
}

const pmPerUm = 1e6
const most = (list: readonly number[]): number => list.reduce((a, b) => Math.max(a, b), -Infinity)
const least = (list: readonly number[]): number => list.reduce((a, b) => Math.min(a, b), Infinity)
const round = (mm: number): number => Math.round(mm * 1e6) / 1e6
const hundredths = (mm: number): number => Math.round(mm * 100) / 100
const downHundredths = (mm: number): number => Math.floor(mm * 100 + 1e-6) / 100
