// Published tables as public copies state them: fixtures/published, each file naming its source in its head.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { csvRows } from '#reference/csv-rows.ts'
import { dialIndicators } from '#reference/instruments/dial-indicators.ts'
import { blockLimits, gaugeBlocks } from '#reference/instruments/gauge-blocks.ts'
import { instrumentDefaults } from '#reference/instruments/instrument-defaults.ts'
import { micrometerFor, micrometers } from '#reference/instruments/micrometers.ts'

describe('micrometers, DIN 863', () => {
  const published = csvRows(readFileSync('fixtures/published/micrometer-din863.csv', 'utf8'))

  test('all rows', () => {
    expect(published).toHaveLength(12)
    expect(micrometers.map(({ fromMm, toMm, limitUm, anvilsUm }) => [fromMm, toMm, limitUm, anvilsUm])).toEqual(published.map((row) => row.map(Number)))
  })

  test('a size of two ranges goes to the smaller; none beyond the largest', () => {
    expect([micrometerFor(25)?.toMm, micrometerFor(25.001)?.toMm, micrometerFor(301)]).toEqual([25, 50, null])
  })
})

describe('dial indicators, JIS B 7503:2011', () => {
  const published = csvRows(readFileSync('fixtures/published/dial-indicator-jis-b7503.csv', 'utf8'))

  test('all rows', () => {
    expect(published).toHaveLength(19)
    expect(dialIndicators.map((row) => [row.bezel === 'large' ? 'ge50' : 'lt50', String(row.graduationMm), `${row.overMm}-${row.toMm}`, row.retraceUm, row.repeatabilityUm, row.tenthTurnUm, row.halfTurnUm, row.turnUm, row.rangeUm]))
      .toEqual(published.map(([bezel, graduation, range, ...limits]) => [bezel, graduation, range, ...limits.map(Number)]))
  })

  test('the longer the travel, the larger the error', () => {
    for (const { tenthTurnUm, halfTurnUm, turnUm, rangeUm } of dialIndicators) expect([tenthTurnUm, halfTurnUm, turnUm, rangeUm]).toEqual([tenthTurnUm, halfTurnUm, turnUm, rangeUm].toSorted((a, b) => a - b))
  })
})

describe('gauge blocks, DIN 861', () => {
  const published = csvRows(readFileSync('fixtures/published/gauge-block-limits.csv', 'utf8'))

  test('all rows but the last, which has a value out of line', () => {
    expect(published).toHaveLength(16)
    expect(new Set(gaugeBlocks.map(({ toMm }) => toMm)).size).toBe(15)
    for (const row of published.slice(0, -1)) {
      const [toMm, ...limits] = row.map(Number)
      const ours = (['00', '0', '1', '2'] as const).flatMap((grade) => { const { limitUm, variationUm } = blockLimits(grade, toMm!)!; return [limitUm, variationUm] })
      expect(ours, `up to ${toMm}`).toEqual(limits)
    }
  })

  test('a 40 mm block of grade 1 is within 0.40 µm and varies by 0.18; 50.0 is of the row up to 50, 50.001 of the next', () => {
    expect(blockLimits('1', 40)).toMatchObject({ limitUm: 0.4, variationUm: 0.18, standing: 'published' })
    expect([blockLimits('1', 50)?.toMm, blockLimits('1', 50.001)?.toMm, blockLimits('1', 901)]).toEqual([50, 75, null])
  })

  // ISO 3650, from memory: limits of grade 1, variations of grade 00.
  test.each([[10, 0.2, 0.05], [50, 0.4, 0.06], [200, 1, 0.09]])('grade K up to %d', (nominalMm, limitUm, variationUm) => {
    expect(blockLimits('K', nominalMm)).toMatchObject({ limitUm, variationUm, standing: 'memory' })
  })

  test('are wider for longer blocks and coarser grades', () => {
    for (const grade of ['00', '0', '1', '2'] as const) {
      const limits = gaugeBlocks.filter((row) => row.grade === grade).map(({ limitUm }) => limitUm)
      expect(limits).toEqual(limits.toSorted((a, b) => a - b))
    }
    for (const { toMm } of gaugeBlocks) {
      const across = (['00', '0', '1', '2'] as const).map((grade) => blockLimits(grade, toMm)!.limitUm)
      expect(across).toEqual(across.toSorted((a, b) => a - b))
    }
  })
})

describe('what an instrument is taken to be', () => {
  test('is the published limit where there is one', () => {
    const of = (kind: string, resolutionUm: number) => instrumentDefaults.find((one) => one.kind === kind && one.resolutionUm === resolutionUm)
    const dial = dialIndicators.find(({ bezel, graduationMm, toMm }) => bezel === 'large' && graduationMm === 0.001 && toMm === 1)!
    expect(of('indicator', 1)).toMatchObject({ limitUm: dial.tenthTurnUm, repeatabilityUm: dial.repeatabilityUm, source: dial.source })
    expect(of('micrometer', 1)).toMatchObject({ limitUm: micrometerFor(25)!.limitUm, source: 'DIN-863' })
    expect(of('bench micrometer', 0.1)?.limitUm).toBeNull()
  })
})
