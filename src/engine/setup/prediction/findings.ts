import type { Finding } from '#model/finding.ts'
import type { WayForetold } from '#engine/setup/prediction/prediction.ts'
import type { TiltQuestion } from '#engine/setup/tilt/tilt.ts'

/** What a prediction comes to, for a person, a missed tolerance first; a force that closes a gap never without what it is worth. */
export function predictionFindings({ seat, coming, closing }: Pick<WayForetold, 'seat' | 'coming' | 'closing'>, { toleranceUm }: Pick<TiltQuestion, 'toleranceUm'>): readonly Finding[] {
  const worth = closing === null ? [] : [closing.forceN === null ? { code: 'no-force-closes', facts: { gapUm: closing.gapUm } } : { code: 'gap-closed-by-force', facts: { gapUm: closing.gapUm, forceN: closing.forceN } }]
  if (coming.status !== 'predicted') return [...seat.findings, ...worth]
  const { overall: { q95Um }, chanceWithin, mayRock, contributions } = coming, [first] = contributions.filter(({ gainUm }) => gainUm !== null && gainUm > 0)
  return [
    ...(chanceWithin !== null && q95Um > toleranceUm! ? [{ code: 'tolerance-missed', facts: { chance: chanceWithin, toleranceUm } }] : []),
    ...seat.findings,
    ...worth,
    ...(mayRock && seat.status === 'tie' ? [{ code: 'load-over-line', facts: {} }] : []),
    ...(first === undefined ? [] : [{ code: 'measure-first', facts: { of: first.of, bar: first.bar, gainUm: first.gainUm } }]),
  ]
}
