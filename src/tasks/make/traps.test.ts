// Places where sources contradict one another or are misprinted, and what is taken instead; those of one table alone are tested beside it.
import { describe, expect, test } from 'vitest'
import { drillingForce } from '#engine/setup/hold/cutting-forces.ts'
import { faces, frictionAt, materials, surfaces } from '#engine/setup/hold/friction.ts'
import { cutterData } from '#reference/cutting/cutter-data.ts'
import { specificForces } from '#reference/cutting/specific-forces.ts'
import { surfaceGrinding } from '#reference/cutting/surface-grinding.ts'
import { steels } from '#reference/steels/steels.ts'
import { calc } from '#tasks/calc.ts'

const steel = (name: string) => steels.find((one) => one.name === name)!

describe('where sources contradict one another', () => {
  // O1 10.6 against 12.8; D2 10.3 against 11.9; 1.2842 12.1 to 14.3 by temperature.
  test('expansion keeps its range, no single figure is made up', () => {
    expect([steel('1.2510').alphaPerMK, steel('1.2379').alphaPerMK, steel('1.2842').alphaPerMK]).toEqual([[10.6, 12.8], [10.3, 11.9], [12.1, 14.3]])
  })

  // A brochure on shoulder milling 40 to 80 m/min, an application guide 107 to 114 up to 48 HRC.
  test('steel of 40 to 50 HRC starts at the lower speed', () => expect(cutterData.find(({ group }) => group === '44 HRC')).toMatchObject({ fromMPerMin: 40, toMPerMin: 80 }))

  // Machinery's Handbook, 31st edition: 0.002 in; a rule of a university workshop: 0.0005 in (12.7 µm) at any time.
  test("the handbook's infeed is the most of a stiff machine, not what is planned with", () => {
    const { stages } = calc('grind', { heightMm: 30, thicknessMm: 10, lengthMm: 150, bowMm: 0.1 }) as { readonly stages: readonly { readonly infeedUm: number }[] }
    expect(Math.max(...stages.map(({ infeedUm }) => infeedUm))).toBeLessThan(12.7)
    expect(surfaceGrinding.find(({ work, hardened }) => work === 'tool steel' && hardened)!.roughMostUm).toBe(50)
  })

  // The group of C45 1500 and 0.22; older constants of single steels, from memory: 2220 and 0.14.
  test('force comes from one set of constants alone', () => {
    expect(new Set(specificForces.map(({ source }) => source))).toEqual(new Set(['CUTTING-FORCE']))
    expect(specificForces.map(({ kc11MPa }) => kc11MPa)).not.toContain(2220)
  })

  // Steel on steel, clean: 0.78; a ground part in smooth jaws: 0.07 (a rule for calculating chucks).
  test('the friction of clean steel is never taken for workholding', () => {
    for (const face of faces) for (const surface of surfaces) for (const material of materials) expect(frictionAt(face, surface, material, true)).toBeLessThan(0.5)
    expect(frictionAt('smooth', 'ground', 'steel', true)).toBe(0.07)
  })

  // Machinery's Handbook, 31st edition, page 1153 prints FT 5.96 at 8.80 mm, out of line with 5.28 at 8.00 and 6.06 at 9.50; its inch column points to 5.70.
  test('the misprinted factor of a drill of 8.80 mm is not used', () => {
    const factor = drillingForce({ diameterMm: 8.8, feedMm: 1, kd: 1, wear: 1, splitPoint: true }).thrustN - 0.007 * 8.8 ** 2 * 0.001
    expect(factor / (0.05 * 1.1)).toBeCloseTo(5.7, 1)
  })

  // 1.2510 is 100MnCrW4 in the older German list; EN ISO 4957 has 95MnWCr5 (1.2825) in its place (from memory).
  test('1.2510 is not passed off under the name of another steel', () => expect(steel('1.2510')).toMatchObject({ designation: '100MnCrW4', aisi: 'O1' }))

  test('stock drawn of C45 may be twice as far off as of mild steel', () => expect(steel('C45').carbonPercent > 0.2 && steel('S235JRC+C').carbonPercent <= 0.2).toBe(true))
})
