import type { Blank } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { BarLeft, PackLeft, Worked } from '#model/make-plan.ts'
import type { Making } from '#model/making.ts'
import { type Actuals, type MadeBar, type ReadingKind, type StepKind, stepKinds } from '#model/make-step.ts'
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

/** Said before the wheel touches: is the allowance enough, how straight would be, how low would be. */
export function leftFindings(bars: readonly BarLeft[], packs: readonly PackLeft[], { leave }: Making): readonly Finding[] {
  return bars.flatMap(({ id, side, bowMm, perSideMm, neededPerSideMm, finishedMm, nowMm, isEnough }): Finding[] => {
    const roomMm = round(perSideMm - leave.cleanUpMm - leave.skinMm)
    if (perSideMm < -touchMm) return [{ code: 'size-lost', facts: { bar: id, side, nowMm, finishedMm } }]
    if (isEnough === null) return []
    const facts = { bar: id, side, bowMm, perSideMm, neededPerSideMm, roomMm: Math.max(0, roomMm) }
    if (isEnough) return [{ code: 'allowance-enough', facts }]
    const pack = packs.find((one) => one.side === side && one.bars.includes(id)), lowerMm = pack === undefined ? null : downHundredths(pack.clean.toMm)
    return [{ code: roomMm > touchMm ? 'allowance-not-enough' : 'allowance-gone', facts: { ...facts, shortMm: round(neededPerSideMm - perSideMm), lowerMm } }]
  })
}

const most = (list: readonly number[]): number => list.reduce((a, b) => Math.max(a, b), -Infinity)
const least = (list: readonly number[]): number => list.reduce((a, b) => Math.min(a, b), Infinity)
const round = (mm: number): number => Math.round(mm * 1e6) / 1e6
const downHundredths = (mm: number): number => Math.floor(mm * 100 + 1e-6) / 100
