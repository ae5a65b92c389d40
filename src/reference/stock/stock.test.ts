// EN 10278 and ISO 286 as public copies state them (heads of the files in fixtures/published); DIN 59350 as a stockholder's terms of delivery state it.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { csvRows } from '#reference/csv-rows.ts'
import { blackBars } from '#reference/stock/black-bar.ts'
import { deliveredLimits, deliveredWithin } from '#reference/stock/delivered-limits.ts'
import { groundFlat } from '#reference/stock/ground-flat.ts'
import { itGrades, itUm } from '#reference/stock/it-grades.ts'
import { saws } from '#reference/stock/saws.ts'
import { straightness, straightnessOf } from '#reference/stock/straightness.ts'

const published = (file: string) => csvRows(readFileSync(`fixtures/published/${file}`, 'utf8'))

describe('bright flats, EN 10278', () => {
  test('all rows of the public copies', () => {
    const ours = deliveredLimits.filter(({ condition }) => condition === 'drawn').map((row) => [row.dimension === 'width' ? 'width' : row.carbonOverPercent > 0 ? 'thickness_other' : 'thickness_low', row.overMm, row.toMm, row.upperMm, row.lowerMm, row.grade ?? ''])
    const rows = published('en10278-bright-flats.csv').map(([dimension, over, to, upper, lower, grade]) => [dimension, Number(over), Number(to), Number(upper), Number(lower), grade])
    expect(rows).toHaveLength(26)
    expect(ours).toEqual(rows)
  })

  test('a 20 mm flat of mild steel 0.08 under is inside, with 62 % of the band used; C45 may be 0.26 under', () => {
    const mild = deliveredWithin('drawn', 'thickness', 0.17, 20)!, carbon = deliveredWithin('drawn', 'thickness', 0.45, 20)!
    expect([20 + mild.lowerMm, 20 + mild.upperMm, 20 + carbon.lowerMm]).toEqual([19.87, 20, 19.74])
    expect(19.92).toBeGreaterThanOrEqual(20 + mild.lowerMm)
    expect(-0.08 / mild.lowerMm).toBeCloseTo(0.62, 2)
  })

  // 16 × 8: width −0.11, thickness −0.09 in low carbon, −0.18 in other steels.
  test('a 16 × 8 flat', () => {
    expect(deliveredWithin('drawn', 'width', 0.45, 16)).toMatchObject({ upperMm: 0, lowerMm: -0.11, source: 'EN-10278' })
    expect([0.2, 0.21].map((carbonPercent) => deliveredWithin('drawn', 'thickness', carbonPercent, 8)?.lowerMm)).toEqual([-0.09, -0.18])
  })

  test('h11 is not for every steel: twice as much above 0.20 % carbon, h12 above 60 mm', () => {
    for (const { carbonOverPercent, overMm, toMm, lowerMm } of deliveredLimits.filter((row) => row.condition === 'drawn' && row.dimension === 'thickness')) {
      const gradeMm = itUm(overMm >= 60 ? 12 : 11, toMm)! / 1000
      expect(-lowerMm, `${carbonOverPercent} % ${toMm}`).toBeCloseTo(carbonOverPercent > 0 ? 2 * gradeMm : gradeMm, 9)
    }
    expect(deliveredWithin('drawn', 'thickness', 0.9, 2)).toBeNull()
  })

  test('may be crooked by 1.5 mm/m when narrow and mild, 2 over the thickness of tool steel', () => {
    expect(straightness).toHaveLength(9)
    expect(straightnessOf('mild', 30, 10)).toMatchObject({ acrossWidthMmPerM: 1.5, acrossThicknessMmPerM: 1.5 })
    expect(straightnessOf('tool', 30, 10)).toMatchObject({ acrossWidthMmPerM: 1.5, acrossThicknessMmPerM: 2 })
    expect(straightnessOf('alloy', 120, 20)).toMatchObject({ acrossWidthMmPerM: 2, acrossThicknessMmPerM: 2.5 })
    expect(straightnessOf('alloy', 200, 20)).toMatchObject({ acrossWidthMmPerM: 2.5, acrossThicknessMmPerM: 3 })
    expect(straightnessOf('mild', 120, 20)).toMatchObject({ acrossWidthMmPerM: 1.5, acrossThicknessMmPerM: 2 })
  })
})

describe('tolerance grades, ISO 286-1', () => {
  test('all rows of the public copy', () => {
    const rows = published('iso286-it-grades.csv').map((row) => row.map(Number))
    expect(rows).toHaveLength(10)
    expect(itGrades.map(({ overMm, toMm, um }) => [overMm, toMm, ...um])).toEqual(rows)
  })

  // ISO 286: h9, h10, h11, h12 of 18 to 30 mm.
  test('20 mm: 52, 84, 130, 210 µm', () => expect([9, 10, 11, 12].map((grade) => itUm(grade, 20))).toEqual([52, 84, 130, 210]))

  // i = 0.45 D^(1/3) + 0.001 D; IT6 10 i, IT11 100 i (from memory: ISO 286-1); the table is rounded.
  test('follows the formula above 10 mm', () => {
    for (const { overMm, toMm, um } of itGrades.filter((row) => row.overMm >= 10)) {
      const d = Math.sqrt(overMm * toMm), i = 0.45 * Math.cbrt(d) + 0.001 * d
      for (const [grade, times] of [[6, 10], [7, 16], [8, 25], [9, 40], [10, 64], [11, 100]] as const) expect(Math.abs(um[grade - 1]! / (times * i) - 1)).toBeLessThan(0.05)
    }
  })

  test('coarser grades and larger sizes are wider', () => {
    for (const { um } of itGrades) expect(um).toEqual(um.toSorted((a, b) => a - b))
    for (let grade = 1; grade <= 14; grade += 1) { const down = itGrades.map(({ um }) => um[grade - 1]!); expect(down).toEqual(down.toSorted((a, b) => a - b)) }
  })
})

describe('ground flat stock, DIN 59350', () => {
  test('may be over, never under: 0.05 on the thickness, 0.20 on the width, 5 on the length; 0.2 with something left to machine', () => {
    expect(deliveredWithin('ground flat', 'thickness', 0.9, 8)).toMatchObject({ upperMm: 0.05, lowerMm: 0, source: 'DIN-59350', standing: 'published' })
    expect(deliveredWithin('ground flat', 'width', 0.9, 45)).toMatchObject({ upperMm: 0.2, lowerMm: 0 })
    expect(groundFlat).toMatchObject({ lengthOverMm: 5, withAllowanceOverMm: 0.2 })
  })

  test("is to be had from 10 to 500 wide; 15' out of square is 0.035 mm over 8 and 0.196 over 45 (own arithmetic)", () => {
    expect(groundFlat).toMatchObject({ widthMm: [10, 500], thicknessMm: [1, 100], squareMm: [4, 150], lengthsMm: [500, 1000, 1030] })
    const lean = Math.tan((groundFlat.angleDeg * Math.PI) / 180)
    expect([8 * lean, 45 * lean].map((off) => off.toFixed(3))).toEqual(['0.035', '0.196'])
  })
})

// A tool steel merchant's table, inches converted.
test('a hot rolled flat loses more on its edges the wider it is', () => {
  expect(blackBars).toHaveLength(8)
  for (const { faceMm, edgeMm } of blackBars) expect(edgeMm).toBeGreaterThanOrEqual(faceMm)
  expect(blackBars.find((row) => row.toThicknessMm === 12.7 && row.overWidthMm === 25.4)).toMatchObject({ faceMm: 0.76, edgeMm: 1.12 })
})

// Kerfs are common practice, no source: set and grinding make a cut wider than its blade.
test('a saw takes more than its blade is thick, and no more than half again and half a millimetre', () => {
  for (const { saw, kerfMm: [least, most], faceMm } of saws) {
    const bladeMm = Number(/[\d.]+$/.exec(saw)![0])
    expect(least, saw).toBeGreaterThanOrEqual(bladeMm)
    expect(most, saw).toBeLessThanOrEqual(1.5 * bladeMm + 0.5)
    expect(faceMm[1], saw).toBeGreaterThanOrEqual(faceMm[0])
  }
})
