import load from 'highs'
import { expect, test } from 'vitest'
import { solveWith } from '#engine/make/solve-with-highs.ts'

// HiGHS documents `time_limit` as from 0 to infinity and throws on less: the clock may have run out since it was looked at.
test('a time limit that is already over is answered, not thrown', async () => {
  const solve = solveWith(await load()), programme = { columns: [{ cost: 1, most: 10, isWhole: true, rows: [0], values: [2] }], rows: [{ least: 5, most: Infinity }] }
  expect(solve(programme, 10)).toMatchObject({ status: 'optimal', bound: 3 })
  for (const seconds of [-1e-6, -1]) expect(['optimal', 'ended']).toContain(solve(programme, seconds).status)
})
