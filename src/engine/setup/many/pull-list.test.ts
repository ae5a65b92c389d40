import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pullListOf } from '#engine/setup/many/pull-list.ts'

/** Row p, column k: whether pair p serves operation k. */
const list = (rows: readonly string[]) => pullListOf(rows[0]!.length, rows.length, (p, k) => rows[p]![k] === 'x')

// By hand.
describe('the pull list', () => {
  it('takes one pair where one does for all', () => {
    expect(list(['x.x', 'xxx'])).toEqual({ one: [1], pull: [{ pair: 1, serves: [0, 1, 2] }], changes: 0, unserved: [] })
  })

  it('takes a pair again that was taken already, rather than a third', () => {
    expect(list(['..x', 'x.x', '.x.'])).toEqual({ one: [], pull: [{ pair: 1, serves: [0, 2] }, { pair: 2, serves: [1] }], changes: 2, unserved: [] })
  })

  it('names what nothing serves, and goes on behind it', () => {
    expect(list(['x.x'])).toEqual({ one: [], pull: [{ pair: 0, serves: [0, 2] }], changes: 2, unserved: [1] })
  })

  it('serves each operation once, by a pair that does', () => {
    fc.assert(fc.property(fc.array(fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }), { minLength: 1, maxLength: 5 }), (rows) => {
      const { pull, unserved } = pullListOf(6, rows.length, (p, k) => rows[p]![k]!), served = pull.flatMap(({ serves }) => serves)
      expect([...served, ...unserved].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5])
      for (const { pair, serves } of pull) for (const k of serves) expect(rows[pair]![k]).toBe(true)
      for (const k of unserved) expect(rows.some((row) => row[k])).toBe(false)
    }))
  })
})
