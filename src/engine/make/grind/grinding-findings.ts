import type { Finding } from '#model/finding.ts'
import type { Grind, GrindQuestion } from '#engine/make/grind/grinding-job.ts'
import { rimMPerS } from '#engine/make/grind/sweep.ts'

type Plan = Pick<Grind, 'removal' | 'allowanceUm' | 'spareUm' | 'enough'>

/** What to know before the wheel touches. */
export function grindingFindings(question: GrindQuestion, { removal: { neededUm }, allowanceUm, spareUm, enough }: Plan): readonly Finding[] {
  const { growthPercent, sides, heightMm, thicknessMm, hardened } = question
  return [
    ...(enough === null ? [] : [{ code: enough ? 'grind-allowance-enough' : 'grind-allowance-short', facts: { neededUm, allowanceUm, byUm: Math.abs(spareUm!) } }]),
    ...(growthPercent > 0 ? [{ code: 'growth-no-stock', facts: { growthUm: 10 * growthPercent * (sides === 'edges' ? heightMm : thicknessMm) } }] : []),
    ...infeedFindings(question), ...wheelFindings(question),
    ...(hardened ? [{ code: 'grinding-burns', facts: {} }] : []),
    { code: 'no-size-aimed-at', facts: {} },
  ]
}

/** The handbook's most is for a stiff machine: of the first stage as roughing, of the last as finishing. */
function infeedFindings({ stages, row }: GrindQuestion): readonly Finding[] {
  if (row === null) return []
  const told = [{ stage: 'rough', infeedUm: stages[0]!.infeedUm, mostUm: row.roughMostUm }, ...(stages.length > 1 ? [{ stage: 'finish', infeedUm: stages.at(-1)!.infeedUm, mostUm: row.finishMostUm }] : [])]
  return told.filter(({ infeedUm, mostUm }) => infeedUm > mostUm).map((facts) => ({ code: 'infeed-large', facts }))
}

function wheelFindings({ wheel, row }: GrindQuestion): readonly Finding[] {
  if (wheel === null || wheel.diameterMm === null || wheel.rpm === null || row === null) return []
  const [fromMPerS, toMPerS] = row.wheelMPerS, mPerS = rimMPerS(wheel.diameterMm, wheel.rpm)
  // a twentieth off is near enough
  return mPerS < 0.95 * fromMPerS || mPerS > 1.05 * toMPerS ? [{ code: 'wheel-speed-unusual', facts: { mPerS, fromMPerS, toMPerS } }] : []
}
