import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Complaint, RackImport } from '#model/rack-import.ts'
import { editOf, firstChange } from '#model/record-fields.ts'
import { Refusal } from '#model/refusal.ts'
import { newShop } from '#model/shop-record.ts'
import { applyChanges } from '#store/changes.ts'
import { openExample } from '#store/example-store.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { exportRack } from '#tasks/rack/export-rack.ts'
import { importRack } from '#tasks/rack/import-rack.ts'
import { listRack } from '#tasks/rack/list-rack.ts'
import { csvRecordsFrom } from '#tasks/rack/csv-records.ts'
import { columnNames } from '#tasks/rack/csv-columns.ts'

let store: Store
beforeEach(async () => { store = await openExample() })
afterEach(() => store.close())

const by = makerFor('KM', 'bench')
const take = (csv: Uint8Array | string, unit: 'mm' | 'in' = 'mm', dryRun = false): Promise<RackImport> => importRack(store, { id: by.newId(), csv, unit, dryRun }, by)

/** Lines, columns and codes of all complaints; nothing may have come in. */
async function complaintsOn(csv: Uint8Array | string, unit: 'mm' | 'in' = 'mm'): Promise<[number, string | null, string][]> {
  const refusal = await take(csv, unit).then(() => { throw new Error('it was taken') }, (error: unknown) => error)
  if (!(refusal instanceof Refusal)) throw refusal
  expect(refusal.code).toBe('csv-not-imported')
  expect(await store.db.selectFrom('change').select('id').where('kind', '!=', 'shop').execute()).toEqual([])
  return (refusal.facts['complaints'] as unknown as Complaint[]).map(({ line, column, code }) => [line, column, code])
}
const sizesOf = async () => (await listRack(store)).map((line) => [line.heightMm, line.thicknessMm, line.lengthMm])

const plain = 'name,height,thickness,length,mates,slot,state,note\n35,35,8,150,A,B4,,\n35,35,8,150,A,B4,look first,\nold 34,34,10,120,,,drill bar,"cut into, twice"\n'

describe('what comes in', () => {
  test('enters as look first or drill bar and marked, mates together, slots by name', async () => {
    expect(await take(plain)).toEqual({ dryRun: false, bars: 3, mates: 1, newSlots: ['B4'], lowestMm: 34, highestMm: 35, notes: [] })
    const lines = await listRack(store)
    expect(lines.map(({ name, trust, standing, thicknessStanding, mates, slot }) => [name, trust, standing, thicknessStanding, mates, slot])).toEqual([
      ['old 34', 'drill bar', 'marked', 'marked', null, null],
      ['35', 'look first', 'marked', 'marked', 'A', 'B4'],
      ['35', 'look first', 'marked', 'marked', 'A', 'B4'],
    ])
    expect(lines[0]!.note).toBe('cut into, twice')
    expect(new Set(lines.map((line) => line.code)).size).toBe(3)
    await take('height,thickness,length,slot\n20,8,100,b4\n')
    expect(await recordsOf(store, 'slot')).toHaveLength(1)
  })

  test('a dry run says the same and changes nothing', async () => {
    expect(await take(plain, 'mm', true)).toMatchObject({ dryRun: true, bars: 3, mates: 1, newSlots: ['B4'] })
    expect(await listRack(store)).toEqual([])
  })

  test('a file sent again under its id is answered and not taken in twice', async () => {
    const file = { id: 'file-1', csv: plain, unit: 'mm' as const }
    const first = await importRack(store, file, by)
    expect(await importRack(store, file, makerFor('JO', 'tablet'))).toEqual(first)
    expect(await importRack(store, { ...file, dryRun: true }, by)).toEqual(first)
    expect(await listRack(store)).toHaveLength(3)
    for (const other of [{ csv: `${plain} ` }, { unit: 'in' as const }]) await expect(importRack(store, { ...file, ...other }, by)).rejects.toMatchObject({ code: 'id-used-twice', facts: { given: 'file-1' } })
    await importRack(store, { ...file, id: 'file-2' }, by)
    expect(await listRack(store)).toHaveLength(6)
  })

  test('neither a dry run nor a file that is amiss uses its id up', async () => {
    await importRack(store, { id: 'file-1', csv: plain, dryRun: true }, by)
    await expect(importRack(store, { id: 'file-1', csv: 'height\n' }, by)).rejects.toMatchObject({ code: 'csv-not-imported' })
    expect(await importRack(store, { id: 'file-1', csv: plain }, by)).toMatchObject({ dryRun: false, bars: 3 })
  })

  test('what a box calls width is the height, and that is said', async () => {
    expect(await take('width,thickness,length\n35,8,150\n')).toMatchObject({ notes: [{ code: 'width-taken-as-height' }] })
    expect(await sizesOf()).toEqual([[35, 8, 150]])
  })

  test('a unit stands in the head, behind the number, or is the unit asked for', async () => {
    await take('Height (in);Thickness in;LENGTH mm\n1 3/8;1/4;150\n.875;0,25;150,5\n', 'mm')
    await take('height,thickness,length\n7/8,1/4,6\n', 'in')
    await take('height,thickness,length\n22.225mm,0.25 in,150\n', 'mm')
    // 1 3/8 in = 34.925 mm, 7/8 in = 22.225 mm, 1/4 in = 6.35 mm: the inch is 25.4 mm by definition.
    expect(await sizesOf()).toEqual([[22.225, 6.35, 150], [22.225, 6.35, 150.5], [22.225, 6.35, 152.4], [34.925, 6.35, 150]])
  })

  test('separators, marks and encodings of desktop programs', async () => {
    const text = 'name;height;thickness;length\nø 35;35,5;8;150\n'
    const utf16 = (bigEndian: boolean, mark: boolean) => {
      const bytes = Buffer.from(`${mark ? '\u{feff}' : ''}${text}`, 'utf16le')
      return new Uint8Array(bigEndian ? bytes.swap16() : bytes)
    }
    const files: (Uint8Array | string)[] = [
      text, `\u{feff}${text}`, text.replaceAll('\n', '\r\n'), text.replaceAll('\n', '\r'), text.replaceAll(';', '\t'), Buffer.from(`\u{feff}${text}`),
      utf16(false, true), utf16(true, true), utf16(false, false), utf16(true, false), `\n\n${text}\n;;;\n   \n`,
    ]
    for (const file of files) expect(await take(file)).toMatchObject({ bars: 1, lowestMm: 35.5, notes: [] })
    expect(new Set((await listRack(store)).map((line) => line.name))).toEqual(new Set(['ø 35']))
    expect(await take(Buffer.from(text, 'latin1'))).toMatchObject({ bars: 1, notes: [{ code: 'read-as-old-text' }] })
    expect(await take('sep=;\nname;height;thickness;length\nø 35;35,5;8;150\n')).toMatchObject({ bars: 1, lowestMm: 35.5 })
  })
})

describe('what is amiss is told line by line, and nothing comes in', () => {
  test('sizes', async () => {
    expect(await complaintsOn('height,thickness,length\n,8,150\nabc,8,150\n0,8,150\n-35,8,150\nNaN,8,150\n1e308,8,150\n35,8,2000000\n3.5.1,8,150\n1/0,8,150\n35 ft,8,150\n')).toEqual([
      [2, 'height', 'field-missing'], [3, 'height', 'not-a-number'], [4, 'height', 'size-not-positive'], [5, 'height', 'size-not-positive'],
      [6, 'height', 'not-a-number'], [7, 'height', 'not-a-number'], [8, 'length', 'too-large'], [9, 'height', 'two-decimal-marks'],
      [10, 'height', 'zero-denominator'], [11, 'height', 'unknown-unit'],
    ])
  })

  test('several in one line, each by its column as the file calls it', async () => {
    expect(await complaintsOn('Width mm,Thickness,LENGTH,State\n35,x,,trusted\n')).toEqual([
      [2, 'Thickness', 'not-a-number'], [2, 'LENGTH', 'field-missing'], [2, 'State', 'unknown-word'],
    ])
  })

  test('units mixed in one column', async () => {
    expect(await complaintsOn('height,thickness,length\n35,8,150\n7/8,8,150\n22.225mm,8,150\n')).toEqual([[3, 'height', 'mixed-units']])
    // The dangerous one: an inch set in a shop of millimetres, in which the whole inch alone would come in as 1 mm.
    expect(await complaintsOn('height,thickness,length\n7/8,1/4,6"\n1,1/4,6"\n')).toEqual([[3, 'height', 'mixed-units']])
    expect(await complaintsOn('height in,thickness,length\n22.225mm,8,150\n')).toEqual([[2, 'height in', 'mixed-units']])
  })

  test('a character that no text holds', async () => {
    expect(await complaintsOn('height,thickness,length\n35,8,150\n35,\0,150\n')).toEqual([[3, null, 'csv-not-text']])
    expect(await complaintsOn(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d]))).toEqual([[3, null, 'csv-not-text']])
  })

  test('columns', async () => {
    expect(await complaintsOn('height,width,colour,thickness,code in\n1,2,3,4,5\n')).toEqual([
      [1, 'width', 'column-twice'], [1, 'colour', 'column-unknown'], [1, 'code in', 'column-unknown'], [1, null, 'column-missing'],
    ])
    expect(await complaintsOn('height,thickness,length\n35,8\n35,8,150,1\n35,5,8,150\n')).toEqual([
      [2, null, 'cells-miscounted'], [3, null, 'cells-miscounted'], [4, null, 'cells-miscounted'],
    ])
    expect(await complaintsOn('height,thickness,length,\n35,8,150,x\n')).toEqual([[2, null, 'cell-without-head']])
    expect(await take('height,thickness,length,\n35,8,150,\n')).toMatchObject({ bars: 1 })
  })

  test('quotes: the line they begin on, and the lines after it are still looked at', async () => {
    expect(await complaintsOn('name,height,thickness,length\n"a,35,8,150\nb,x,8,150\n')).toEqual([[2, null, 'quotes-broken'], [3, 'height', 'not-a-number']])
    expect(await complaintsOn('name,height,thickness,length\n"two\nlines",35,8,150\na"b,35,8,150\n"a"b,35,8,150\nc,y,8,150\n')).toEqual([
      [4, null, 'quotes-broken'], [5, null, 'quotes-broken'], [6, 'height', 'not-a-number'],
    ])
  })

  test('codes twice, unreadable, or on a bar of the shop', async () => {
    expect(await complaintsOn('code,height,thickness,length\nABCD2345,35,8,150\nabcd2345,35,8,150\nIO,35,8,150\n')).toEqual([[3, 'code', 'code-twice'], [4, 'code', 'code-unreadable']])
    await take('code,height,thickness,length\nABCD2345,35,8,150\n')
    await expect(take('code,height,thickness,length\nABCD2346,35,8,150\nABCD2345,35,8,150\n')).rejects
      .toMatchObject({ code: 'csv-not-imported', facts: { count: 1, complaints: [{ line: 3, code: 'code-used-twice', given: 'ABCD2345' }] } })
    expect(await listRack(store)).toHaveLength(1)
  })

  test('empty, a head alone, texts too long, too many lines', async () => {
    expect(await complaintsOn('')).toEqual([[1, null, 'file-empty']])
    expect(await complaintsOn('\n  \n')).toEqual([[1, null, 'file-empty']])
    expect(await complaintsOn('height,thickness,length\n\n')).toEqual([[1, null, 'no-bars-in-file']])
    expect(await complaintsOn(`name,height,thickness,length\n${'x'.repeat(41)},35,8,150\n`)).toEqual([[2, 'name', 'text-too-long']])
    expect(await complaintsOn(`height,thickness,length\n${'35,8,150\n'.repeat(20_001)}`)).toEqual([[20_002, null, 'too-many-lines']])
  })

  test('of very many complaints the first thousand are told, and how many there are', async () => {
    await expect(take(`height,thickness,length\n${'x,8,150\n'.repeat(3000)}`)).rejects.toMatchObject({ facts: { count: 3000, complaints: { length: 1000 } } })
  })

  test('no text whatever ends in anything but an import or a refusal', async () => {
    const bits = fc.constantFrom('height', 'thickness', 'length', ',', ';', '\t', '"', '\n', '\r\n', '35', '7/8', 'mm', "'", '=', ' ', 'ø', '1e9', '\u{feff}', '-')
    await fc.assert(fc.asyncProperty(fc.oneof(fc.string({ maxLength: 60 }), fc.array(bits, { maxLength: 40 }).map((parts) => parts.join(''))), async (text) => {
      await take(text, 'mm', true).catch((error: unknown) => { if (!(error instanceof Refusal)) throw error })
    }), { numRuns: 250 })
  })
})

describe('out and in again', () => {
  const texts = fc.string({ maxLength: 30 }).map((text) => text.replaceAll('\0', '').trim())
  const risky = fc.tuple(fc.constantFrom('=', '+', '-', '@', "'", "''", "'="), texts).map(([mark, text]) => `${mark}${text}`.trim())

  test.each(['mm', 'in'] as const)('a rack that goes out in %s comes back the same, whatever is written on the bars', async (length) => {
    await fc.assert(fc.asyncProperty(
      fc.array(fc.record({ name: fc.oneof(texts, risky), note: fc.oneof(texts, risky), height: fc.integer({ min: 1000, max: 90_000 }), mates: fc.constantFrom('', 'A', '=B', '-'), drill: fc.boolean() }), { minLength: 1, maxLength: 6 }),
      fc.constantFrom('.' as const, ',' as const),
      async (bars, decimalMark) => {
        const from = await openExample(), to = await openExample()
        for (const shop of [from, to]) await applyChanges(shop, [editOf('shop', await recordOf(shop, 'shop', 'shop'), { units: { ...newShop.units, length, decimalMark } }, by)])
        const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`
        const asTyped = (text: string) => quoted(/^[=+\-@'\t\r]/.test(text) ? `'${text}` : text)
        await importRack(from, { id: 'one', csv: `name,height mm,thickness mm,length mm,mates,state,note\n${bars.map((bar) => [asTyped(bar.name), bar.height / 1000, 8, 150, asTyped(bar.mates), bar.drill ? 'drill bar' : '', asTyped(bar.note)].join(',')).join('\n')}\n` }, by)
        const csv = await exportRack(from)
        for (const { cells } of csvRecordsFrom(csv).records) for (const cell of cells) expect(cell).not.toMatch(/^[=+\-@\t\r]/)
        await importRack(to, { id: 'one', csv }, by)
        const seen = async (shop: Store) => (await listRack(shop)).map(({ name, note, heightMm, thicknessMm, lengthMm, mates, trust, standing, code }) =>
          JSON.stringify([code, name, note, Math.round(heightMm * 1e5), Math.round(thicknessMm * 1e5), Math.round(lengthMm * 1e5), mates, trust, standing]))
        expect(new Set(await seen(to))).toEqual(new Set(await seen(from)))
        expect(new Set((await listRack(from)).map(({ name }) => name))).toEqual(new Set(bars.map((bar) => bar.name.replaceAll(/\r\n|\r/g, '\n').trim())))
        await from.close()
        await to.close()
      },
    ), { numRuns: 25 })
  })

  test('two groups of mates with one name come back as two', async () => {
    await take('height,thickness,length,mates\n35,8,150,A\n35,8,150,A\n')
    await take('height,thickness,length,mates\n35,8,150,A\n35,8,150,A\n')
    const again = await openExample()
    expect(await importRack(again, { id: 'one', csv: await exportRack(store) }, by)).toMatchObject({ bars: 4, mates: 2 })
    await again.close()
  })

  test('a note of two lines, and nothing else in quotes, comes back whole', async () => {
    await take('height,thickness,length,note\n35,8,150,"one\ntwo"\n')
    const again = await openExample()
    await importRack(again, { id: 'one', csv: await exportRack(store) }, by)
    expect((await listRack(again)).map(({ note }) => note)).toEqual(['one\ntwo'])
    await again.close()
  })

  test('the head names every column and its unit', async () => {
    expect((await exportRack(store)).trim()).toBe(`\u{feff}${columnNames.join(',').replace('height,thickness,length', 'height mm,thickness mm,length mm')}`.trim())
  })
})

test('another record of the shop is left alone', async () => {
  await applyChanges(store, [firstChange('mates', 'm', { name: 'A', note: 'mine' }, by)])
  await take(plain)
  expect(await recordOf(store, 'mates', 'm')).toMatchObject({ note: 'mine' })
  expect(await recordsOf(store, 'mates')).toHaveLength(2)
})
