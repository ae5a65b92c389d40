import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dimensions } from '#model/blank.ts'
import { stepKinds } from '#model/make-step.ts'
import { routeKinds } from '#model/route.ts'
import { answerBlanks, type BlanksAnswer } from '#engine/make/blanks/answer-blanks.ts'
import { madeUpShop, noBooks } from '#engine/make/route/made-up-shop.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

const order = { heights: { by: 'list', heightsMm: [45] }, length: { by: 'length', lengthMm: 150 }, thicknessMm: 8, use: 'milling' }
const plate = { id: 'plate', steel: 'oil', condition: 'annealed', lengthMm: 1000, widthMm: 500, thicknessMm: 8 }
const blanks = (raw: object): BlanksAnswer & { readonly ignored: readonly string[] } => answerBlanks({ order, route: 'ground', ...madeUpShop, plates: [plate], ...raw }, noBooks)
const sizeKeys = { height: 'heightMm', thickness: 'thicknessMm', length: 'lengthMm' } as const

describe('a blank', () => {
  // Worked out from the rule of the trade (own arithmetic): bow 0.15 + clean-up 0.05 + skin 0.05 = 0.25 on each side; the 0.068 it may grow is not counted on.
  test('for grinding is left bow, clean-up and skin on each side, growth not counted on', () => {
    const { blanks: [blank], ignored, steel } = blanks({ leave: { bowMm: 0.15 } })
    expect(blank!.perSideMm.height).toBeCloseTo(0.25, 9)
    expect(blank!.stages.find(({ after }) => after === 'rough the edges')!.size.heightMm).toBeCloseTo(45.5, 9)
    // O1 and its kin grow about 0.15 % (a data sheet, 0.0015 in for each inch): 45.5 becomes at most 45.568
    expect(blank!.hardened!.heightMm[1]).toBeCloseTo(45.56825, 6)
    expect([ignored, steel]).toEqual([[], 'oil'])
  })

  test('for grinding is left what hardening may take away: half of 0.02 % of 45 on each side', () => {
    const { blanks: [blank] } = blanks({ plates: [{ ...plate, steel: 'air' }], leave: { bowMm: 0.15 } })
    expect(blank!.perSideMm.height).toBeCloseTo(0.25 + 0.0045, 9)
    expect(blank!.allowances.find(({ kind }) => kind === 'shrinkage')).toMatchObject({ dimension: 'height', sides: 2, takenBy: 'grind the edges' })
  })

  // The trade's table, 100 to 160 long, edges 0.25 to 0.40: air the lower end, thin bars in oil the upper, others between. Common practice, no source.
  test.each([['air', 10, 0.25], ['oil', 4, 0.4], ['oil', 10, 0.325]])('in %s, %d thick, is left at least what is usual: %d', (steel, thicknessMm, each) => {
    const allowances = [{ overLengthMm: 100, toLengthMm: 160, thinFaceMm: [0.25, 0.4], thickFaceMm: [0.2, 0.3], edgeMm: [0.25, 0.4] }]
    const { blanks: [blank] } = blanks({ order: { ...order, thicknessMm }, plates: [{ ...plate, steel, thicknessMm }], allowances })
    expect(blank!.perSideMm.height).toBeCloseTo(each, 9)
  })

  // The trade's route sheet: milled + 1 height, + 0.5 an end, + 0.5 thickness if both faces are cut; only cut + 1 an end. Common practice, no source.
  test('for milling and for cutting only is what the trade leaves', () => {
    const flat = { id: 'flat', steel: 'mild', condition: 'drawn', lengthMm: 1000, widthMm: 46, thicknessMm: 8.5 }
    expect(blanks({ route: 'milled', plates: [], lengths: [flat], faces: true }).blanks[0]!.sawn).toEqual({ heightMm: 46, thicknessMm: 8.5, lengthMm: 151 })
    expect(blanks({ route: 'as drawn', plates: [], lengths: [{ ...flat, widthMm: 45, thicknessMm: 8 }] }).blanks[0]!.sawn).toEqual({ heightMm: 45, thicknessMm: 8, lengthMm: 152 })
  })

  // A table of the trade for hot rolled flats, 51 to 76 wide and up to 13 thick: faces 0.89, edges 1.42 (converted from inches).
  test('of rolled stock loses its skin on all sides first', () => {
    const books = { ...noBooks, blackBars: [{ overThicknessMm: 0, toThicknessMm: 12.7, overWidthMm: 50.8, toWidthMm: 76.2, faceMm: 0.89, edgeMm: 1.42, source: 'HOT-ROLLED-ALLOWANCE', standing: 'published' as const }] }
    const rolled = { id: 'black', steel: 'oil', condition: 'rolled', lengthMm: 1000, widthMm: 60, thicknessMm: 10 }, bigger = { ...order, heights: { by: 'list', heightsMm: [56] } }
    const { blanks: [blank], cuts } = answerBlanks({ order: bigger, route: 'milled', ...madeUpShop, lengths: [rolled] }, books)
    expect(blank!.sawn).toEqual({ heightMm: 58.84, thicknessMm: 9.78, lengthMm: 151 })
    expect(cuts.findings.map(({ code }) => code)).toContain('rolled-skin-comes-off')
    expect(blanks({ route: 'milled', plates: [], lengths: [rolled], order: bigger }).findings.map(({ code }) => code)).toContain('rolled-not-in-table')
  })

  const heightsMm = fc.uniqueArray(fc.integer({ min: 10, max: 60 }), { minLength: 1, maxLength: 8 })
  const asked = fc.record({
    route: fc.constantFrom(...routeKinds.filter((kind) => kind !== 'bought')), heightsMm, lengthMm: fc.integer({ min: 80, max: 300 }), vises: fc.integer({ min: 1, max: 3 }), faces: fc.boolean(),
    leave: fc.record({ bowMm: fc.integer({ min: 0, max: 40 }).map((mm) => mm / 100), edgeMm: fc.integer({ min: 0, max: 30 }).map((mm) => mm / 10), skinMm: fc.constantFrom(0, 0.05, 0.2), cleanUpMm: fc.constantFrom(0, 0.03) }),
    plates: fc.array(fc.record({ steel: fc.constantFrom('mild', 'oil', 'air', 'pre'), condition: fc.constantFrom('annealed', 'prehardened', 'rolled'), widthMm: fc.integer({ min: 60, max: 600 }), lengthMm: fc.integer({ min: 60, max: 900 }), count: fc.integer({ min: 0, max: 3 }), thicknessMm: fc.constantFrom(8, 8.5, 10), offcut: fc.boolean() }), { maxLength: 4 }),
    lengths: fc.array(fc.record({ steel: fc.constantFrom('mild', 'oil', 'pre'), condition: fc.constantFrom('drawn', 'ground flat', 'prehardened ground'), widthMm: fc.integer({ min: 10, max: 80 }), lengthMm: fc.integer({ min: 150, max: 3000 }), count: fc.option(fc.integer({ min: 0, max: 3 })), thicknessMm: fc.constantFrom(8, 8.5) }), { maxLength: 4 }),
  }).map(({ heightsMm: heights, lengthMm, vises, plates, lengths, ...rest }) => ({
    ...rest, order: { ...order, heights: { by: 'list', heightsMm: heights }, length: { by: 'length', lengthMm }, vises },
    plates: plates.map((one, k) => ({ id: `p${k}`, ...one })), lengths: lengths.map((one, k) => ({ id: `l${k}`, ...one })),
  }))

  test('is never smaller than the finished bar, nor than what comes after it; its allowances add up; its steps are in the order of work', () => {
    fc.assert(fc.property(asked, (raw) => {
      const answer = blanks(raw)
      for (const { sawn, finished, stages, allowances } of answer.blanks) {
        const sizes = [sawn, ...stages.map(({ size }) => size)], order = stages.map(({ after }) => stepKinds.indexOf(after))
        expect(sizes.at(-1)).toEqual(finished)
        expect(order).toEqual(order.toSorted((a, b) => a - b))
        for (const dimension of dimensions) {
          const key = sizeKeys[dimension], left = allowances.filter((one) => one.dimension === dimension)
          sizes.slice(1).forEach((size, k) => expect(size[key]).toBeLessThanOrEqual(sizes[k]![key] + 1e-9))
          expect(finished[key] + left.reduce((sum, one) => sum + one.totalMm, 0)).toBeCloseTo(sawn[key], 6)
          left.forEach(({ eachMm, sides, totalMm }) => { expect(eachMm).toBeGreaterThanOrEqual(0); expect(eachMm * sides).toBeCloseTo(totalMm, 9) })
        }
      }
    }))
  })

  test('comes out of stock that has room for it, every one of them, mates out of one piece', () => {
    fc.assert(fc.property(asked, (raw) => {
      const { cuts, blanks: list } = blanks(raw), wanted = 2 * raw.order.vises * raw.order.heights.heightsMm.length, of = (id: string) => [...raw.plates, ...raw.lengths].find((one) => one.id === id)!
      expect(list.reduce((sum, { count }) => sum + count, 0)).toBe(wanted)
      expect([...cuts.takings, ...cuts.short].reduce((sum, { count }) => sum + count, 0)).toBe(wanted)
      expect(cuts.takings.every(({ count }) => count % 2 === 0)).toBe(true)
      for (const { plateWidth, plateLength, kerf, pieces } of cuts.plates) {
        // each piece with a kerf beside and behind it, the plate with one more of each: a bound that no layout can break
        expect(pieces.reduce((sum, { length, height, count }) => sum + count * (length + kerf) * (height + kerf), 0)).toBeLessThanOrEqual((plateWidth + kerf) * (plateLength + kerf) + 1e-6)
        pieces.forEach(({ length, height }) => { expect(length).toBeLessThanOrEqual(plateWidth + 1e-6); expect(height).toBeLessThanOrEqual(plateLength + 1e-6) })
      }
      for (const { stock, kerf, pieces } of cuts.bars) {
        if (stock.some(({ available }) => available === null)) continue
        expect(pieces.reduce((sum, [length, count]) => sum + count * (length + kerf), 0)).toBeLessThanOrEqual(stock.reduce((sum, { length, available }) => sum + available! * (length + kerf), 0) + 1e-6)
      }
      const begun = new Map<string, number>()
      cuts.plates.forEach(({ stockId }) => begun.set(stockId, (begun.get(stockId) ?? 0) + 1))
      begun.forEach((count, id) => expect(count).toBeLessThanOrEqual(of(id).count ?? Infinity))
    }))
  })
})

describe('stock as delivered', () => {
  // EN 10278, cold drawn flats over 18 to 30 wide: h11, 0 to −0.13; in steels with more than 0.20 % carbon the thickness may be twice as far under.
  const drawn = { condition: 'drawn', overMm: 18, toMm: 30, upperMm: 0, source: 'EN-10278', standing: 'published' }
  const stockLimits = [{ ...drawn, dimension: 'width', lowerMm: -0.13, grade: 'h11' }, { ...drawn, dimension: 'thickness', carbonOverPercent: 0.2, lowerMm: -0.26 }]
  const flat = { id: 'flat 20', steel: 'mild', condition: 'drawn', lengthMm: 2000, widthMm: 20, thicknessMm: 8 }
  const asDrawn = (raw: object) => blanks({ route: 'as drawn', plates: [], lengths: [flat], stockLimits, order: { ...order, heights: { by: 'list', heightsMm: [20] } }, ...raw })

  test('0.08 under on 20 is inside h11 and uses 62 % of it; 0.14 under is outside', () => {
    const judged = (mm: number) => asDrawn({ measured: [{ stock: 'flat 20', mm }] }).findings.find(({ code }) => code.startsWith('delivery-'))!
    expect(judged(19.92)).toMatchObject({ code: 'delivery-inside', facts: { lowMm: 19.87, highMm: 20, grade: 'h11', source: 'EN-10278' } })
    expect(judged(19.92).facts.sharePercent).toBeCloseTo(61.5, 1)
    expect(judged(19.86).code).toBe('delivery-outside')
    // the same thickness in C45: 19.74 to 20
    const thick = blanks({ stockLimits, lengths: [{ ...flat, steel: 'C45', widthMm: 30, thicknessMm: 20 }], measured: [{ stock: 'flat 20', dimension: 'thickness', mm: 19.76 }] })
    expect(thick.findings.at(-1)).toMatchObject({ code: 'delivery-inside', facts: { lowMm: 19.74 } })
  })

  test('may differ by the whole tolerance between deliveries, so mates come out of one bar', () => {
    const { findings, cuts } = asDrawn({})
    expect(findings.find(({ code }) => code === 'mates-from-one')!.facts.apartUm).toBeCloseTo(130, 6)
    // two blanks of 152 with a cut of 1.5 between them are one piece of the cut list
    expect(cuts.bars).toEqual([{ steel: 'mild', condition: 'drawn', widthMm: 20, thicknessMm: 8, kerf: 1.5, stock: [{ length: 2000, available: null, id: 'flat 20' }], pieces: [[305.5, 1]], of: [{ heightMm: 20, blanks: 2 }] }])
    expect(asDrawn({ stockLimits: [] }).findings.map(({ code }) => code)).toContain('delivery-not-known')
  })

  // By hand: four blanks of 152 and three cuts of 1.5 are 612.5; on a plate two of 151 side by side and a cut are 303.5, two strips of 47.2 and a cut 95.9; one beside
  // the other or one strip less is one pair.
  test('needs room for each cut between blanks, none at the end', () => {
    const short = (raw: object) => blanks({ plates: [], order: { ...order, vises: 2 }, ...raw }).cuts.short.reduce((sum, { count }) => sum + count, 0)
    const bar = (lengthMm: number) => short({ route: 'as drawn', lengths: [{ ...flat, widthMm: 45, lengthMm, count: 1 }] })
    expect([bar(612.5), bar(612.4)]).toEqual([0, 2])
    const sheet = (widthMm: number, lengthMm: number) => short({ leave: { bowMm: 0, cleanUpMm: 0.05, skinMm: 0.05 }, plates: [{ ...plate, widthMm, lengthMm, count: 1 }] })
    expect([sheet(303.5, 95.9), sheet(303.4, 95.9), sheet(303.5, 95.8)]).toEqual([0, 2, 2])
  })

  test('is used offcuts first, then what is there, then what is bought; a wide length is cut into strips', () => {
    const bought = { ...plate, id: 'bought' }, here = { ...plate, id: 'here', count: 1, lengthMm: 50, widthMm: 310 }, offcut = { ...here, id: 'offcut', offcut: true }
    const taken = (plates: object[], lengths: object[] = []) => blanks({ order: { ...order, vises: 3 }, plates, lengths }).cuts.takings.map(({ stockId, count }) => [stockId, count])
    expect(taken([bought, here, offcut])).toEqual([['bought', 2], ['here', 2], ['offcut', 2]])
    expect(taken([], [{ ...plate, id: 'wide flat', widthMm: 100 }])).toEqual([['wide flat', 6]])
    expect(blanks({ plates: [here], order: { ...order, vises: 3 } }).cuts).toMatchObject({ short: [{ heightMm: 45, count: 4, thicknessMm: 8 }], cost: null })
  })
})

test('blanks of what cannot be are refused by name', () => {
  const refused = (raw: object) => refusalOf((one) => answerBlanks(one, noBooks), { order, route: 'ground', ...madeUpShop, plates: [plate], ...raw })
  expect(refused({})).toBe('answered')
  expect(refused({ route: 'by hand' })).toBe('unknown-word route')
  expect(refused({ plates: [{ ...plate, steel: 'tin' }] })).toBe('steel-not-listed plates[0].steel')
  expect(refused({ plates: [{ ...plate, widthMm: 0 }] })).toBe('size-not-positive plates[0].widthMm')
  expect(refused({ lengths: [plate] })).toBe('id-used-twice plates[0].id')
  expect(refused({ leave: { bowMm: -0.1 } })).toBe('wish-negative leave.bowMm')
  expect(refused({ measured: [{ stock: 'none', mm: 3 }] })).toBe('stock-not-known measured[0].stock')
  expect(refused({ allowances: [{ overLengthMm: 0, toLengthMm: 100, thinFaceMm: [0.3, 0.2], thickFaceMm: [0, 0], edgeMm: [0, 0] }] })).toBe('range-upside-down allowances[0].thinFaceMm')
  expect(refused({ order: { ...order, vises: 1001 } })).toBe('too-many vises')
  expect(refused({ order: { ...order, vises: 1000, pairs: 2 } })).toBe('too-many pairs')
})
