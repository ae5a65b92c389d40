import { describe, expect, it } from 'vitest'
import { setupSheetPages } from '#drafting/setup/setup-sheet.ts'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import type { HoleForm, SetupForm } from '#model/setup-form.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import { sheetDataFrom } from '#web/setup/print/sheet-data.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { isRefused, viewFrom } from '#web/setup/view/view-from.ts'

const shop = inventedShop([{ heightMm: 35, name: 'C', measuredUm: [0, 1] }]), bench = benchFrom(shop, 'vise')!
const hole: HoleForm = { ...(emptyCutForm('hole') as HoleForm), diameter: '8.5', across: '6', along: '10' }

function dataOf(fields: Partial<SetupForm>, length: 'mm' | 'in' = 'mm', at = bench) {
  const units = { length, decimalMark: '.', words: 'UK' } as const
  const form: SetupForm = { ...emptySetupForm('mm'), height: '19', offTop: '6', between: '38', along: '60', ...fields }
  const view = viewFrom(form, at, null), { answered } = view, choice = answered?.shown
  if (!answered || !choice || isRefused(choice)) throw new Error('nothing serves')
  const setup: SetupRecord = { id: 'ABCDEFGHJKLMN', saw: {}, title: 'Clamp plate', operation: 'face', viseId: 'vise', partId: null, form, bars: [...choice.bars], stand: choice.stand, usedAtIso: '2025-03-04T05:06:07.000Z', retired: false }
  return sheetDataFrom({ setup, shop, bench: at, view: { ...view, answered }, choice, units, day: '4 Mar 2025', initials: 'KM' })
}

describe('the setup sheet', () => {
  it('says pair, slot, numbers, and which bar stands where', () => {
    const data = dataOf({})
    expect(data.block).toMatchObject({ part: { value: 'Clamp plate' }, operation: { value: 'face' }, pair: { value: '35 C' }, slot: { value: 'slot C' }, code: { value: 'ABCDEFGH' }, initials: { value: 'KM' } })
    expect(data.numbers.map(({ label, value }) => `${label}: ${value}`)).toEqual(['Seat = offset Z: 35.001 mm', 'Grip: 10 mm', 'Above the jaws: 9 mm', 'Clear of the jaws: 3 mm', 'Match: 1.0 µm'])
    expect(data.bars.lines[0]).toMatch(/^35 C \([0-9A-Z]{4}\) at the fixed jaw, 35 C \([0-9A-Z]{4}\) at the moving jaw\.$/)
    expect(data.notComputed.lines).toContain('Side at the fixed jaw: not told.')
    // By hand: 38 between the jaws less two bars of 6.
    expect(data.spacer!.lines.join(' ')).toContain('Spring or filler between: 26 mm.')
    expect(data.workStop).toEqual({ heading: 'Work stop: set before the first part comes out', lines: ['Against', 'Distance'] })
    expect(dataOf({ side: 'sawn' }).stand).toContain('sawn side at the fixed jaw')
  })

  it('counts the offset from the zero of the row where the bed was measured against it, and leaves a line for it while a height is only marked', () => {
    // By hand: seat 35.001 (the mean of 0 and 1 µm over 35, to the µm) and a bed 18 µm up.
    const inRow = { ...bench, vise: { ...bench.vise, measured: { bed: null, jawSlope: null, jawLift: null, rowBed: { um: 18, uUm: 1, atIso: '2025-03-01T00:00:00.000Z', how: 'indicator' } } } }
    expect(dataOf({}, 'mm', inRow).numbers.slice(-2)).toEqual([{ label: 'Bed in the row', value: '+18 µm' }, { label: 'Offset Z in the row', value: '35.019 mm' }])
    const marked = benchFrom({ ...shop, checks: shop.checks.map((check) => ({ ...check, method: 'stated' as const })) }, 'vise')!
    const unproved = dataOf({}, 'mm', marked)
    expect(unproved.numbers[0]!.label).toBe('Seat height')
    expect(unproved.workStop.lines).toContain('Offset Z')
  })

  it('carries the cautions and what was not computed', () => {
    const { cautions, notComputed } = dataOf({ cuts: [hole] })
    expect(cautions.lines.join(' ')).toMatch(/handle off the vice.*breaking through|breaking through.*handle off the vice/is)
    expect(cautions.lines.at(-1)).toContain('instructions of the machine')
    expect(notComputed.lines.join(' ')).toContain('holding force')
    expect([...cautions.lines, ...notComputed.lines].join(' ')).not.toMatch(/\b(safe|holds)\b/i)
  })

  it('carries what the screen warns of about this very choice, before the rest', () => {
    const { cautions } = dataOf({ height: '150', offTop: '1' })
    expect(cautions.lines[0]).toMatch(/stands above the jaws.*light cuts or a lower pair/)
    expect(cautions.lines.at(-1)).toContain('instructions of the machine')
  })

  it('says what keeps a bar off its jaw, and goes on one page of A4 and of Letter', () => {
    const data = dataOf({ cuts: [hole, { ...hole, along: '50' }] })
    expect(data.spacer!.lines.join(' ')).toContain('10.75')
    for (const paper of ['A4', 'Letter'] as const) expect(setupSheetPages(data, paper)).toHaveLength(1)
  })

  it('cuts nothing short that it says, in mm or in inches', () => {
    for (const length of ['mm', 'in'] as const) for (const paper of ['A4', 'Letter'] as const) {
      const texts = setupSheetPages(dataOf({}, length), paper).flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
      expect(texts.filter((text) => text.includes('…'))).toEqual([])
    }
  })

  it('names what was not given', () => {
    expect(dataOf({ cuts: [{ ...hole, diameter: '' }] }).notComputed.lines).toContain('Hole 1 is not counted before all its sizes are there.')
    expect(dataOf({ between: '', along: '' }).notComputed.lines.join(' ')).toMatch(/between/i)
  })
})
