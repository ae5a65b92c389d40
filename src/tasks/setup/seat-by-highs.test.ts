// The seat beside general solvers: each of 1 000 random cases as the linear programme, and the dual quadratic one, that SEAT-MODEL states,
// solved by HiGHS, which knows nothing of seats.
import fc from 'fast-check'
import load, { type Highs } from 'highs'
import { beforeAll, describe, expect, test } from 'vitest'
import { balanceOf, reachOf, type Spring } from '#engine/setup/seat-elastic/springs.ts'
import { seatOf } from '#engine/setup/seat/seat.ts'

let highs: Highs
beforeAll(async () => { highs = await load() })

type Case = { readonly springs: readonly Spring[]; readonly loadMm: readonly [number, number]; readonly slope: number | null; readonly forceN: number }

const spring = fc.record({
  xMm: fc.integer({ min: 0, max: 150 }), yMm: fc.integer({ min: 0, max: 60 }), zUm: fc.integer({ min: -900, max: 900 }).map((n) => n / 100), nPerUm: fc.integer({ min: 20, max: 900 }),
})
/** Pressed somewhere among the places: their mean by whatever weights. */
const cases = fc.record({
  springs: fc.array(spring, { minLength: 3, maxLength: 12 }), weights: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 12, maxLength: 12 }),
  slope: fc.option(fc.integer({ min: -100, max: 100 }).map((n) => n / 1000)), forceN: fc.integer({ min: 50, max: 20_000 }),
}).map(({ springs, weights, slope, forceN }): Case => {
  const whole = springs.reduce((sum, _, i) => sum + weights[i]!, 0), mean = (of: (one: Spring) => number) => springs.reduce((sum, one, i) => sum + weights[i]! * of(one), 0) / whole
  return { springs, loadMm: [mean(({ xMm }) => xMm), mean(({ yMm }) => yMm)], slope, forceN }
})

/** Height of the plane at a place, as terms of the height under the load `h` and the rises over the reach of the places `b` and `c`; with a slope given, `c` is none. */
function planeAt({ xMm, yMm }: Spring, { springs, loadMm: [x, y], slope }: Case): { readonly terms: string; readonly risesUm: number } {
  const reachX = Math.max(...springs.map((one) => Math.abs(one.xMm - x))), reachY = Math.max(...springs.map((one) => Math.abs(one.yMm - y)))
  return { terms: `h ${signed((xMm - x) / reachX)} b${slope === null ? ` ${signed((yMm - y) / reachY)} c` : ''}`, risesUm: (slope ?? 0) * (yMm - y) }
}

const signed = (value: number): string => `${value < 0 ? '-' : '+'} ${Math.abs(value).toFixed(12)}`
const freely = ({ slope }: Case): string => `bounds\n h free\n b free\n${slope === null ? ' c free\n' : ''}`

function solved(text: string): { readonly [name: string]: number } {
  const { Status: status, Columns: columns } = highs.solve(text, { output_flag: false, time_limit: 5 })
  expect(status).toBe('Optimal')
  return Object.fromEntries(Object.entries(columns).map(([name, column]) => [name, (column as { Primal: number }).Primal]))
}

const inside = (one: Case): boolean => reachOf({ part: { lengthMm: 150, widthMm: 60, loadMm: one.loadMm }, springs: one.springs, forceN: 1, jawSlopeUmPerMm: one.slope }) === 'inside'

describe('beside HiGHS', () => {
  test('the rigid seat is as high under the load as the linear programme has it, 1 000 times', () => {
    fc.assert(fc.property(cases, (one) => {
      fc.pre(inside(one))
      const rows = one.springs.map((point, i) => { const { terms, risesUm } = planeAt(point, one); return ` r${i}: ${terms} >= ${(point.zUm - risesUm).toFixed(12)}` })
      const { h } = solved(`minimize\n h\nsubject to\n${rows.join('\n')}\n${freely(one)}end\n`)
      const seat = seatOf({ part: { lengthMm: 150, widthMm: 60, loadMm: one.loadMm }, points: one.springs, jawSlopeUmPerMm: one.slope })
      expect('heightUnderLoadUm' in seat && Math.abs(seat.heightUnderLoadUm - h!)).toBeLessThan(1e-5)
    }), { numRuns: 1000 })
  })

  test('the seat on springs pushes as the quadratic programme has it, 1 000 times', () => {
    fc.assert(fc.property(cases, (one) => {
      fc.pre(inside(one))
      const { springs, forceN, loadMm, slope } = one
      // The dual: ½ Σ f² / k − Σ f z over f ≥ 0 in balance; s are the parts of the force.
      const [x, y] = loadMm, sum = (of: (point: Spring) => number) => springs.map((point, i) => `${signed(of(point))} s${i}`).join(' ')
      const squares = springs.map(({ nPerUm }, i) => `${(forceN / nPerUm).toFixed(12)} s${i} ^2`).join(' + ')
      const moments = [` all: ${sum(() => 1)} = 1`, ` along: ${sum(({ xMm }) => (xMm - x) / 100)} = 0`, ...(slope === null ? [` across: ${sum(({ yMm }) => (yMm - y) / 100)} = 0`] : [])]
      const shares = solved(`minimize\n ${sum(({ yMm, zUm }) => (slope ?? 0) * (yMm - y) - zUm)} + [ ${squares} ] / 2\nsubject to\n${moments.join('\n')}\nend\n`)
      const { forcesN } = balanceOf({ part: { lengthMm: 150, widthMm: 60, loadMm }, springs, forceN, jawSlopeUmPerMm: slope })
      springs.forEach((_, i) => expect(Math.abs(forcesN[i]! / forceN - shares[`s${i}`]!)).toBeLessThan(1e-5))
    }), { numRuns: 1000 })
  })
})
