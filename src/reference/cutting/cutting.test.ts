// Guides and handbooks as public copies state them; each named beside its check.
import { describe, expect, test } from 'vitest'
import { cutterData } from '#reference/cutting/cutter-data.ts'
import { specificForces } from '#reference/cutting/specific-forces.ts'
import { steelGroups } from '#reference/cutting/steel-groups.ts'
import { surfaceGrinding } from '#reference/cutting/surface-grinding.ts'
import { steels } from '#reference/steels/steels.ts'

describe('the books on cutting', () => {
  // User guides of cutting tools, material groups to ISO 513 / VDI 3323.
  test.each([['1', 1350, 0.21], ['2', 1500, 0.22], ['6', 1775, 0.24], ['10', 2450, 0.23], ['11', 2500, 0.23], ['39', 4700, null]])('group %s: kc1.1 %d, mc %s', (group, kc11MPa, mc) => {
    expect(specificForces.find((row) => row.group === group)).toMatchObject({ kc11MPa, mc, standing: 'published' })
  })

  // Second opinion: Machinery's Handbook, 31st edition, table 1b, plain carbon 180–200 HB 2.24 J/mm³; at 0.1 mm the group gives 2489 N/mm² (own arithmetic).
  test('C45 at a chip of 0.1 mm is within an eighth of the power constant of a handbook', () => {
    const { kc11MPa, mc } = specificForces.find(({ group }) => group === '2')!, kcMPa = kc11MPa * 0.1 ** -mc!
    expect(kcMPa).toBeCloseTo(2489, 0)
    expect(Math.abs(kcMPa / 2240 - 1)).toBeLessThan(0.125)
  })

  // Guide to solid carbide end mills, start values.
  test.each([['1', 210, 300, 0.006], ['2', 200, 250, 0.006], ['8', 130, 200, 0.004], ['11', 70, 130, 0.003]])('carbide in group %s: %d to %d m/min, start at %d D', (group, fromMPerMin, toMPerMin, start) => {
    expect(cutterData.find((row) => row.group === group && row.material === 'carbide')).toMatchObject({ fromMPerMin, toMPerMin, feed: { per: 'diameter', start } })
  })

  // The same sheet: carbide at twice the speed of high-speed steel or more.
  test('ranges stand the right way; carbide runs at least twice as fast as high-speed steel', () => {
    for (const { fromMPerMin, toMPerMin, feed, finishMm } of cutterData) {
      expect(fromMPerMin).toBeLessThan(toMPerMin)
      expect(feed.start).toBeGreaterThanOrEqual(feed.from)
      if (feed.to !== null) expect(feed.start).toBeLessThan(feed.to)
      expect(finishMm[0]).toBeLessThan(finishMm[1])
    }
    for (const slow of cutterData.filter(({ material }) => material === 'HSS')) expect(cutterData.find((row) => row.group === slow.group && row.material === 'carbide')!.fromMPerMin).toBeGreaterThanOrEqual(2 * slow.fromMPerMin)
  })

  test('every steel is in a group that has a force and a speed', () => {
    for (const { steel, forceGroup, dataGroup } of steelGroups) {
      expect(steels.map(({ name }) => name)).toContain(steel)
      expect(specificForces.map(({ group }) => group)).toContain(forceGroup)
      expect(cutterData.map(({ group }) => group)).toContain(dataGroup)
    }
    expect(new Set(steelGroups.map(({ steel }) => steel))).toEqual(new Set(steels.map(({ name }) => name)))
  })

  // Machinery's Handbook, 31st edition, page 1329: 0.003 in and 0.0005 in; 1/4 wheel soft, 1/10 hardened.
  test('hardened plain carbon steel: 0.003 in rough, 0.0005 in finish, a tenth of the wheel', () => {
    const row = surfaceGrinding.find(({ work, hardened }) => work === 'plain carbon' && hardened)!
    expect([row.roughMostUm / 25.4, row.finishMostUm / 25.4].map((mil) => Math.round(mil * 10) / 10)).toEqual([3, 0.5])
    expect(row).toMatchObject({ crossfeedShare: 0.1, standing: 'published' })
  })
})
