import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { deedOfSigning, comeBack, signOut } from '#engine/rack/signing.ts'
import type { Deed } from '#model/deed.ts'
import { clashesOf } from '#store/changes.ts'
import { addEvents } from '#store/events.ts'
import { keepDeed } from '#store/deeds.ts'
import { openExample } from '#store/example-store.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'
import { exportHistoryCsv, importHistoryCsv } from '#tasks/rack/history-file.ts'
import { labelsOf } from '#tasks/rack/label-sheets.ts'
import { lifeOfBar } from '#tasks/rack/life-of-bar.ts'
import { listRack } from '#tasks/rack/list-rack.ts'
import { exportRackFile, importRackFile } from '#tasks/rack/rack-file.ts'
import { holdingsOf, signBarsOut, takeBarsBack } from '#tasks/rack/sign-bars.ts'
import { regrindBars, trySetOfShop, whatIsMissing } from '#tasks/rack/work-of-rack.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

let minute = 0
const by = (person = 'KM') => ({ ...makerFor(person, `tablet-${person}`), atIso: new Date(Date.UTC(2026, 2, 4, 8, minute++)).toISOString() })
const pairOf = (height = '35') => addBars(store, { height, thickness: '8', length: '150', pair: true, name: 'C', slot: 'B4' }, by())
const trustOf = async (id: string) => (await listRack(store)).find((line) => line.id === id)!.trust
const looked = (bar: string) => addEvents(store, [{ ...stamp(), bar, kind: 'looked over', undoes: null, note: '' }])
const stamp = () => { const { person, device, atIso, newId } = by(); return { id: newId(), person, device, atIso } }

describe('signing out and back', () => {
  test('to a machine changes nothing, a person only by how it comes back, another shop always', async () => {
    const [one] = await pairOf(), id = one!.id
    await looked(id)
    await signBarsOut(store, { bars: [id], machine: 'Surface grinder' }, by())
    await takeBarsBack(store, { bars: [id], how: 'not looked at' }, by())
    expect(await trustOf(id)).toBe('trusted')
    await signBarsOut(store, { bars: [one!.code.toLowerCase()], person: 'JO' }, by())
    expect([await trustOf(id), (await recordOf(store, 'bar', id)).where]).toEqual(['trusted', expect.objectContaining({ at: 'out', who: 'JO', to: 'person' })])
    await takeBarsBack(store, { bars: [id], how: 'fine' }, by())
    expect(await trustOf(id)).toBe('trusted')
    for (const how of ['not looked at', 'nicked', 'drilled'] as const) {
      await looked(id)
      await signBarsOut(store, { bars: [id], person: 'JO' }, by())
      await takeBarsBack(store, { bars: [id], how }, by())
      expect(await trustOf(id), how).toBe('look first')
    }
    await looked(id)
    await signBarsOut(store, { bars: [id], otherShop: 'the shop next door' }, by())
    await takeBarsBack(store, { bars: [id], how: 'fine' }, by())
    expect(await trustOf(id)).toBe('look first')
  })

  test('says who has what, and what is overdue', async () => {
    const pair = await pairOf(), bars = pair.map(({ id }) => id)
    await signBarsOut(store, { bars, person: 'JO', dueOn: '2026-03-05' }, by())
    expect(await holdingsOf(store)).toMatchObject([{ where: { who: 'JO' }, overdue: 2, bars: [{ dueOn: '2026-03-05', isOverdue: true }, { isOverdue: true }] }])
    await expect(signBarsOut(store, { bars, person: 'JO', dueOn: 'Friday' }, by())).rejects.toMatchObject({ code: 'value-not-allowed' })
    await expect(signBarsOut(store, { bars }, by())).rejects.toMatchObject({ code: 'field-missing', facts: { field: 'to' } })
    await expect(signBarsOut(store, { bars: [], person: 'JO' }, by())).rejects.toMatchObject({ code: 'field-missing', facts: { field: 'bars' } })
  })

  test('twice at once: one stands, the other is told', async () => {
    const pair = await pairOf(), bars = (await recordsOf(store, 'bar')).filter(({ id }) => pair.some((one) => one.id === id))
    const deeds = ['JO', 'AB'].map((who) => { const at = by(who); return deedOfSigning(signOut(bars, { to: 'person', who }, { atIso: at.atIso, dueOn: null }), at) })
    await keepDeed(store, deeds[0]!)
    const { clashes } = await keepDeed(store, deeds[1]!)
    expect(clashes).toHaveLength(2)
    expect(clashes[0]).toMatchObject({ kind: 'bar', field: 'where', stands: { person: expect.stringMatching(/JO|AB/) } })
    expect(await clashesOf(store)).toHaveLength(2)
  })

  test('leaves one state in whatever order the deeds arrive', async () => {
    await fc.assert(fc.asyncProperty(fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4, maxLength: 4 }), fc.constantFrom('fine', 'nicked', 'not looked at'), async (order, how) => {
      const states = await Promise.all([[0, 1, 2, 3], order].map(async (turn) => {
        const own = await openExample(), maker = (n: number) => ({ person: 'KM', device: 'd', atIso: new Date(Date.UTC(2026, 2, 4, 8, n)).toISOString(), newId: (() => { let k = 0; return () => `i${n}-${k++}` })(), newCode: () => 'ABCD2345' })
        await addBars(own, { height: '35', thickness: '8', length: '150' }, maker(0))
        let [bar] = await recordsOf(own, 'bar')
        const deeds: Deed[] = []
        const took = (deed: Deed, where: object) => { deeds.push(deed); bar = { ...bar!, ...where, saw: { ...bar!.saw, where: [deed.changes[0]!.id] } } }
        took(deedOfSigning(signOut([bar!], { to: 'person', who: 'JO' }, { atIso: maker(1).atIso, dueOn: null }), maker(1)), { where: { at: 'out', who: 'JO', to: 'person' } })
        took(deedOfSigning(comeBack([bar!], how), maker(2)), { where: { at: 'slot' } })
        took(deedOfSigning(signOut([bar!], { to: 'other shop', who: 'N' }, { atIso: maker(3).atIso, dueOn: null }), maker(3)), { where: { at: 'out', who: 'N', to: 'other shop' } })
        took(deedOfSigning(comeBack([bar!], 'fine'), maker(4)), { where: { at: 'slot' } })
        for (const k of turn) await keepDeed(own, deeds[k]!)
        const state = { where: (await recordsOf(own, 'bar'))[0]!.where, trust: (await listRack(own))[0]!.trust, file: await exportRackFile(own), clashes: await clashesOf(own) }
        await own.close()
        return state
      }))
      expect(states[1]).toEqual(states[0])
      expect(states[0]).toMatchObject({ where: { at: 'slot' }, trust: 'look first', clashes: [] })
    }), { numRuns: 12 })
  })
})

describe('the rack as files', () => {
  test('goes out and comes into an empty shop without loss, as data and its history as CSV', async () => {
    await loadDemo(store)
    const [one] = await recordsOf(store, 'bar')
    await addEvents(store, [{ ...stamp(), bar: one!.id, kind: 'knocked', undoes: null, note: '=1+1, "fell"\nhard' }])
    const file = await exportRackFile(store), csv = await exportHistoryCsv(store), other = await openExample()
    const noted = await importRackFile(other, JSON.parse(JSON.stringify(file)), by(), { dryRun: true })
    expect((await exportRackFile(other)).bars).toEqual([])
    expect(noted).toMatchObject({ dryRun: true, bars: file.bars.length, known: 0, checks: file.checks.length, notes: [{ code: 'vise-not-of-this-shop' }] })
    for (const vise of await recordsOf(store, 'vise')) {
      const { id, saw: _saw, ...fields } = vise
      await keepDeed(other, { changes: [{ id: `v-${id}`, kind: 'vise', record: id, person: '', device: 'd', atIso: by().atIso, fields: Object.fromEntries(Object.entries(fields).map(([field, value]) => [field, { value: value as never, saw: [] }])) }], checks: [], events: [] })
    }
    expect(await importRackFile(other, file, by())).toMatchObject({ notes: [] })
    expect(await exportRackFile(other)).toEqual(file)
    expect(await importRackFile(other, file, by())).toMatchObject({ known: file.bars.length })
    expect(await exportHistoryCsv(other)).toBe(csv)
    expect(await importHistoryCsv(other, csv)).toMatchObject({ known: file.events.length })
    await other.close()
    const bare = await openExample()
    await importRackFile(bare, { ...file, events: [], bars: file.bars.map((bar) => ({ ...bar, where: { at: 'slot' } })) }, by())
    expect(await importHistoryCsv(bare, csv, { dryRun: true })).toMatchObject({ events: file.events.length, known: 0 })
    await importHistoryCsv(bare, csv)
    expect(await exportHistoryCsv(bare)).toBe(csv)
    await expect(importHistoryCsv(bare, csv.replace('knocked', 'kicked'))).rejects.toMatchObject({ code: 'csv-not-imported', facts: { count: 1 } })
    await expect(importHistoryCsv(bare, 'id,colour\n1,2\n')).rejects.toMatchObject({ code: 'csv-not-imported' })
    await bare.close()
  }, 30_000)
})

describe('what is missing', () => {
  test('counts the demo shop, and a set tried serves no less', async () => {
    await loadDemo(store)
    const { setups, served, lines, vises, work } = await whatIsMissing(store)
    expect(lines).toHaveLength(work.setups + work.unserved + work.typical)
    expect(setups).toBe(lines.length)
    expect(served).toBeLessThanOrEqual(setups)
    expect(vises.every(({ name }) => name !== '')).toBe(true)
    const tried = await trySetOfShop(store, { from: '10', to: '50', setStep: '5', setThickness: '8', setLength: '150', stacks: true, flat: true })
    expect(tried.heightsMm).toEqual([10, 15, 20, 25, 30, 35, 40, 45, 50])
    expect(tried.withSet.served).toBeGreaterThanOrEqual(tried.now.served)
    expect(tried.withSet.served).toBeGreaterThanOrEqual(tried.setAlone.served)
    await expect(trySetOfShop(store, { from: '50', to: '10', setStep: '5', setThickness: '8', setLength: '150' })).rejects.toMatchObject({ code: 'ladder-upside-down' })
    const marked = (await listRack(store)).find(({ standing }) => standing === 'marked')!, measured = (await listRack(store)).find(({ standing, trust }) => standing === 'measured' && trust !== 'in work')!
    await expect(regrindBars(store, { bars: [marked.code] })).rejects.toMatchObject({ code: 'height-not-measured' })
    expect((await regrindBars(store, { bars: [`${measured.code}=15`] })).regrind.newHeightMm).toBeLessThan(measured.heightMm)
  })
})

test('the life of a pair is a line for what happened to both, and every label tells its code', async () => {
  const pair = await pairOf(), bars = pair.map(({ id }) => id)
  await signBarsOut(store, { bars, person: 'JO' }, by())
  await takeBarsBack(store, { bars, how: 'nicked' }, by())
  const { lines, bars: [one] } = await lifeOfBar(store, bars[0]!, { withMates: true })
  expect(lines.map(({ says, bars: of }) => [says.code, says.facts.kind ?? null, of.length])).toEqual([['life-added', null, 2], ['life-event', 'signed out', 2], ['life-event', 'back nicked', 2]])
  expect(one!.condition).toMatchObject({ trust: 'look first', open: ['new here', 'nicked'] })
  expect(await labelsOf(store, { slots: true })).toMatchObject([{ qr: expect.stringMatching(/^TWB[2-9A-HJ-NP-Z]{8}$/) }, {}, { qr: expect.stringMatching(/^TWS/), large: 'B4' }])
})
