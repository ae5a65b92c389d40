import { describe, expect, test } from 'vitest'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { JobRecord, OrderForm, PlannedWith } from '#model/job-record.ts'
import { noRates } from '#model/rates.ts'
import { newShop } from '#model/shop-record.ts'
import { stockRecordSchema } from '#model/stock-record.ts'
import { answerCutting } from '#engine/make/cutting/answer-cutting.ts'
import { actualsFrom } from '#engine/make/job/actuals-from.ts'
import { cuttingCase, grindCase, heatCase } from '#engine/make/job/card-cases.ts'
import { experienceOf, jobView } from '#engine/make/job/job-view.ts'
import { leftoversOf, offcutFrom } from '#engine/make/job/leftovers-of-job.ts'
import { orderFieldOf, orderFrom } from '#engine/make/job/order-from.ts'
import { plannedWithOf } from '#engine/make/job/planned-with.ts'
import { madeUpShop } from '#engine/make/route/made-up-shop.ts'

const form: OrderForm = {
  unit: 'mm', heightsBy: 'list', heights: '30', from: '', to: '', step: '', jawHeight: '', below: '', lowest: '', thickness: '10', lengthBy: 'length', length: '150', jawWidth: '', under: '',
  pairs: '1', vises: '1', use: 'milling', hrc: '', due: null, faces: false, offer: { cost: '', days: '', match: '', parallel: '' },
}
const plainMachine = { perHour: null, longestMm: null, kerfMm: null, sawnFaceMm: null, hardMilling: false, spindle: null }
const planned: PlannedWith = {
  lengths: [], plates: [{ id: 'plate', name: 'plate', steel: 'oil', condition: 'annealed', lengthMm: 500, widthMm: 310, thicknessMm: 10, count: 1, price: 80, offcut: false }],
  machines: madeUpShop.machines.map((one) => ({ ...plainMachine, name: one.id, ...one }) as PlannedWith['machines'][number]), rates: noRates, daysLeft: null,
}
const books = { steels: madeUpShop.steels.map((steel) => ({ deliveredHrc: null, hardening: null, source: 'made up', standing: 'shop', ...steel }) as never), stockLimits: [], allowances: [], blackBars: [] }
const job: JobRecord = {
  id: 'job', saw: {}, name: 'pair', form, route: 'ground', planned, typed: {}, done: {}, tools: {}, state: 'open', draftId: null, note: '',
  bars: [{ id: 'a', heightMm: 30, matesId: 'ab' }, { id: 'b', heightMm: 30, matesId: 'ab' }],
}
const known = { limitsUm: newShop.limitsUm, experience: [] }
const refusedBy = (run: () => unknown) => { try { run() } catch (error) { return error } return null }

describe('an order as typed', () => {
  test('heights in one line, the comma a decimal mark unless a space follows', () => {
    const heightsOf = (heights: string, unit: 'mm' | 'in' = 'mm') => orderFrom({ ...form, heights, unit }).heights
    expect(heightsOf('12,5 14 16; 20')).toEqual({ by: 'list', heightsMm: [12.5, 14, 16, 20] })
    expect(heightsOf('12, 14 mm, 16')).toEqual({ by: 'list', heightsMm: [12, 14, 16] })
    expect(heightsOf('1 3/8; 1/2', 'in')).toEqual({ by: 'list', heightsMm: [34.925, 12.7] })
  })

  test('what cannot be read is named by its field on the form', () => {
    expect(refusedBy(() => orderFrom({ ...form, heights: '' }))).toMatchObject({ facts: { field: 'heights' } })
    expect(refusedBy(() => orderFrom({ ...form, pairs: '1,5' }))).toMatchObject({ code: 'value-not-allowed', facts: { field: 'pairs' } })
    expect(['heights.fromMm', 'heights.heightsMm[2]', 'length.underMm', 'use'].map(orderFieldOf)).toEqual(['from', 'heights', 'under', 'use'])
  })
})

describe('a job', () => {
  test('readings are taken as typed, and a text that says nothing is told and left out', () => {
    const { actuals, refused } = actualsFrom({ ...job, typed: { 'read after hardening/a/bow of the edges/0': '0,12', 'read after hardening/b/hardness/1': 'hard', 'read after hardening/b/hardness/0': '61', 'saw/gone/length/0': '3' } }, [])
    expect(actuals.readings).toEqual([{ step: 'read after hardening', bar: 'a', what: 'bow of the edges', values: [0.12] }, { step: 'read after hardening', bar: 'b', what: 'hardness', values: [61] }])
    expect(Object.keys(refused)).toEqual(['read after hardening/b/hardness/1'])
  })

  test('a bow of 0.12 goes into the plan: 0.22 a side are needed, and its case of grinding takes it', () => {
    const view = jobView({ ...job, typed: { 'read after hardening/a/bow of the edges/0': '0.12' } }, [], known, books)
    // bow 0.12, clean-up 0.05, skin 0.05: SHOP-PRACTICE
    expect(view.plan.bars.find(({ id }) => id === 'a')).toMatchObject({ bowMm: 0.12, neededPerSideMm: 0.22 })
    expect(grindCase({ ...job, ...view, planned }, view.plan.packs[0]!)).toMatchObject({ bowMm: 0.12, bars: 2 })
    expect(heatCase({ ...job, ...view, planned }, [{ name: 'oil', hardening: { hrcFrom: 60 } }])).toMatchObject({ steel: 'oil', hrc: 60, thicknessMm: 10 })
  })

  test('milling takes what is left on an edge, two bars side by side, on the mill of the shop', () => {
    const soft = { ...job, route: 'milled' as const, tools: { 'cutting.diameter': '6', 'cutting.rpm': '800' }, planned: { ...planned, machines: planned.machines.map((one) => (one.kind === 'mill' ? { ...one, spindle: { leastRpm: 60, mostRpm: 2000, speedsRpm: null, powerKw: 1.5, efficiency: null, mostFeedMmPerMin: null } } : one)) } }
    const view = jobView(soft, [], known, books), asked = cuttingCase({ ...soft, ...view }, 'finish the edges')
    // sawn face 1, of which the last pass takes 0.2
    expect(asked).toMatchObject({ depthMm: 20, stockMm: 1, rpm: 800, state: 'soft', cutter: { diameterMm: 6, teeth: 4, stickOutMm: 25 }, machine: { mostRpm: 2000 } })
    // v = π d n: 15 m/min
    const answer = answerCutting({ ...asked, steel: undefined, kc11MPa: 1500, mc: 0.25, feedPerToothMm: 0.02, finishMm: 0.2, roughMm: 0.5 }, { forces: [], cutters: [], steels: [] })
    expect(answer.speedMPerMin).toBeCloseTo(15.08, 2)
  })

  test('what came out is read off the latest check, and hours off the ticks', () => {
    const view = jobView(job, [], known, books), done = Object.fromEntries(view.plan.steps.map(({ kind }) => [kind, { hours: '1', person: 'KM', atIso: '2026-01-01T00:00:00.000Z' }]))
    const check = (id: string, replaces: string | null, heights: readonly (readonly [string, number])[]): Check => ({
      id, method: 'compare', replaces, ...nothingTaken, note: '', person: 'KM', device: 'd', atIso: `2026-01-02T00:00:0${id}.000Z`, readings: heights.map(([bar, heightMm], station) => ({ bar, station, xMm: null, ...onTheFirstLine, text: '', heightMm })),
    })
    const checks = [check('1', null, [['a', 31], ['a', 31], ['b', 31], ['b', 31]]), check('2', '1', [['a', 30], ['a', 30.002], ['b', 30.001], ['b', 30.001]])]
    const [learned] = experienceOf([{ ...job, state: 'done', done }], checks, newShop.limitsUm, books)
    expect(learned).toMatchObject({ route: 'ground', parallelUm: [2, 0], matchUm: [1] })
    expect(learned!.hours!.taken).toBe(view.plan.steps.filter(({ hours }) => hours > 0).length)
    expect(experienceOf([job], checks, newShop.limitsUm, books)).toEqual([])
  })

  test('planned with what is not retired and not used up, up to the day it is due', () => {
    const stock = (id: string, more: object) => ({ ...planned.plates[0]!, form: 'plate' as const, retired: false, note: '', saw: {}, id, ...more })
    const made = plannedWithOf({ shop: { ...newShop, id: 'shop', saw: {} }, machines: [], stock: [stock('here', {}), stock('gone', { count: 0 }), stock('old', { retired: true }), stock('long', { form: 'length' })] }, '2026-03-01', '2026-02-27')
    expect([made.plates.map(({ id }) => id), made.lengths.map(({ id }) => id), made.daysLeft]).toEqual([['here'], ['long'], 2])
  })
})

describe('what is left of the stock of a job', () => {
  const view = jobView(job, [], known, books), [cut] = view.route.cuts!.plates

  // By hand: a strip of 33 mm and its cut leave 500 − 33 − 1.5 mm of the plate.
  test('is known once its cut lists are, and its record is of the steel it came off and paid for', () => {
    const kerfMm = cut!.kerf, found = { 'plate 0': { leastPlateLength: 33, plan: [] } as never }
    expect(leftoversOf(view, [], {})).toEqual([])
    expect(leftoversOf(view, [], { 'plate 0': null })).toEqual([])
    const [left] = leftoversOf(view, [], found)
    expect(left).toMatchObject({ stockId: 'plate', form: 'plate', widthMm: 310, count: 1 })
    expect(left!.lengthMm).toBeCloseTo(500 - 33 - kerfMm, 1)
    const record = offcutFrom(left!, planned.plates[0]!, { name: 'plate, rest', note: '' })
    expect(stockRecordSchema.parse(record)).toMatchObject({ steel: 'oil', condition: 'annealed', thicknessMm: 10, price: 0, offcut: true, retired: false })
  })
})
