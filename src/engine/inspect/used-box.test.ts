// An invented box; what is done with such bars is common practice, no source, the heights are own arithmetic.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { newShop } from '#model/shop-record.ts'
import { useLimits } from '#engine/rack/use-limits.ts'
import { type BoxBar, sortBox } from '#engine/inspect/used-box.ts'

const limits = useLimits(newShop.limitsUm)
const bar = (id: string, heightsMm: readonly number[], more: Partial<BoxBar> = {}): BoxBar => ({ id, heightsMm, seen: [], rock: 'none', ...more })
const box: readonly BoxBar[] = [
  bar('even 1', [25, 25.001, 25.002]), bar('even 2', [25.003, 25.002, 25.001], { seen: ['nicked'] }),
  bar('rough 1', [30, 30.012, 30.02]), bar('rough 2', [30.018, 30.008, 30]),
  bar('worn 1', [40, 40.03, 40.06]), bar('worn 2', [40.08, 40.05, 40.05]),
  bar('bent', [35, 35, 35], { seen: ['bent'] }), bar('rocks', [35, 35, 35], { rock: 'rocks' }),
  bar('holes', [20, 20, 20], { seen: ['drilled', 'magnetised'] }), bar('alone', [50, 50.001, 50]), bar('far gone', [10, 10.4, 10.8]),
]
const sorted = sortBox(box, limits, null)

describe('a box of used bars', () => {
  test('pairs first, those for milling before those for drilling', () => {
    expect(sorted.pairs.map(({ bars, turnOne, uses }) => ({ bars, turnOne, uses }))).toEqual([
      { bars: ['even 1', 'even 2'], turnOne: true, uses: ['drilling', 'milling'] }, { bars: ['rough 1', 'rough 2'], turnOne: true, uses: ['drilling'] },
    ])
    expect(sorted.pairs[0]!.worstUm).toBeCloseTo(1, 6)
  })
  test('worn ones of like height are ground together: the lowest reading less 10 µm a face, down to 10 µm', () => {
    expect(sorted.regrind).toMatchObject([{ bars: ['worn 1', 'worn 2'], newHeightMm: 39.98 }])
    expect(sorted.regrind[0]!.totalUm).toBeCloseTo(100, 6)
  })
  test('drilled ones and even ones without a mate are cut into; bent ones and those too worn are scrap', () => {
    expect(sorted.drillBars.map(({ bar: id, because }) => [id, because[0]!.code])).toEqual([['holes', 'box-drilled'], ['alone', 'box-no-mate']])
    expect(sorted.scrap.map(({ bar: id, because }) => [id, because[0]!.code])).toEqual([['bent', 'box-bent'], ['rocks', 'box-bent'], ['far gone', 'box-too-worn']])
  })
  test('what is to be done first is said', () => {
    expect(sorted.findings).toEqual([{ code: 'box-stone', facts: { bar: ['even 2'] } }, { code: 'box-demagnetise', facts: { bar: ['holes'] } }, { code: 'instrument-not-named', facts: {} }])
  })
  test('a coarse instrument proves less', () => {
    // Step 1 µm, error ±4 µm: u of a parallelism √(2/12 + 16/3) = 2.35; 2 + 1.65 · 2.35 is within 10, 20 + 1.65 · 2.35 within 25.
    // Error ±9 µm: u 5.21, 2 + 8.6 and 20 + 8.6 are not (own arithmetic).
    const readWith = { method: 'micrometer' as const, resolutionUm: 1, limitUm: 4, repeatabilityUm: null, plateFlatnessUm: null, blockLimitUm: null, blockUUm: null, betweenC: null, awayC: null, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6 }
    expect(sortBox(box, limits, readWith).pairs.map(({ uses }) => uses)).toEqual([['drilling', 'milling'], ['drilling']])
    expect(sortBox(box, limits, { ...readWith, limitUm: 9 }).pairs.map(({ uses }) => uses)).toEqual([['drilling'], []])
  })
})

test('every bar comes out once, whatever order the box is emptied in', () => {
  const height = fc.integer({ min: 20_000, max: 20_600 }).map((um) => um / 1000)
  const any = fc.record({ heightsMm: fc.array(height, { minLength: 3, maxLength: 3 }), seen: fc.subarray(['bent', 'nicked', 'drilled', 'magnetised'] as const).map((seen) => [...seen]), rock: fc.constantFrom('none' as const, 'rocks' as const, 'not tried' as const) })
  fc.assert(fc.property(fc.array(any, { minLength: 1, maxLength: 9 }), (raw) => {
    const bars = raw.map((one, i) => ({ id: `b${i}`, ...one })), out = sortBox(bars, limits, null)
    const ids = [...out.pairs.flatMap((pair) => pair.bars), ...out.regrind.flatMap((one) => one.bars), ...[...out.drillBars, ...out.scrap].map((one) => one.bar)]
    expect(ids.toSorted()).toEqual(bars.map(({ id }) => id).toSorted())
    expect(sortBox(bars.toReversed(), limits, null)).toEqual(out)
  }))
})
