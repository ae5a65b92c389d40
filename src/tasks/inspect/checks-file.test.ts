import fc from 'fast-check'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Check, checkSchema } from '#model/check.ts'
import { Refusal } from '#model/refusal.ts'
import { addChecks, checksOf } from '#store/checks.ts'
import { openStore } from '#store/open.ts'
import type { Store } from '#store/store.ts'
import { exportChecks, exportChecksCsv } from '#tasks/inspect/export-checks.ts'
import { importChecks } from '#tasks/inspect/import-checks.ts'
import { makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'

let folder: string, store: Store, bars: readonly { readonly id: string; readonly code: string }[]
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'twinrest-checks-'))
  store = await openStore(folder)
  bars = await addBars(store, { height: '25', thickness: '8', length: '100', pair: true, name: '=1+1' }, makerFor('KM', 'd'))
})
afterEach(async () => { await store.close(); rmSync(folder, { recursive: true }) })

/** Texts a hand, a spreadsheet and an ill wisher would type. */
const text = fc.oneof(fc.constantFrom('+3', '-0,5', '.0002"', '=HYPERLINK("x")', '@cmd', "'+1", '', 'a,b;c', 'line\nbreak', 'x "y"', '1 3/8', 'µ'), fc.string({ maxLength: 12, unit: 'grapheme' }).filter((one) => one.length <= 40 && !/[\r\0\u{feff}]/u.test(one)))
const height = fc.double({ min: 1, max: 200, noNaN: true }), um = fc.double({ min: 0, max: 50, noNaN: true })
const maybe = <Of>(of: fc.Arbitrary<Of>) => fc.option(of, { nil: null })
const id = fc.stringMatching(/^[A-Za-z0-9_][A-Za-z0-9_-]{0,19}$/)
const bar = fc.constantFrom(0, 1)
const tool = maybe(fc.record({ id: maybe(id), name: text.filter((one) => one !== ''), dueOn: maybe(fc.constantFrom('2026-01-31', '2027-12-01')) }))
const anyCheck = fc.record({
  method: fc.constantFrom('compare', 'micrometer', 'turn-over', 'stated'), note: text, person: fc.constantFrom('', 'KM'), asFound: fc.boolean(),
  temperature: maybe(fc.record({ text, c: fc.double({ min: -50, max: 100, noNaN: true }) })), closing: maybe(fc.record({ text, um: fc.double({ min: -10, max: 10, noNaN: true }) })),
  zero: maybe(fc.oneof(fc.record({ on: fc.constant('block' as const), heightMm: height, text }), fc.record({ on: fc.constant('bar' as const), bar, station: fc.nat({ max: 9 }), heightMm: height, text }))),
  took: maybe(fc.record({ instrument: tool, plate: tool, blocks: tool, readWith: fc.record({
    method: fc.constantFrom('compare', 'micrometer'), resolutionUm: um, limitUm: maybe(um), repeatabilityUm: maybe(um), plateFlatnessUm: maybe(um), blockLimitUm: maybe(um), blockUUm: maybe(um),
    betweenC: maybe(um), awayC: maybe(um), expansionPerC: um, expansionApartPerC: um,
  }) })),
  readings: fc.array(fc.record({ bar, station: fc.nat({ max: 9 }), xMm: maybe(height), line: fc.constantFrom(0, 1), face: fc.constantFrom('A', 'B'), text, heightMm: height }), { minLength: 1, maxLength: 6 }),
  looks: fc.array(fc.record({ bar, wiped: fc.boolean(), stoned: fc.boolean(), rock: fc.constantFrom('none', 'rocks', 'not tried'), feelerText: text, feelerUm: maybe(um), seen: fc.subarray(['bent', 'nicked', 'drilled', 'magnetised']) }), { maxLength: 2 }),
})
let made = 0
function checkOf(raw: typeof anyCheck extends fc.Arbitrary<infer Raw> ? Raw : never): Check {
  const own = <Of extends { bar: number }>(one: Of) => ({ ...one, bar: bars[one.bar]!.id })
  return checkSchema.parse({
    ...raw, id: `c${made++}`, replaces: null, device: 'd', atIso: '2026-03-04T05:06:07.000Z',
    zero: raw.zero?.on === 'bar' ? own(raw.zero) : raw.zero, readings: raw.readings.map(own), looks: raw.looks.map(own),
  })
}

test('checks go out and come in as they were, as CSV and as data, whatever was typed', async () => {
  await fc.assert(fc.asyncProperty(fc.array(anyCheck, { minLength: 1, maxLength: 3 }), async (raw) => {
    const checks = raw.map(checkOf)
    await addChecks(store, checks)
    const csv = await exportChecksCsv(store), file = await exportChecks(store)
    // With the same id another content is refused, so a check that came back otherwise would be.
    for (const given of [{ csv }, { file: JSON.parse(JSON.stringify(file)) as typeof file }]) expect(await importChecks(store, given)).toMatchObject({ checks: file.checks.length, known: file.checks.length })
    expect(file.checks).toEqual(expect.arrayContaining(checks))
  }), { numRuns: 25 })
})

test('another shop takes them in by the codes of the labels', async () => {
  const check = checkOf({ method: 'compare', note: '', person: 'KM', asFound: false, temperature: { text: '21', c: 21 }, closing: null, zero: { on: 'bar', bar: 0, station: 1, heightMm: 25, text: '' }, took: null, looks: [], readings: [{ bar: 0, station: 0, xMm: 5, line: 0, face: 'A', text: '+3', heightMm: 25.003 }, { bar: 1, station: 0, xMm: 5, line: 0, face: 'A', text: '=3', heightMm: 25.003 }] })
  await addChecks(store, [check])
  const csv = await exportChecksCsv(store, check.id), file = await exportChecks(store, check.id)
  for (const [given, name] of [[{ csv }, 'csv'], [{ file }, 'data']] as const) {
    const other = await openStore(join(folder, name))
    try {
      await expect(importChecks(other, given)).rejects.toMatchObject({ code: 'bar-not-known', facts: { given: bars[0]!.code } })
      const [, ids] = await withBarsOf(other)
      expect(await importChecks(other, given, { dryRun: true })).toMatchObject({ dryRun: true, checks: 1, known: 0, readings: 2, bars: 2 })
      expect((await checksOf(other)).some(({ id: own }) => own === check.id)).toBe(false)
      await importChecks(other, given)
      const [kept] = (await checksOf(other)).filter(({ id: own }) => own === check.id)
      expect(kept).toEqual({ ...check, zero: { ...check.zero, bar: ids[0] }, readings: check.readings.map((reading, i) => ({ ...reading, bar: ids[i] })) })
    } finally { await other.close() }
  }
})

/** The same labels on bars with other ids. */
async function withBarsOf(other: Store): Promise<readonly [Store, readonly string[]]> {
  const by = makerFor('', 'd'), codes = bars.map(({ code }) => code)
  const added = await addBars(other, { height: '25', thickness: '8', length: '100', pair: true }, { ...by, newCode: () => codes.shift() ?? by.newCode() })
  return [other, bars.map(({ code }) => added.find((one) => one.code === code)!.id)]
}

test('a spreadsheet finds no formula in what goes out', async () => {
  await addChecks(store, [checkOf({ method: 'compare', note: '@x', person: '', asFound: false, temperature: null, closing: { text: '+0', um: 0 }, zero: null, took: null, looks: [], readings: [{ bar: 0, station: 0, xMm: null, line: 0, face: 'A', text: '+3', heightMm: 25.003 }] })])
  const cells = (await exportChecksCsv(store)).split(/[\r\n]+/).flatMap((line) => line.split(','))
  expect(cells).toContain("'+3")
  expect(cells.filter((cell) => /^"?[=+@\t]/.test(cell))).toEqual([])
})

test('what is amiss is told with its line, and nothing comes in', async () => {
  await addChecks(store, [checkOf({ method: 'micrometer', note: '', person: '', asFound: false, temperature: null, closing: null, zero: null, took: null, looks: [], readings: [{ bar: 0, station: 0, xMm: null, line: 0, face: 'A', text: '25', heightMm: 25 }] })])
  const csv = await exportChecksCsv(store), before = await checksOf(store)
  const refused = async (text: string): Promise<readonly { line: number; code: string }[]> => {
    const error = await importChecks(store, { csv: text }).then(() => null, (one: unknown) => one)
    expect(error).toBeInstanceOf(Refusal)
    expect((error as Refusal).code).toBe('csv-not-imported')
    return (error as Refusal).facts.complaints as never
  }
  expect(await refused('')).toMatchObject([{ line: 1, code: 'file-empty' }])
  expect(await refused(csv.replace('heightMm', 'height'))).toContainEqual(expect.objectContaining({ line: 1, code: 'column-unknown', given: 'zero.height' }))
  expect(await refused(csv.replaceAll('micrometer', 'guess'))).toContainEqual(expect.objectContaining({ code: 'unknown-word', column: 'method', given: 'guess' }))
  expect(await refused(csv.replaceAll(/\r\ncheck,/g, '\r\nchecks,'))).toContainEqual(expect.objectContaining({ line: 2, code: 'unknown-word', given: 'checks' }))
  expect(await refused(csv.replace(/,25(\r\n)?$/, ',many'))).toContainEqual(expect.objectContaining({ code: 'not-a-number', column: 'reading.heightMm', given: 'many' }))
  expect(await checksOf(store)).toEqual(before)
})
