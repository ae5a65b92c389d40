// A table of the tests' own, so that the arithmetic shows; what data sheets say is held against the books in src/tasks/make.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerHeat } from '#engine/make/heat/answer-heat.ts'
import { indicationOf } from '#engine/make/heat/indication.ts'
import { temperFor } from '#engine/make/heat/temper.ts'
import { placesOf, spoiled, unsaid } from '#engine/read/spoil.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'
import { Refusal } from '#model/refusal.ts'

const books = { tables: [], hardness: [50, 60, 70].map((hrc) => ({ hrc, hv: 10 * hrc, rmMPa: hrc > 60 ? null : 30 * hrc, source: 'SHOP', standing: 'shop' as const })) }
const table = { austenitiseC: [800, 820], soakMinPer25Mm: 30, quench: 'oil', tempering: [[150, 63, 61], [250, 58, 60], [350, 54, 56]], asQuenchedHrc: [64, 65], growthPercent: [0.1, 0.15, 0.2] }
const bar = { table, thicknessMm: 8, heightMm: 20, lengthMm: 150, hrc: 60 }
const answer = (raw: unknown) => answerHeat(raw, books)
const codes = (raw: unknown): string[] => answer(raw).findings.map(({ code }) => code)

describe('heat', () => {
  test('tempers between two rows, straight from middle to middle', () => {
    // middles 62 at 150, 59 at 250: 60 lies two thirds of the way (own arithmetic)
    expect(answer(bar).temper).toMatchObject({ atC: expect.closeTo(216.667, 3) as number, fromHrc: expect.closeTo(59, 9) as number, toHrc: expect.closeTo(61, 9) as number, atEdge: false })
    expect(answer(bar).steps.map(({ step }) => step)).toEqual(['austenitise', 'quench', 'temper'])
    expect(answer(bar)).toMatchObject({ steel: 'SHOP', cautions: ['furnace', 'quench', 'untempered'], ignored: [] })
  })

  // 30 minutes for each 25 mm: 8 mm 9.6, so 10; 10 mm 12; 15 mm 18 (own arithmetic from the rule of the data sheets).
  test.each([[8, 10], [10, 12], [15, 18], [25, 30]])('a bar %d thick is %d minutes at heat', (thicknessMm, minutes) => {
    expect(answer({ ...bar, thicknessMm, heightMm: 40 }).steps[0]).toMatchObject({ step: 'austenitise', fromC: 800, toC: 820, fromMin: minutes, toMin: minutes })
    // lying or standing, what heats through is the smaller size
    expect(answer({ ...bar, thicknessMm: 40, heightMm: thicknessMm }).sectionMm).toBe(thicknessMm)
  })

  test('the harder it is wanted, the cooler the temper; what comes out is what was asked', () => {
    const hrc = fc.double({ min: 54, max: 63, noNaN: true })
    fc.assert(fc.property(hrc, hrc, (one, other) => {
      const [softer, harder] = [answer({ ...bar, hrc: Math.min(one, other) }).temper!, answer({ ...bar, hrc: Math.max(one, other) }).temper!]
      expect(harder.atC).toBeLessThanOrEqual(softer.atC)
      for (const [wanted, temper] of [[Math.min(one, other), softer], [Math.max(one, other), harder]] as const) {
        if (!temper.atEdge) expect((temper.fromHrc + temper.toHrc) / 2).toBeCloseTo(wanted, 9)
        expect(wanted).toBeGreaterThanOrEqual(temper.fromHrc - 1e-9)
        expect(wanted).toBeLessThanOrEqual(temper.toHrc + 1e-9)
      }
    }))
  })

  test('at the edge of the outermost band says so; beyond it is refused with what is published', () => {
    expect(answer({ ...bar, hrc: 62.5 })).toMatchObject({ temper: { atC: 150, atEdge: true } })
    expect(codes({ ...bar, hrc: 54.5 })).toContain('hardness-at-edge')
    for (const hrc of [63.1, 53.9, -1]) {
      expect(() => answer({ ...bar, hrc })).toThrow(expect.objectContaining({ code: 'hardness-outside-table', facts: { field: 'hrc', given: hrc, needed: { least: 54, most: 63 }, steel: 'SHOP', source: 'SHOP', standing: 'shop', asQuenchedHrc: 65 } }) as Error)
    }
  })

  test('of a steel that gets hard again when tempered hot takes the coolest temper', () => {
    const rows = ([[200, 60], [350, 56], [520, 62], [600, 50]] as const).map(([atC, hrc]) => ({ atC, fromHrc: hrc, toHrc: hrc, source: 'SHOP', standing: 'shop' as const }))
    const steel = { ...answerTable(), tempering: rows }
    expect([58, 61, 55].map((hrc) => temperFor(steel, hrc).atC)).toEqual([275, expect.closeTo(350 + (5 / 6) * 170, 9), expect.closeTo(520 + (7 / 12) * 80, 9)])
  })

  test('takes what was read, whatever it is, and says how it stands to the table', () => {
    const read = (measuredHrc: number) => codes({ ...bar, hrc: undefined, measuredHrc })
    expect(read(67)).toContain('measured-above-published')
    expect(read(64)).toContain('measured-above-tempered')
    expect(read(60)).not.toContain('measured-above-tempered')
    expect(read(40)).toContain('measured-below-table')
    // without rows there is nothing to hold a reading against
    expect(codes({ ...bar, hrc: undefined, measuredHrc: 60, table: { ...table, tempering: [] } }).filter((code) => code.startsWith('measured'))).toEqual([])
    expect(answer({ ...bar, hrc: undefined, measuredHrc: 67 })).toMatchObject({ temper: null, indication: { hv: 670, rmMPa: null } })
  })

  test('growth is told and never counted as stock; shrinkage is left on', () => {
    expect(answer(bar).growth.map(({ size, usualUm, fromUm, toUm }) => [size, Math.round(usualUm), Math.round(fromUm), Math.round(toUm)])).toEqual([['height', 30, 20, 40], ['thickness', 12, 8, 16], ['length', 225, 150, 300]])
    expect(codes(bar)).toContain('growth-not-counted')
    expect(answer({ ...bar, table: { ...table, growthPercent: [-0.05, 0.03, 0.06] } }).findings).toContainEqual({ code: 'may-shrink', facts: { size: 'height', byUm: expect.closeTo(10, 9) as number, toUm: expect.closeTo(12, 9) as number } })
  })

  test('converts inside the table alone, and names no strength beyond the last', () => {
    expect(indicationOf(books.hardness, 55)).toMatchObject({ hv: 550, rmMPa: 1650 })
    expect(indicationOf(books.hardness, 65)).toMatchObject({ hv: 650, rmMPa: null })
    expect([49, 71, NaN].map((hrc) => indicationOf(books.hardness, hrc))).toEqual([null, null, null])
  })

  test('refuses what cannot be', () => {
    const refused = (raw: unknown) => refusalOf(answer, raw)
    expect(refused({ ...bar, hrc: undefined })).toBe('field-missing hrc')
    expect(refused({ ...bar, table: undefined })).toBe('field-missing table')
    expect(refused({ ...bar, table: undefined, steel: 'x' })).toBe('unknown-word steel')
    expect(refused({ ...bar, table: { ...table, quench: undefined } })).toBe('field-missing table.quench')
    expect(refused({ ...bar, table: { ...table, austenitiseC: [800] } })).toBe('field-missing table.austenitiseC')
    expect(refused({ ...bar, table: { ...table, tempering: [] } })).toBe('no-tempering-rows hrc')
    expect(refused({ ...bar, table: { ...table, tempers: 0 } })).toBe('value-not-allowed table.tempers')
    expect(refused({ ...bar, thicknessMm: 0 })).toBe('size-not-positive thicknessMm')
  })

  test('whatever one place of a case is spoiled with, it is answered or refused', () => {
    const places = placesOf({ ...bar, measuredHrc: 61, stressRelief: true }), bad = fc.oneof(fc.constantFrom<unknown>(undefined, null, true, 'x', '', NaN, Infinity, 0, -1, 1e-300, 1e6, 1e308, [], {}, [1, 2, 3]), fc.double())
    fc.assert(fc.property(fc.constantFrom(...places), bad, (path, value) => {
      try { expect(unsaid(answer(spoiled(bar, path, value)))).toEqual([]) } catch (error) { if (!(error instanceof Refusal)) throw error; expect(unsaid(error.facts)).toEqual([]) }
    }), { numRuns: 500 })
  })
})

function answerTable() {
  const band = { from: 0, to: 1, source: 'SHOP', standing: 'shop' as const }
  return {
    steel: 'own', stressReliefC: null, preheatC: null, austenitiseC: band, soakMin: { by: 'section' as const, ...band }, quench: { medium: 'air' as const, source: 'SHOP', standing: 'shop' as const },
    quenchToC: null, asQuenchedHrc: null, temperHold: { minPer25Mm: 60, leastMin: 60, times: 1, source: 'SHOP', standing: 'shop' as const }, growthPercent: null,
  }
}
