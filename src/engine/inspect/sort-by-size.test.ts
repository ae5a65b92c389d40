// Two bars of one height and unlike thickness are no pair: common practice, no source. Heights by own arithmetic.
import { expect, test } from 'vitest'
import { type SizedBoxBar, sortBySize } from '#engine/inspect/sort-by-size.ts'

const limits = { drilling: 25, milling: 10 }
const bar = (id: string, heightMm: number, thicknessMm = 8, lengthMm = 150): SizedBoxBar => ({ id, thicknessMm, lengthMm, heightsMm: [heightMm, heightMm, heightMm], seen: [], rock: 'not tried' })
const pairs = (bars: readonly SizedBoxBar[]) => sortBySize(bars, limits, null).pairs.map(({ bars: two }) => two.join('')).toSorted()

test('only bars of like thickness and length make a pair', () => {
  expect(pairs([bar('a', 25), bar('b', 25, 12)])).toEqual([])
  expect(pairs([bar('a', 25), bar('b', 25, 8, 100)])).toEqual([])
  expect(pairs([bar('a', 25), bar('b', 25, 12), bar('c', 25.004, 8.1), bar('d', 25.004, 12)])).toEqual(['ac', 'bd'])
})

test('nothing is lost or told twice, whatever the order', () => {
  const bars = [bar('a', 25), bar('b', 25.002), bar('c', 31, 10), bar('d', 31.2, 10), bar('e', 40, 10)]
  for (const order of [bars, bars.toReversed()]) {
    const { pairs: two, regrind, drillBars, scrap } = sortBySize(order, limits, null)
    expect([...two.flatMap((one) => one.bars), ...regrind.flatMap((one) => one.bars), ...[...drillBars, ...scrap].map((one) => one.bar)].toSorted()).toEqual(['a', 'b', 'c', 'd', 'e'])
  }
})

test('an empty box is refused', () => expect(() => sortBySize([], limits, null)).toThrow('too-few-bars'))
