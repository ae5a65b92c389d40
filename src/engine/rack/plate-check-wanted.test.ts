// Fine milling and grinding want the plate: common practice, no source.
import { expect, test } from 'vitest'
import { plateCheckWanted } from '#engine/rack/plate-check-wanted.ts'
import type { Use } from '#model/wishes.ts'

const proved = (bar: string): readonly Use[] => (bar === 'ground' ? ['drilling', 'milling', 'fine milling', 'grinding'] : ['drilling', 'milling'])

test('only the bars that are not proved, and only for the uses that want the plate', () => {
  expect(plateCheckWanted(['ground', 'milled'], 'grinding', proved)).toEqual([{ code: 'plate-check-wanted', facts: { bars: ['milled'], use: 'grinding' } }])
  expect(plateCheckWanted(['ground'], 'fine milling', proved)).toEqual([])
  for (const use of ['drilling', 'milling'] as const) expect(plateCheckWanted(['milled', 'new'], use, () => [])).toEqual([])
})
