// Facts of the books, each named where it is checked; the shop is made up.
import { describe, expect, test } from 'vitest'
import type { Facts } from '#model/refusal.ts'
import { situations } from '#model/situation.ts'
import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import type { BlanksAnswer } from '#engine/make/blanks/answer-blanks.ts'
import type { MakePlan } from '#model/make-plan.ts'
import type { Order } from '#model/order.ts'
import type { Route, RouteAnswer } from '#model/route.ts'
import { askCalc } from '#tasks/ask-calc.ts'
import { calc } from '#tasks/calc.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

const machines = [
  { id: 'band saw', kind: 'saw', perHour: 15, kerfMm: 1.4, sawnFaceMm: 1 }, { id: 'mill', kind: 'mill', perHour: 30, longestMm: 600, hardMilling: true }, { id: 'grinder', kind: 'grinder', perHour: 35 },
  { id: 'press', kind: 'press', perHour: 5 }, { id: 'furnace', kind: 'furnace', perHour: 8 }, { id: 'cloth on plate', kind: 'ground plate', perHour: 0 },
]
const ladder = { heights: { by: 'ladder', fromMm: 12, toMm: 44, stepMm: 2 }, length: { by: 'jaw', jawWidthMm: 125 }, thicknessMm: 4, vises: 2, use: 'milling' }
const offcuts = [[140, 52], [150, 64], [160, 76], [170, 88], [180, 100], [190, 112]].map(([lengthMm, widthMm], k) => ({ id: `offcut ${k + 1}`, steel: '1.2842', condition: 'annealed', lengthMm, widthMm, thicknessMm: 4, count: 1, price: 0, offcut: true }))
const twoPlates = [500, 400].map((widthMm, k) => ({ id: `plate ${k + 1}`, steel: '1.2842', condition: 'annealed', lengthMm: 520, widthMm, thicknessMm: 4, count: 1, price: 110 }))
const shop = { machines, handPerHour: 30, cutterCost: 45, bought: { cost: 700, days: 8 } }

type Answer = RouteAnswer & BlanksAnswer & MakePlan & { readonly order: Order; readonly route: Route; readonly ignored: readonly string[] }
const ask = (name: string, raw: object): Answer => calc(name, raw) as Answer

const unsayable = /\?|undefined|NaN|null|Note:|\{|\}|\[object/
const unsaid = ({ findings, sum }: Pick<Answer, 'findings' | 'sum'>): string[] =>
  [...findings.map((one) => sayFinding(one, plainUnits)), ...sum.map((one) => saySum(one, plainUnits)).flatMap(({ title, inWords, worked }) => [title, inWords, worked])].filter((text) => unsayable.test(text))

describe('a ladder 12 to 44 in steps of 2, 4 thick, four of each, for a jaw of 125, from two plates and a heap of offcuts', () => {
  const answer = ask('route', { order: ladder, ...shop, plates: [...twoPlates, ...offcuts] })

  test('is 68 bars 124 long, milled or ground out of what is there', () => {
    expect(answer.order).toMatchObject({ bars: 68, lengthMm: 124, each: 4 })
    expect(answer.ignored).toEqual([])
    for (const kind of ['milled', 'ground'] as const) {
      const { cuts, status, blanks } = answer.routes.find((one) => one.kind === kind)!
      expect(status).not.toBe('blocked')
      expect(cuts!.short).toEqual([])
      expect(cuts!.takings.reduce((sum, { count }) => sum + count, 0)).toBe(68)
      expect(cuts!.takings.some(({ stockId }) => stockId.startsWith('offcut'))).toBe(true)
      expect(blanks.reduce((sum, { count }) => sum + count, 0)).toBe(68)
      // cases of cut-plate as they are: blanks across the plate, a kerf between
      cuts!.plates.forEach(({ plateWidth, kerf, pieces }) => { expect(kerf).toBe(1.4); pieces.forEach(({ length }) => expect(length).toBeLessThanOrEqual(plateWidth)) })
    }
  })

  // Cut with the least length of plate the blanks need no more of it than by the way that was found. The large plates are for the tests of cut-plate.
  test('and its cut lists are cases that cut-plate and cut-bars answer, with no more stock than there is', async () => {
    const small = answer.routes.find(({ kind }) => kind === 'milled')!.cuts!.plates.filter(({ pieces }) => pieces.length <= 3)
    expect(small.length).toBeGreaterThan(3)
    for (const { plateLength, ...raw } of small) {
      const { leastPlateLength, status } = await askCalc('cut-plate', raw) as CutPlateAnswer
      expect(status).toBe('optimal')
      expect(leastPlateLength).toBeLessThanOrEqual(plateLength + 1e-6)
    }
    const flats = { id: 'flat', steel: 'C45', condition: 'drawn', widthMm: 31, thicknessMm: 10, lengthMm: 1000, count: 4, price: 10 }
    const { cuts } = ask('blanks', { order: { heights: { by: 'list', heightsMm: [30] }, length: { by: 'length', lengthMm: 150 }, thicknessMm: 10, vises: 8, use: 'milling' }, ...shop, route: 'milled', lengths: [flats] })
    expect(cuts.short).toEqual([])
    // by hand: a pair is 2 × 151 + 1.4, three of them and two cuts 913; eight pairs take three lengths of 1000
    expect(await askCalc('cut-bars', cuts.bars[0])).toMatchObject({ status: 'optimal', leastStockLength: 3000 } satisfies Partial<CutBarsAnswer>)
  })

  test('and everything it answers can be said', () => {
    expect(unsaid(answer)).toEqual([])
    for (const { because, against, steps, cuts } of answer.routes) {
      const said = [...because, ...against, ...(cuts?.findings ?? []), ...steps.flatMap(({ content }) => content)].map((one) => sayFinding(one, plainUnits))
      expect(said.filter((text) => unsayable.test(text))).toEqual([])
      steps.forEach(({ cautions }) => expect(cautionsFor(new Set(cautions), plainUnits)).toHaveLength(cautions.length + 1))
    }
    // every caution of making is given somewhere
    const given = new Set(answer.routes.flatMap(({ steps }) => steps.flatMap(({ cautions }) => cautions)))
    for (const caution of situations.slice(situations.indexOf('sawing'), situations.indexOf('stoning') + 1)) expect(given, caution).toContain(caution)
  })
})

describe('by the books', () => {
  const pair = { order: { heights: { by: 'list', heightsMm: [30] }, length: { by: 'length', lengthMm: 150 }, thicknessMm: 10, use: 'milling', hrc: 60 }, ...shop }
  const plate = { id: 'plate', steel: '1.2842', condition: 'annealed', lengthMm: 1000, widthMm: 310, thicknessMm: 10, price: 90 }

  // The trade's table of allowances: 100 to 160 long, edges 0.25 to 0.40; oil, not thin: between. Common practice, no source.
  test('a hardened pair 10 × 30 × 150 with 0.12 bow: allowance enough, 30 passes a side', () => {
    const reading = (bar: string, mm: number) => ({ step: 'read after hardening', bar, what: 'bow of the edges', values: [mm] })
    const answer = ask('plan', { ...pair, route: 'ground', plates: [plate], actuals: { bars: ['A', 'B'].map((id) => ({ id, heightMm: 30, matesId: 'AB' })), readings: [reading('A', 0.12), reading('B', 0.06)] } })
    expect(sayFinding(answer.findings[0]!, plainUnits)).toBe('A, edges: a bow of 0.12 asks for 0.22 on each side, there are 0.325: enough.')
    // 0.20 by 0.010 and the last 0.02 by 0.002
    expect(answer.packs[0]!.clean.passes).toEqual([20, 10])
    expect(unsaid(answer)).toEqual([])
  })

  // 1.2379 page: at most 62 HRC after tempering.
  test('67 HRC of 1.2379 is beyond what is published', () => {
    const { routes } = ask('route', { ...pair, order: { ...pair.order, hrc: 67 }, plates: [{ ...plate, steel: '1.2379' }] })
    expect(routes.find(({ kind }) => kind === 'ground')!.against[0]).toMatchObject({ code: 'harder-than-published', facts: { steel: '1.2379', askedHrc: 67, highestHrc: 62 } })
  })

  // EN 10278: width over 18 to 30 h11, 0 to −0.13, so 19.92 is inside and uses 62 %; thickness of C45 over 18 to 30 down to −0.26.
  test('a drawn flat of 20 read 19.92 is inside h11', () => {
    const flat = { id: 'flat', steel: 'S235JRC+C', condition: 'drawn', lengthMm: 2000, widthMm: 20, thicknessMm: 10, price: 9 }
    const answer = ask('blanks', { order: { ...pair.order, heights: { by: 'list', heightsMm: [20] }, hrc: null }, ...shop, route: 'as drawn', lengths: [flat], measured: [{ stock: 'flat', mm: 19.92 }] })
    expect(answer.findings.map((one) => sayFinding(one, plainUnits))).toContain('flat: 19.92 is inside 19.87 to 20 (h11), 62 % of what it may be off 20.')
    expect(unsaid(answer)).toEqual([])
    const thick = { order: { ...pair.order, hrc: null }, ...shop, route: 'milled', lengths: [{ ...flat, steel: 'C45', widthMm: 40, thicknessMm: 20 }], measured: [{ stock: 'flat', dimension: 'thickness', mm: 19.75 }] }
    expect(ask('blanks', thick).findings.find(({ code }) => code === 'delivery-inside')!.facts).toMatchObject({ lowMm: 19.74, highMm: 20 })
  })

  test('an allowance that does not do is said with what would', () => {
    const readings = [{ step: 'read after hardening', bar: 'A', what: 'bow of the edges', values: [0.3] }, { step: 'read after hardening', bar: 'A', what: 'bow of the faces', values: [0.2] }, { step: 'read after hardening', bar: 'A', what: 'hardness', values: [66] }]
    const answer = ask('plan', { ...pair, route: 'ground', plates: [plate], actuals: { bars: [{ id: 'A', heightMm: 30, matesId: 'AB' }], readings } })
    expect(answer.findings.map(({ code }) => code)).toEqual(['allowance-not-enough', 'bar-harder-than-published', 'reading-outside'])
    // by hand: 0.325 less 0.05 and 0.05; 30.65 − 2 × 0.40
    expect(sayFinding(answer.findings[0]!, plainUnits)).toBe('A, edges: a bow of 0.3 asks for 0.4 on each side and there are only 0.325. Before the last tool: straighten to 0.225 or less; or let the pack become 29.85 instead.')
    expect(unsaid(answer)).toEqual([])
  })
  test('what cannot be is refused in words', () => {
    const cases: readonly (readonly [name: string, raw: object])[] = [
      ['route', { ...pair, plates: [{ ...plate, steel: 'tin' }] }], ['order', { ...ladder, heights: { ...ladder.heights, toMm: 3 } }], ['order', { ...ladder, length: { by: 'jaw', jawWidthMm: 20, underMm: 20 } }], ['order', { ...ladder, dueDay: 'soon' }],
      ['blanks', { ...pair, route: 'ground', measured: [{ stock: 'x', mm: 1 }] }], ['plan', { ...pair, route: 'ground', actuals: { bars: [{ id: 'A', heightMm: 31, matesId: 'A' }] } }], ['plan', { ...pair, route: 'ground', actuals: { done: [{ step: 'rub' }] } }],
      ['plan', { ...pair, route: 'ground', actuals: { readings: [{ step: 'saw', bar: 'A', what: 'length', values: [3] }] } }], ['route', { ...pair, steels: [{ name: 'x', carbonPercent: 1, hardening: { quench: 'oil', hrcFrom: 1, hrcTo: 2, growthFromPercent: 1, growthToPercent: 0 } }] }],
    ]
    const said = cases.map(([name, raw]) => { const [{ refused, facts }] = calc(name, [raw]) as [{ refused: string; facts: Facts }]; return [refused, sayRefusal({ code: refused, facts }, plainUnits)] as const })
    expect(said.map(([code]) => code)).toEqual(['steel-not-listed', 'ladder-upside-down', 'length-not-left', 'bad-day', 'stock-not-known', 'height-not-ordered', 'step-not-in-route', 'bar-not-in-making', 'range-upside-down'])
    expect(said.map(([, text]) => text).filter((text) => unsayable.test(text) || text.includes("'actuals"))).toEqual([])
  })
})
