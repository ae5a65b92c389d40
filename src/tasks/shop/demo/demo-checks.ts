import { checkFromDraft } from '#engine/inspect/read-draft.ts'
import { cellsOf } from '#engine/inspect/cells.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { By, Change } from '#model/change.ts'
import type { Check } from '#model/check.ts'
import type { CheckForm, DraftFields, DraftLook } from '#model/check-draft.ts'
import type { InstrumentRecord } from '#model/instrument-record.ts'
import { firstChange } from '#model/record-fields.ts'
import { newShop } from '#model/shop-record.ts'
import { inspectTables } from '#reference/inspect-tables.ts'
import { demoInstruments } from '#tasks/shop/demo/demo-instruments.ts'

type Typed = Partial<Omit<CheckForm, 'bars'>> & { readonly bars: readonly string[]; readonly texts: readonly string[]; readonly daysAgo: number; readonly person: string; readonly looked?: true }

const atPlate = { method: 'compare', instrumentId: 'demo-lever-1', plateId: 'demo-plate-1', blocksId: 'demo-blocks-1', closing: '0', temperature: '21' } as const
/** Where the bars of 150 and of 120 were read by micrometer before. */
const places150 = ['15', '75', '135'], places120 = ['12', '60', '108']

/** Invented demo data. Checks as they were typed: three at the plate, a quick look, one by a micrometer past its day. */
const checks: readonly Typed[] = [
  { ...atPlate, bars: ['demo-Q-1', 'demo-Q-2', 'demo-Q-3', 'demo-Q-4'], zero: '25', places: places120, daysAgo: 9, person: 'KM', texts: ['0', '+1', '0', '+1', '+1', '+2', '0', '0', '+1', '+2', '+1', '+1'] },
  { ...atPlate, bars: ['demo-K-1', 'demo-K-2'], zero: '5', places: places150, daysAgo: 9, person: 'KM', texts: ['0', '+1', '0', '+1', '+1', '0'] },
  { ...atPlate, bars: ['demo-F-1', 'demo-F-2'], zero: '50', places: places150, closing: '+1', temperature: '24,5', daysAgo: 4, person: 'JO', note: 'Warm day.', texts: ['+3', '+4', '+3', '+5', '+4', '+6'] },
  { method: 'micrometer', instrumentId: 'demo-micrometer-25', bars: ['demo-H-1', 'demo-H-2'], places: places150, daysAgo: 2, person: 'TB', looked: true, texts: ['15,001', '15,002', '15,001', '15,000', '15,001', '15,001'] },
  { method: 'micrometer', instrumentId: 'demo-micrometer-50', bars: ['demo-D-1', 'demo-D-2'], places: places150, daysAgo: 1, person: 'TB', texts: ['40,001', '40,000', '40,001', '40,002', '40,003', '40,002'] },
]

/** Invented demo data. A check that somebody was called away from, in the middle of the second bar. */
const halfDone: Typed = { ...atPlate, closing: '', bars: ['demo-E-1', 'demo-E-2'], zero: '45', stations: 5, daysAgo: 1, person: 'JO', note: 'Called to the mill.', texts: ['-4', '-4', '-5', '-5', '-6', '-1', '0'] }

/** All that Inspect shows of the demo; `ago` is the maker so many days before. */
export function demoInspect(bars: readonly BarRecord[], ago: (days: number) => By): { readonly changes: readonly Change[]; readonly checks: readonly Check[] } {
  const dayIn = (days: number): string => ago(-days).atIso.slice(0, 10)
  const instruments = Object.entries(demoInstruments).map(([id, { dueInDays, ...rest }]): InstrumentRecord => ({ id, saw: {}, ...rest, dueOn: dueInDays === null ? null : dayIn(dueInDays), retired: false }))
  const facts: InspectFacts = { bars, heights: () => null, instruments, limitsUm: newShop.limitsUm, today: dayIn(0), tables: inspectTables }
  return {
    changes: [
      ...instruments.map(({ id, saw: _saw, ...fields }) => firstChange('instrument', id, fields, ago(200))),
      firstChange('draft', 'demo-check-1', { ...draftFrom(halfDone), state: 'open', checkId: null }, { ...ago(halfDone.daysAgo), person: halfDone.person }),
    ],
    checks: checks.map((typed) => { const { device, atIso, newId } = ago(typed.daysAgo); return { ...checkFromDraft(draftFrom(typed), facts), id: newId(), person: typed.person, device, atIso } }),
  }
}

function draftFrom({ bars, texts, daysAgo: _daysAgo, person: _person, looked, ...more }: Typed): Pick<DraftFields, 'form' | 'typed' | 'looks'> {
  const form: CheckForm = {
    method: 'compare', unit: 'mm', stations: 3, places: [], lines: 1, repeats: 1, instrumentId: null, plateId: null, blocksId: null, zeroOn: 'block', zero: '', zeroBar: null,
    closing: '', temperature: '', asFound: false, replaces: null, note: '', ...more, bars: bars.map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' })),
  }
  const sound: DraftLook = { wiped: true, stoned: true, rock: 'none', feeler: '', seen: [] }
  return {
    form, looks: looked ? Object.fromEntries(bars.map((bar) => [bar, sound])) : {},
    typed: Object.fromEntries(cellsOf(form).flatMap(({ key }, at) => (texts[at] === undefined ? [] : [[key, texts[at]]]))),
  }
}
