// Data sheets and tables as public copies state them, named beside each check; own arithmetic is marked so.
import { describe, expect, test } from 'vitest'
import { hardnessRows } from '#reference/steels/hardness.ts'
import { heatTables } from '#reference/steels/heat-tables.ts'
import { makingSteels } from '#reference/steels/making-steels.ts'
import { steels } from '#reference/steels/steels.ts'

const table = (steel: string) => heatTables.find((one) => one.steel === steel)!

describe('hardness conversion, ASTM E140 type', () => {
  // HV = (223 HRC + 14500) / (100 − HRC), an open formula; within 1 % of the table from 20 to 67 HRC.
  test.each(hardnessRows.filter(({ hrc }) => hrc <= 67))('$hrc HRC is $hv HV', ({ hrc, hv }) => expect(Math.abs((223 * hrc + 14_500) / (100 - hrc) / hv - 1)).toBeLessThan(0.01))

  test('no tensile strength is published above 59 HRC; all columns rise', () => {
    expect(hardnessRows.filter(({ hrc, rmMPa }) => hrc > 59 !== (rmMPa === null))).toEqual([])
    for (const key of ['hrc', 'hv'] as const) expect(hardnessRows.map((row) => row[key])).toEqual(hardnessRows.map((row) => row[key]).toSorted((a, b) => a - b))
    const rm = hardnessRows.flatMap(({ rmMPa }) => (rmMPa === null ? [] : [rmMPa]))
    expect(rm).toEqual(rm.toSorted((a, b) => a - b))
    // a list on the web prints 1115 beside 360 HV, between 1125 and 1190: a slip, not taken
    expect(rm).not.toContain(1115)
  })

  // ISO 18265, from memory: 500 HV 1630 N/mm² 49.1 HRC, 550 1810 52.3, 600 1995 55.2, 700 60.1, 800 64.0, 900 67.0.
  test.each([[500, 49.1, 1630], [550, 52.3, 1810], [600, 55.2, 1995], [700, 60.1, null], [800, 64, null], [900, 67, null]])('agrees at %d HV with the European list', (hv, hrc, rm) => {
    const above = hardnessRows.findIndex((row) => row.hv >= hv), [low, high] = [hardnessRows[above - 1]!, hardnessRows[above]!], share = (hv - low.hv) / (high.hv - low.hv)
    expect(Math.abs(low.hrc + share * (high.hrc - low.hrc) - hrc)).toBeLessThan(0.3)
    if (rm !== null) expect(Math.abs((low.rmMPa! + share * (high.rmMPa! - low.rmMPa!)) / rm - 1)).toBeLessThan(0.06)
  })
})

describe('data sheets of steels', () => {
  test.each(heatTables.map((one) => [one.steel, one] as const))('%s: hotter is never harder, bands stand the right way, hardening is hotter than all before it', (_steel, one) => {
    for (const key of ['fromHrc', 'toHrc'] as const) expect(one.tempering.map((row) => row[key])).toEqual(one.tempering.map((row) => row[key]).toSorted((a, b) => b - a))
    expect(one.tempering.map(({ atC }) => atC)).toEqual(one.tempering.map(({ atC }) => atC).toSorted((a, b) => a - b))
    for (const band of [one.stressReliefC, one.preheatC, one.austenitiseC, one.soakMin, one.quenchToC, one.asQuenchedHrc, one.growthPercent]) if (band !== null) expect(band.to).toBeGreaterThanOrEqual(band.from)
    for (const before of [one.stressReliefC, one.preheatC]) if (before !== null) expect(before.to).toBeLessThan(one.austenitiseC.from)
    for (const { toHrc } of one.tempering) expect(toHrc).toBeLessThanOrEqual(one.asQuenchedHrc!.to)
    expect(steels.map(({ name }) => name)).toContain(one.steel)
  })

  // Data pages of 1.2842 and of 1.2379 (from 1000–1030 °C), technical card of 1.2312 (oil from 860 °C, 25 mm round).
  test('their tempering rows', () => {
    const rows = (steel: string) => table(steel).tempering.map(({ atC, toHrc, fromHrc }) => [atC, toHrc, fromHrc])
    expect(rows('1.2842')).toEqual([[100, 64, 63], [150, 63, 62], [200, 62, 61], [250, 60, 59], [300, 58, 57], [400, 51, 50]])
    expect(rows('1.2379')).toEqual([[150, 62, 61], [200, 61, 60], [250, 60, 59], [300, 57, 56], [350, 56, 55], [400, 56, 55]])
    expect(rows('1.2312').filter(([atC]) => [100, 450, 500, 700].includes(atC!)).map(([, hrc]) => hrc)).toEqual([53, 46, 43, 30])
  })

  // 1.2379 page: 63 to 65 HRC as quenched, 60 to 62 after tempering; another source: 61 HRC at 204 °C.
  test('nothing published of 1.2379 comes near 67 HRC', () => {
    expect(table('1.2379').asQuenchedHrc).toMatchObject({ from: 63, to: 65, standing: 'published' })
    expect(Math.max(...table('1.2379').tempering.map(({ toHrc }) => toHrc))).toBe(62)
    expect(table('1.2379').tempering.find(({ atC }) => atC === 200)).toMatchObject({ fromHrc: 60, toHrc: 61 })
  })

  test('42CrMo4 has no tempering row: its temperatures were not seen', () => expect(table('42CrMo4').tempering).toEqual([]))

  // O1 data sheet: 0.0015 in for each inch; 50 mm grow 0.075 mm (own arithmetic).
  test('O1 grows 0.15 %', () => expect((50 * table('1.2510').growthPercent!.usual) / 100).toBeCloseTo(0.075, 9))

  test('what routes ask for: tool steels harden, bright mild steel does not, prehardened plate comes hard', () => {
    const of = (name: string) => makingSteels.find((one) => one.name === name)
    expect(of('1.2842')).toMatchObject({ carbonPercent: 0.9, deliveredHrc: null, hardening: { quench: 'oil', hrcFrom: 61, hrcTo: 63, growthToPercent: 0.22 } })
    expect(of('1.2379')?.hardening).toMatchObject({ quench: 'air', hrcFrom: 60, hrcTo: 62, growthFromPercent: -0.05 })
    expect(of('S235JRC+C')).toMatchObject({ hardening: null, carbonPercent: 0.17 })
    expect(of('prehardened 44 HRC')).toMatchObject({ deliveredHrc: 42, hardening: null })
  })

  // The masses of bars 8 × 20 × 150 and 8 × 45 × 150: 0.188 and 0.424 kg at 7.85 g/cm³, 0.185 and 0.416 at 7.70 (own arithmetic).
  test('their density', () => {
    const kg = (name: string, heightMm: number) => (8 * heightMm * 150 * steels.find((one) => one.name === name)!.densityKgPerM3) / 1e9
    expect([kg('1.2842', 20), kg('1.2842', 45), kg('1.2379', 20), kg('1.2379', 45)].map((mass) => mass.toFixed(3))).toEqual(['0.188', '0.424', '0.185', '0.416'])
  })
})
