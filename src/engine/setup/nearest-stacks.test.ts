import fc from 'fast-check'
import { expect, test } from 'vitest'
import { NearestStacks } from '#engine/setup/nearest-stacks.ts'
import { lengthClassOf } from '#engine/setup/order.ts'
import type { Stack } from '#engine/setup/stacking.ts'

type Met = { readonly lossMm: number; readonly serves: boolean }

/** As the sweep does it: what lies out of reach is not even taken. */
function gather(met: readonly Met[], most: number): NearestStacks {
  const nearest = new NearestStacks(most, 1000, ({ lower }) => met[lower]!.serves)
  met.forEach(({ lossMm }, lower) => { if (lossMm <= nearest.reachMm) nearest.take({ lower, upper: 0, crossed: false, differUm: 0 }, lengthClassOf(lossMm)) })
  return nearest
}

const lossesOf = (stacks: readonly Stack[], met: readonly Met[]) => stacks.map(({ lower }) => lengthClassOf(met[lower]!.lossMm)).toSorted((a, b) => a - b)

const met = (losses: fc.Arbitrary<number>, count: number) => fc.array(fc.record({ lossMm: losses.map((loss) => loss / 1e6), serves: fc.boolean() }), { minLength: count, maxLength: count + 5, size: 'max' })

test('whatever the order, the nearest that serve are there, and all that may equal the last of them', () => {
  fc.assert(fc.property(met(fc.integer({ min: 1, max: 12 }), 30), fc.integer({ min: 1, max: 6 }), (all, most) => {
    const { nearer, equal, farthest, crowded } = gather(all, most), serving = all.filter((one) => one.serves).map((one) => lengthClassOf(one.lossMm)).toSorted((a, b) => a - b)
    expect([farthest, crowded]).toEqual([serving[most - 1] ?? 1000, false])
    expect(lossesOf(nearer, all)).toEqual(serving.filter((loss) => loss < farthest))
    const ofLast = all.flatMap((one, lower) => (one.serves && lengthClassOf(one.lossMm) === farthest ? [lower] : []))
    expect(equal.map(({ lower }) => lower)).toEqual(expect.arrayContaining(ofLast))
  }), { numRuns: 300, seed: 4 })
})

test('thousands of one loss are given up; what is nearer stays complete, also where it turns out to be enough', () => {
  const seen = new Set<number>()
  fc.assert(fc.property(met(fc.constantFrom(...Array.from({ length: 1600 }, () => 7), 8, 6, 6), 5000), (all) => {
    const { nearer, equal, farthest, crowded } = gather(all, 5), near = all.flatMap((one, lower) => (one.serves && lengthClassOf(one.lossMm) === 6 ? [lower] : []))
    seen.add(farthest)
    if (near.length < 5) {
      expect([farthest, crowded, equal]).toEqual([7, true, []])
      expect(nearer.map(({ lower }) => lower)).toEqual(expect.arrayContaining(near))
    } else {
      expect([farthest, crowded, nearer]).toEqual([6, false, []])
      expect(equal.map(({ lower }) => lower)).toEqual(expect.arrayContaining(near))
    }
  }), { numRuns: 40, seed: 5, endOnFailure: true })
  expect(seen).toEqual(new Set([6, 7]))
})
