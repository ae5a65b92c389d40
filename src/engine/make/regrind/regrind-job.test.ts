import { describe, expect, test } from 'vitest'
import type { Bar } from '#model/bar.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { JobRecord, PlannedWith } from '#model/job-record.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import { noRates } from '#model/rates.ts'
import { newShop } from '#model/shop-record.ts'
import { jobView } from '#engine/make/job/job-view.ts'
import { regrindJob, type RegrindOrder } from '#engine/make/regrind/regrind-job.ts'
import { eventsOfStep, undoingOfStep } from '#engine/make/regrind/step-events.ts'
import { barsFrom } from '#engine/rack/bar-from.ts'
import { usualRegrind } from '#engine/rack/regrind/regrind-typed.ts'

const record = (id: string, more: Partial<BarRecord> = {}): BarRecord => ({ id, saw: {}, code: `ABCDEFG${id === 'a' ? 2 : 3}`, name: id.toUpperCase(), thicknessMm: 8, thicknessStanding: 'measured', lengthMm: 120, matesId: 'ab', slotId: null, where: { at: 'slot' }, note: '', ...more })
const at = (minute: number) => new Date(Date.UTC(2026, 0, 2, 8, minute)).toISOString()
const check = (id: string, minute: number, heights: { readonly [bar: string]: readonly number[] }, xMm: readonly (number | null)[] = [10, 60, 110]): Check => ({
  id, method: 'micrometer', replaces: null, ...nothingTaken, note: '', person: 'KM', device: 'd', atIso: at(minute),
  readings: Object.entries(heights).flatMap(([bar, mm]) => mm.map((heightMm, station) => ({ bar, station, xMm: xMm[station]!, ...onTheFirstLine, text: '', heightMm }))),
})
const worn = check('worn', 0, { a: [30.012, 30.006, 30], b: [30.01, 30.004, 29.998] })
const event = (bar: string, kind: BarEvent['kind'], minute: number): BarEvent => ({ id: `${bar}${kind}${minute}`, bar, kind, undoes: null, note: '', person: 'KM', device: 'd', atIso: at(minute) })
const looked = [event('a', 'looked over', 0), event('b', 'looked over', 0)]
const planned: PlannedWith = { lengths: [], plates: [], machines: [{ id: 'g', name: 'grinder', kind: 'grinder', perHour: 20, longestMm: null, kerfMm: null, sawnFaceMm: null, hardMilling: false, spindle: null }], rates: { ...noRates, handPerHour: 40 }, daysLeft: null }
const order: RegrindOrder = { typed: { ...usualRegrind, faces: '2' }, low: {}, use: 'milling' as const, name: 'A and B', units: newShop.units, planned }
const rackOf = (bars = [record('a'), record('b')], checks = [worn], events: readonly BarEvent[] = looked, jobs: readonly Pick<JobRecord, 'state' | 'name' | 'bars'>[] = []) => ({ records: bars, rack: barsFrom({ bars, checks, events, shop: newShop }, { viseId: null }), jobs })
const jobFor = (more: Partial<RegrindOrder> = {}, ids = ['a', 'b']): JobRecord => ({ ...regrindJob(ids, rackOf(), { ...order, ...more }), id: 'job', saw: {} })
const books = { steels: [], stockLimits: [], allowances: [], blackBars: [] }, known = { limitsUm: newShop.limitsUm, experience: [] }
const viewOf = (job: JobRecord, checks: readonly Check[] = [worn]) => jobView(job, checks, known, books)
const codesAt = (job: JobRecord, step: string, checks?: readonly Check[]) => viewOf(job, checks).plan.steps.find(({ kind }) => kind === step)!.content
const tick = (minute: number) => ({ hours: '', person: 'KM', atIso: at(minute) })
const refusedBy = (run: () => unknown) => { try { run() } catch (error) { return error } return null }

describe('a regrind as a job', () => {
  test('keeps the bars of the rack, and goes from the bench to the plate', () => {
    const job = jobFor(), { plan, order: now, route } = viewOf(job)
    expect(job.bars).toEqual([{ id: 'a', heightMm: expect.closeTo(30.006, 9), matesId: 'ab' }, { id: 'b', heightMm: expect.closeTo(30.004, 9), matesId: 'ab' }])
    expect(plan.steps.map(({ kind }) => kind)).toEqual(['clean and demagnetise', 'stone burrs', 'read before grinding', 'grind the first face', 'grind the second face', 'demagnetise and cool', 'stone and clean', 'mark anew', 'inspect'])
    expect(plan.next).toBe('clean and demagnetise')
    expect([now.bars, route.cuts, plan.findings.map(({ code }) => code)]).toEqual([2, null, ['taken-as-straight']])
    // the hour of a person and of the grinder, whatever the minutes are: 40 + 20
    const grinding = plan.steps.find(({ kind }) => kind === 'grind the first face')!
    expect(grinding.cost! / grinding.hours).toBeCloseTo(60, 9)
  })

  // By hand from REGRIND-RULES: 29.998 − 2 × 0.010 = 29.978; 30.012 − 29.978 = 34 µm, of which the second face takes its 10. Fine takes 20 by 2, rough the 4 that are left.
  test('takes as much off as the lowest place asks for, the second face the clean-up alone', () => {
    const job = jobFor(), first = codesAt(job, 'grind the first face'), second = codesAt(job, 'grind the second face')
    expect(viewOf(job).plan.made.map(({ heightMm }) => heightMm)).toEqual([29.978, 29.978])
    expect(first.filter(({ code }) => code === 'off-in-all').map(({ facts }) => facts)).toEqual([{ bar: 'a', highestUm: 34, lowestUm: 22, toMm: 29.978 }, { bar: 'b', highestUm: 32, lowestUm: 20, toMm: 29.978 }])
    expect(first.find(({ code }) => code === 'passes-in-stages')!.facts).toEqual({ passes: [1, 10], infeedsUm: [10, 2], sparkOut: 3 })
    expect(second.find(({ code }) => code === 'passes-in-stages')!.facts).toEqual({ passes: [0, 5], infeedsUm: [10, 2], sparkOut: 3 })
    expect(second.map(({ code }) => code)).toEqual(['grind-loosen-pack', 'grind-turn', 'grind-second-side', 'grind-block-in', 'grind-last-dress', 'passes-in-stages'])
    expect(first.map(({ code }) => code)).not.toContain('grind-shim-hollow')
  })

  // Ground free, each face loses the bow (GRIND-RULES): 29.998 − 2 × (0.010 + 0.020) = 29.938.
  test('a bow that was read comes off both faces and is shimmed; with one face it stays in', () => {
    const typed = { 'read before grinding/b/bow of the edges/0': '0,02' }, both = { ...jobFor(), typed }
    expect(viewOf(both).plan.made[0]!.heightMm).toBe(29.938)
    expect(viewOf(both).plan.findings).toEqual([{ code: 'bow-comes-off', facts: { bowUm: 20, eachUm: 30 } }])
    expect(codesAt(both, 'grind the first face').find(({ code }) => code === 'grind-shim-hollow')!.facts).toEqual({ shimUm: 20 })
    const one = { ...jobFor({ typed: { ...usualRegrind, datum: 'A' } }), typed }
    expect(viewOf(one).plan.made[0]!.heightMm).toBe(29.988)
    expect(viewOf(one).plan.findings).toEqual([{ code: 'bow-stays-in', facts: { bowUm: 20 } }])
    expect(codesAt(one, 'grind the first face').at(-1)).toEqual({ code: 'other-face-taken-as-true', facts: { face: 'A' } })
    expect(viewOf(one).plan.steps.map(({ kind }) => kind)).not.toContain('grind the second face')
  })

  // Read after the first face: lowest 29.985, less 10 µm: 29.975; 29.987 − 29.975 = 12 µm, all of it fine by 2.
  test('the second face is worked out from what was read after the first', () => {
    const read = (bar: string, mm: readonly string[]) => Object.fromEntries(mm.map((text, place) => [`grind the first face/${bar}/height/${place}`, text]))
    const job = { ...jobFor(), typed: { ...read('a', ['29.987', '29.986', '29.986']), ...read('b', ['29.986', '29.985']) } }
    expect(viewOf(job).plan.made.map(({ heightMm }) => heightMm)).toEqual([29.975, 29.975])
    const second = codesAt(job, 'grind the second face')
    expect(second[0]).toEqual({ code: 'second-face-from-read', facts: { newHeightMm: 29.975 } })
    expect(second.find(({ code }) => code === 'passes-in-stages')!.facts.passes).toEqual([0, 6])
    expect(viewOf({ ...job, typed: read('a', ['29.987']) }).plan.made[0]!.heightMm).toBe(29.978)
  })

  test('a bar that is to come out lower is ground on alone', () => {
    const job = jobFor({ low: { b: '15' } })
    expect(viewOf(job).plan.made.map(({ heightMm }) => heightMm)).toEqual([29.98, 29.965])
    expect(codesAt(job, 'grind the first face').at(-1)).toEqual({ code: 'ground-on-alone', facts: { bar: 'b', lowUm: 15 } })
  })

  test('checks before the wheel are the profile, checks after the last face are the result', () => {
    const again = check('again', 5, { a: [30.004, 30.002, 30], b: [30.003, 30.002, 29.999] }), after = check('after', 30, { a: [29.979, 29.979, 29.979], b: [29.98, 29.979, 29.979] })
    expect(viewOf(jobFor(), [worn, again]).plan.made[0]!.heightMm).toBe(29.979)
    const ground = { ...jobFor(), done: { 'grind the first face': tick(10), 'grind the second face': tick(20) } }, heights = (checks: readonly Check[]) => viewOf(ground, checks).plan.steps.at(-1)!.fields.filter(({ what }) => what === 'height').map(({ values }) => values)
    expect(heights([worn, again])).toEqual([null, null])
    expect(heights([worn, again, after])).toEqual([[29.979, 29.979, 29.979], [29.98, 29.979, 29.979]])
    expect(viewOf(ground, [worn, again, after]).plan.made[0]!.heightMm).toBe(29.979)
  })

  test('asks for the difference of mates only where mates are ground together', () => {
    const asked = (job: JobRecord) => viewOf(job).plan.steps.at(-1)!.reads.map(({ what, most }) => [what, most])
    // the limit of milling: SHOP-LIMITS, 10 µm
    expect(asked(jobFor())).toEqual([['height', null], ['difference of mates', 0.01]])
    expect(asked(jobFor({}, ['a']))).toEqual([['height', null]])
  })

  test.each<[code: string, rack: ReturnType<typeof rackOf>, ids: string[]]>([
    ['too-few-bars', rackOf(), []],
    ['bar-not-known', rackOf(), ['a', 'nobody']],
    ['bar-id-twice', rackOf(), ['a', 'a']],
    ['bar-gone', rackOf(undefined, undefined, [event('b', 'gone', 1)]), ['b']],
    ['bar-in-work', rackOf(undefined, undefined, [event('b', 'in work', 1)]), ['b']],
    ['bar-in-job', rackOf(undefined, undefined, undefined, [{ state: 'open', name: 'other', bars: [{ id: 'b', heightMm: 30, matesId: 'ab' }] }]), ['b']],
    ['bar-out', rackOf([record('a', { where: { at: 'out', who: 'JO', to: 'person' } })]), ['a']],
    ['height-not-measured', rackOf(undefined, undefined, [event('b', 'reground', 1)]), ['b']],
    ['profile-not-read', rackOf(undefined, [check('one', 0, { a: [30], b: [30] })]), ['a']],
    ['profile-not-read', rackOf(undefined, [check('no places', 0, { a: [30, 30.01], b: [30, 30] }, [null, null])]), ['a']],
  ])('%s is refused', (code, rack, ids) => {
    expect(refusedBy(() => regrindJob(ids, rack, order))).toMatchObject({ code })
  })

  test('what cannot be read on the form is refused by its field', () => {
    expect(refusedBy(() => jobFor({ typed: { ...usualRegrind, cleanUp: '-1' } }))).toMatchObject({ code: 'wish-negative', facts: { field: 'cleanUpUm' } })
    expect(refusedBy(() => jobFor({ low: { a: 'much' } }))).toMatchObject({ code: 'not-a-number', facts: { field: 'lowUm' } })
  })
})

describe('what a step of a regrind does to the bars', () => {
  const kindsOf = (rack: readonly Bar[]) => rack.map(({ trust, standing, magnetised = false, mates = null }) => [trust, standing, magnetised, mates])
  const written = (job: JobRecord, step: Parameters<typeof eventsOfStep>[1], minute: number): readonly BarEvent[] => eventsOfStep(job, step).map(({ bar, kind }) => event(bar, kind, minute))

  test('ground bars are to be looked at first, magnetised, and still mates; demagnetised and proved they are as before', () => {
    const job = jobFor(), ground = [...looked, ...written(job, 'grind the first face', 10), ...written(job, 'grind the second face', 20)]
    expect(kindsOf(rackOf(undefined, undefined, ground).rack)).toEqual(Array.from({ length: 2 }, () => ['look first', 'marked', true, 'ab']))
    const after = check('after', 30, { a: [29.979, 29.979, 29.979], b: [29.979, 29.979, 29.979] })
    expect(kindsOf(rackOf(undefined, [worn, after], [...ground, ...written(job, 'demagnetise and cool', 25)]).rack)).toEqual(Array.from({ length: 2 }, () => ['look first', 'measured', false, 'ab']))
  })

  test('a tick taken back takes back what it wrote, once, and nothing that was there before', () => {
    const job = jobFor(), before = [event('a', 'reground', -60)], events = [...before, ...written(job, 'grind the first face', 10)]
    const undoing = undoingOfStep(job, 'grind the first face', at(10), events)
    expect(undoing.map(({ bar, undoes }) => [bar, undoes])).toEqual([['a', 'areground10'], ['b', 'breground10'], ['a', 'aon the chuck10'], ['b', 'bon the chuck10']])
    const undone = undoing.map((one, k): BarEvent => ({ ...event(one.bar, 'undone', 11), id: `u${k}`, undoes: one.undoes }))
    expect(undoingOfStep(job, 'grind the first face', at(10), [...events, ...undone])).toEqual([])
    expect(eventsOfStep({ ...job, route: 'ground' }, 'demagnetise and cool')).toEqual([])
  })
})
