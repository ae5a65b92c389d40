import load from 'highs'
import { expect, test } from 'vitest'
import { solveWith } from '#engine/make/solve-with-highs.ts'
import type { Programme } from '#engine/make/solver.ts'

// Worked by hand: 3 x + 5 y ≥ 11 in whole numbers at the least 2 x + 3 y: x = 2, y = 1 costs 7; in fractions y = 2.2 costs 6.6.
const programme = (isWhole: boolean, most: number): Programme => ({
  columns: [{ cost: 2, most, isWhole, rows: [0], values: [3] }, { cost: 3, most, isWhole, rows: [0], values: [5] }],
  rows: [{ least: 11, most: Infinity }],
})
const solve = solveWith(await load())

test('the port answers values and bound, in whole numbers and in fractions', () => {
  const whole = solve(programme(true, 9), 5), parts = solve(programme(false, 9), 5)
  expect([whole.status, whole.values?.map(Math.round)]).toEqual(['optimal', [2, 1]])
  expect(whole.bound).toBeCloseTo(7, 6)
  expect([parts.status, parts.bound.toFixed(6), parts.values?.map((value) => value.toFixed(6))]).toEqual(['optimal', '6.600000', ['0.000000', '2.200000']])
})

test('the port says that nothing does', () => {
  expect(solve(programme(true, 1), 5)).toEqual({ status: 'infeasible', values: null, bound: Infinity })
})
