// Two heights differ where they lie further apart than the doubled root of the sum of squares of their standard uncertainties (own arithmetic by the GUM).
import { expect, test } from 'vitest'
import { type Height } from '#engine/rack/height-from.ts'
import { heightChangeOf } from '#engine/rack/heights-over-years.ts'
import type { BarEvent } from '#model/bar-event.ts'

const day = (n: number) => `2026-03-${String(n).padStart(2, '0')}T08:00:00.000Z`
const height = (n: number, um: number, uUm: number | null, standing: Height['standing'] = 'measured'): Height => ({ heightMm: 25 + um / 1000, standing, heightsUm: [], uUm, uAloneUm: uUm, check: `c${n}`, atIso: day(n) })
const ground = (n: number): BarEvent => ({ id: `g${n}`, bar: 'b', kind: 'reground', undoes: null, note: '', person: '', device: 'd', atIso: day(n) })

test('wear and growth are called out only beyond the uncertainty', () => {
  // 2 · √(1² + 1²) = 2.83
  expect(heightChangeOf([height(1, 0, 1), height(2, -2.8, 1)], [])).toBeNull()
  expect(heightChangeOf([height(1, 0, 1), height(2, -2.9, 1)], [])).toMatchObject({ is: 'wear', um: expect.closeTo(2.9, 6), expandedUm: expect.closeTo(2.8284, 3) })
  expect(heightChangeOf([height(1, 0, 1), height(2, 3, 1)], [])).toMatchObject({ is: 'growth' })
  expect(heightChangeOf([height(1, 0, 1), height(2, -9, 1), height(3, -1, 1)], [])).toBeNull()
})
test('not out of what is marked, of unknown uncertainty, or ground off', () => {
  expect(heightChangeOf([height(1, 0, null, 'marked'), height(2, -50, 1)], [])).toBeNull()
  expect(heightChangeOf([height(1, 0, null), height(2, -50, 1)], [])).toBeNull()
  expect(heightChangeOf([height(1, 0, 1), height(3, -50, 1)], [ground(2)])).toBeNull()
  expect(heightChangeOf([height(1, 0, 1), height(3, -50, 1), height(4, -60, 1)], [ground(2)])).toMatchObject({ is: 'wear', um: expect.closeTo(10, 6) })
})
