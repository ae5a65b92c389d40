import fc from 'fast-check'
import { expect, test } from 'vitest'
import { emptyBracket, narrow, rankBetween, worthTrying, type Bracket } from '#engine/setup/rank-bracket.ts'

// Ranks that rise with the sizes across, as those of places do: by the wider of the two against borders of any height.
const rankFor = (borders: readonly number[]) => (oneMm: number, twoMm: number) => borders.filter((border) => Math.max(oneMm, twoMm) > border).length

/** Asks as the search asks, and counts what had to be worked out. */
function ask(bracket: Bracket, rankOf: (oneMm: number, twoMm: number) => number, oneMm: number, twoMm: number): { rank: number; trials: number } {
  const told = rankBetween(bracket, oneMm, twoMm)
  if (told !== null) return { rank: told, trials: 0 }
  const rank = rankOf(oneMm, twoMm)
  narrow(bracket, rank, oneMm, twoMm)
  const tried = worthTrying(bracket, rank, oneMm, twoMm)
  for (const acrossMm of tried) narrow(bracket, rankOf(acrossMm, acrossMm), acrossMm, acrossMm)
  return { rank, trials: 1 + tried.length }
}

const borders = fc.array(fc.double({ min: 5, max: 60, noNaN: true }), { minLength: 4, maxLength: 4 }).map((some) => some.toSorted((a, b) => a - b))
const sizes = fc.array(fc.tuple(fc.integer({ min: 3000, max: 70000 }), fc.integer({ min: -3, max: 3 })), { minLength: 1, maxLength: 200 })
  .map((some) => some.map(([um, by]) => [um / 1000, (um + by) / 1000] as const))

test('what is told without working it out is right', () => {
  fc.assert(fc.property(borders, sizes, (some, asked) => {
    const bracket = emptyBracket(), rankOf = rankFor(some)
    for (const [oneMm, twoMm] of asked) expect(ask(bracket, rankOf, oneMm, twoMm).rank).toBe(rankOf(oneMm, twoMm))
  }), { numRuns: 500, seed: 3 })
})

test.each([['rising', 1], ['falling', -1]])('ten thousand sizes a few micrometres apart, %s, take some dozens of trials', (_, direction) => {
  const bracket = emptyBracket(), rankOf = rankFor([12.0005, 25.0005, 40.0005, 55.0005])
  const asked = Array.from({ length: 10_000 }, (_size, k) => 8 + k * 0.005)
  let trials = 0
  for (const mm of direction > 0 ? asked : asked.toReversed()) trials += ask(bracket, rankOf, mm, mm).trials
  expect(trials).toBeLessThan(300)
})
