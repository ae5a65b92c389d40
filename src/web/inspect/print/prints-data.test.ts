import { describe, expect, it } from 'vitest'
import { certificatePages } from '#drafting/inspect/certificate.ts'
import { checkSheetPages } from '#drafting/inspect/check-sheet.ts'
import type { Scene } from '#drafting/scene.ts'
import { checkedOf } from '#engine/inspect/checked.ts'
import type { Check, Reading } from '#model/check.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { Units } from '#model/shop-record.ts'
import { inspectFactsOf } from '#web/inspect/facts.ts'
import { newDraft, newForm } from '#web/inspect/draft/new-draft.ts'
import { certificateFrom } from '#web/inspect/print/certificate-data.ts'
import { checkSheetFrom } from '#web/inspect/print/check-sheet-data.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'

const shop = inventedShop([{ heightMm: 25, name: 'A', measuredUm: [0, 1] }]), ids = shop.bars.map(({ id }) => id), day = '2025-03-14'
const nameOf = (id: string): string => `bar ${ids.indexOf(id) + 1}`, lengthMmOf = (id: string): number | null => shop.bars.find((bar) => bar.id === id)?.lengthMm ?? null
const mm: Units = { length: 'mm', decimalMark: '.', words: 'US' }, inch: Units = { ...mm, length: 'in' }
const textsOf = (pages: readonly Scene[]): readonly string[] => pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))

const reading = (bar: string, station: number, um: number, face: Reading['face'] = 'A'): Reading => ({ bar, station, xMm: [5, 75, 145][station]!, line: 0, face, text: `${um > 0 ? '+' : ''}${um}`, heightMm: 25 + um / 1000 })
const readings = (bar: string, ums: readonly number[], face: Reading['face'] = 'A'): readonly Reading[] => ums.map((um, station) => reading(bar, station, um, face))
const check: Check = {
  id: 'CHECK23456789', method: 'compare', replaces: null, readings: [...readings(ids[0]!, [3, 4, 2]), ...readings(ids[1]!, [6, 5, 4])], note: '', asFound: false, looks: [], person: 'KM', device: 'd', atIso: `${day}T09:00:00.000Z`,
  zero: { on: 'block', heightMm: 25, text: '25' }, closing: null, temperature: null,
  took: {
    instrument: { id: null, name: 'Lever indicator (invented)', dueOn: '2025-01-31' }, plate: null, blocks: null,
    readWith: { method: 'compare', resolutionUm: 0.2, limitUm: null, repeatabilityUm: 0.1, plateFlatnessUm: null, blockLimitUm: null, blockUUm: null, betweenC: null, awayC: null, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6 },
  },
}
const certified = (given: Check, units = mm) => certificateFrom({
  check: given, checked: checkedOf(given, { limitsUm: shop.shop.limitsUm, lengthMmOf }), shop, units, nameOf, lengthMmOf, zeroName: 'zero: block of 25', dayOf: (iso) => iso.slice(0, 10), today: day,
})

describe('the certificate', () => {
  it('says of +3 +4 +2 and +6 +5 +4 what a worked case says', () => {
    // 25.003, 25.005; mean difference 2, worst as laid 3, turned 4: worked by hand.
    const { bars, pair } = certified(check), figure = (figures: readonly { label: string; value: string }[], label: string) => figures.find((one) => one.label === label)?.value
    expect(bars.map(({ figures }) => figure(figures, 'Height'))).toEqual(['25.003 mm (0.9844 in)', '25.005 mm (0.9844 in)'])
    expect(['Mean difference', 'Worst as laid', 'Worst turned', 'Better way'].map((label) => figure(pair!.figures, label))).toEqual(['2 µm', '3 µm', '4 µm', 'as laid'])
    expect(bars[0]!.readings).toEqual({ heads: ['as typed', '1 (5)', '2 (75)', '3 (145)'], rows: [['reading', '+3', '+4', '+2']] })
    expect(pair!.uses!.rows).toContainEqual(['grinding', '2 µm', 'out'])
  })

  it('says which instrument was overdue, and what was not computed', () => {
    const data = certified(check)
    expect(data.taken).toContainEqual({ label: 'Instrument', value: 'Lever indicator (invented), overdue since 2025-01-31' })
    expect(data.findings.lines.join(' ')).toContain('2025-01-31')
    expect(data.notComputed.lines.join(' ')).toContain('bend')
  })

  it('shows height and bend of a bar turned over apart', () => {
    // A bar of even height, bent 5 µm: with A up its middle stands 5 high, with B up it rests on its middle and the ends stand 5 high. By hand.
    const turned: Check = { ...check, method: 'turn-over', readings: [...readings(ids[0]!, [0, 5, 0]), ...readings(ids[0]!, [0, -5, 0], 'B')] }, { bars: [bar], notComputed } = certified(turned)
    expect(bar!.profile).toBeNull()
    expect(bar!.turnOver!.bend.ums).toEqual([0, 5, 0])
    expect(bar!.turnOver!.apart.says).toContain('Bent 5 µm toward face A.')
    expect(bar!.readings.rows).toEqual([['face A up', '0', '+5', '0'], ['face B up', '0', '-5', '0']])
    expect(notComputed.lines.join(' ')).not.toContain('bend')
  })

  it('says of a bar turned over as well what its uncertainty is made of, and that it is √3 times that of a reading', () => {
    const { table } = certified({ ...check, method: 'turn-over', readings: [...readings(ids[0]!, [0, 5, 0]), ...readings(ids[0]!, [0, -5, 0], 'B')] }).uncertainty!
    const row = (begin: string) => table.rows.find(([label]) => label!.startsWith(begin))!.slice(1).map(Number)
    expect(table.rows.map(([label]) => label)).toEqual(expect.arrayContaining(['reading step', 'effective degrees of freedom']))
    row('√3 times that').forEach((u, i) => expect(u).toBeCloseTo(Math.sqrt(3) * row('standard uncertainty together')[i]!, 1))
    row('U = k').forEach((expanded, i) => expect(expanded).toBeCloseTo(row('k for 95 %')[i]! * row('√3 times that')[i]!, 1))
  })

  it('is there for heights as marked and for a bar that was only tried for rocking', () => {
    const stated: Check = { ...check, method: 'stated', zero: null, took: null, readings: [{ ...reading(ids[0]!, 0, 0), xMm: null, text: '25' }] }
    const rocked: Check = { ...check, method: 'rock', zero: null, took: null, readings: [], looks: [{ bar: ids[0]!, wiped: true, stoned: false, rock: 'rocks', feelerText: '0.02', feelerUm: 20, seen: ['bent'] }] }
    for (const given of [stated, rocked]) for (const paper of ['A4', 'Letter'] as const) expect(textsOf(certificatePages(certified(given), paper))).toContain('bar 1')
    expect(certified(rocked).bars[0]!.figures.at(-1)!.value).toContain('a feeler of 20 µm goes under')
    expect(certified(stated).uncertainty).toBeNull()
  })

  it('cuts nothing short and never says that anything is safe or holds', () => {
    for (const units of [mm, inch]) for (const paper of ['A4', 'Letter'] as const) {
      const said = textsOf(certificatePages(certified(check, units), paper))
      expect(said.filter((text) => text.includes('…'))).toEqual([])
      expect(said.join(' ')).not.toMatch(/\b(safe|holds)\b/i)
    }
  })
})

describe('the check sheet', () => {
  const facts = inspectFactsOf(shop, day), bars = ids.map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' }))
  const sheet = (method: Check['method'], more: object = {}) => {
    const draft: DraftRecord = { ...newDraft(newForm(method, 'mm', { checks: [], instruments: [] }, { bars, stations: 3, ...more })), id: 'DRAFT23456789', saw: {} }
    return checkSheetFrom({ draft, shop, facts, units: mm, day, nameOf })
  }

  it('numbers the boxes through: bar by bar, face by face, pass by pass, from the marked end', () => {
    const rows = sheet('turn-over', { repeats: 2 }).bars.flatMap((bar) => bar.rows.map(({ label, cells }) => `${bar.label}, ${label}: ${cells.map(({ number, station }) => `${number} at ${station}`).join(', ')}`))
    expect(rows.slice(0, 4)).toEqual([
      'bar 1, face A up, pass 1: 1 at 1, 2 at 2, 3 at 3', 'bar 1, face A up, pass 2: 4 at 1, 5 at 2, 6 at 3', 'bar 1, face B up, pass 1: 7 at 1, 8 at 2, 9 at 3', 'bar 1, face B up, pass 2: 10 at 1, 11 at 2, 12 at 3',
    ])
    expect(rows[4]).toBe('bar 2, face A up, pass 1: 13 at 1, 14 at 2, 15 at 3')
  })

  it('leaves lines for what was not chosen, asks for the closing zero only where there is one, and has no box where nothing is read', () => {
    expect(sheet('compare').taken).toContainEqual({ label: 'Instrument', value: '' })
    expect(sheet('compare').atTheEnd.map(({ label }) => label)).toEqual(['Zero at the end, µm', 'Temperature, °C', 'Note'])
    expect(sheet('micrometer').atTheEnd.map(({ label }) => label)).toEqual(['Temperature, °C', 'Note'])
    expect(sheet('rock').bars.flatMap(({ rows }) => rows)).toEqual([])
    expect(sheet('compare').cautions.lines.join(' ')).toContain('Gage blocks are never bars')
    for (const method of ['compare', 'micrometer', 'turn-over', 'rock', 'stated'] as const) expect(textsOf(checkSheetPages(sheet(method), 'Letter')).filter((text) => text.includes('…'))).toEqual([])
  })
})
