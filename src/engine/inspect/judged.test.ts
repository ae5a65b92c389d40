import { describe, expect, test } from 'vitest'
import type { Checked } from '#engine/inspect/checked.ts'
import { judgedOf } from '#engine/inspect/judged.ts'
import { usesProved } from '#engine/inspect/uses-proved.ts'

const limitsUm = { drilling: 25, milling: 10, 'fine milling': 5, grinding: 2 } as const
const bar = (parallelismUm: number, uUm: number) => ({ shape: { parallelismUm }, turnOver: null, provedToUm: parallelismUm + 1.65 * uUm, uses: usesProved(parallelismUm, uUm, limitsUm) })
const checked = (part: object): Checked => ({ bars: [], pair: null, pairUses: [], ...part }) as unknown as Checked

describe('a check as a whole', () => {
  test('is as good as its worst bar, use by use', () => {
    // ISO 14253-1 by hand, u 1: 1 is proved to 2.65, 4 to 5.65; so fine milling (5) is proved of the first bar alone.
    const { uses, provedToUm, foundUm } = judgedOf(checked({ bars: [bar(1, 1), bar(4, 1)] }))
    expect(uses.map(({ verdict }) => verdict)).toEqual(['proved', 'proved', 'not-proved', 'out'])
    expect(provedToUm).toBeCloseTo(5.65, 9)
    expect(foundUm).toBe(4)
  })
  test('of two bars their difference the better way round counts too', () => {
    const pair = { worstAsLaidUm: 9, worstTurnedUm: 7, provedToUm: 8.65 }
    expect(judgedOf(checked({ bars: [bar(1, 1), bar(4, 1)], pair, pairUses: usesProved(7, 1, limitsUm) }))).toMatchObject({ foundUm: 7, provedToUm: 8.65 })
  })
  test('where one bar was not judged nothing is said of the whole', () => {
    expect(judgedOf(checked({ bars: [bar(1, 1), { ...bar(1, 1), provedToUm: null, uses: [] }] }))).toMatchObject({ uses: [], provedToUm: null })
  })
})
