import type { BarEvent } from '#model/bar-event.ts'
import type { By, Change } from '#model/change.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { JobFields, OrderForm, PlannedWith } from '#model/job-record.ts'
import type { MachineRecordFields } from '#model/machine-record.ts'
import type { StepKind } from '#model/make-step.ts'
import type { Rates } from '#model/rates.ts'
import { firstChange } from '#model/record-fields.ts'
import type { StockRecordFields } from '#model/stock-record.ts'

type Machine = Omit<MachineRecordFields, 'retired' | 'note' | 'longestMm' | 'kerfMm' | 'sawnFaceMm' | 'hardMilling' | 'spindle'> & Partial<MachineRecordFields>
const plain = { longestMm: null, kerfMm: null, sawnFaceMm: null, hardMilling: false, spindle: null, retired: false, note: '' }

/** Invented demo data. What the invented shop makes bars with; hardening goes out. */
const machines: { readonly [id: string]: Machine } = {
  'demo-saw-1': { name: 'Band saw', kind: 'saw', perHour: 12, kerfMm: 1.5, sawnFaceMm: 1 },
  'demo-mill-1': { name: 'Knee mill', kind: 'mill', perHour: 25, longestMm: 600, spindle: { leastRpm: 80, mostRpm: 2500, speedsRpm: null, powerKw: 2.2, efficiency: null, mostFeedMmPerMin: 800 } },
  'demo-grinder-1': { name: 'Surface grinder 450 × 150', kind: 'grinder', perHour: 30, longestMm: 450 },
  'demo-press-1': { name: 'Hand press', kind: 'press', perHour: 5 },
  'demo-lap-1': { name: 'Ground plate with 240 cloth', kind: 'ground plate', perHour: 0 },
}

/** Invented demo data. Money is whatever the invented shop counts in. */
export const demoRates: Rates = { handPerHour: 45, hoursPerDay: 6, hardening: { cost: 90, days: 8 }, cutterCost: 60 }

type Stock = Omit<StockRecordFields, 'retired' | 'note' | 'offcut' | 'form'> & Partial<StockRecordFields>
const offcut = (name: string, lengthMm: number, widthMm: number): Stock => ({ name, steel: '1.2842', condition: 'annealed', lengthMm, widthMm, thicknessMm: 4, count: 1, price: 0, form: 'plate', offcut: true })

/** Invented demo data. Two plates and a heap of offcuts, and lengths as they are bought. */
const stock: { readonly [id: string]: Stock } = {
  'demo-plate-4': { name: 'Plate 4 mm', steel: '1.2842', condition: 'annealed', lengthMm: 1000, widthMm: 260, thicknessMm: 4, count: 2, price: 118, form: 'plate' },
  'demo-plate-10': { name: 'Plate 10 mm', steel: '1.2842', condition: 'annealed', lengthMm: 500, widthMm: 310, thicknessMm: 10, count: 1, price: 96, form: 'plate' },
  'demo-offcut-1': offcut('Offcut 1', 180, 255), 'demo-offcut-2': offcut('Offcut 2', 140, 260), 'demo-offcut-3': offcut('Offcut 3', 120, 130), 'demo-offcut-4': offcut('Offcut 4', 95, 300),
  'demo-flat-30': { name: 'Drawn flat 30 × 10', steel: 'C45', condition: 'drawn', lengthMm: 3000, widthMm: 30, thicknessMm: 10, count: null, price: 31 },
  'demo-flat-40': { name: 'Drawn flat 40 × 10', steel: 'C45', condition: 'drawn', lengthMm: 3000, widthMm: 40, thicknessMm: 10, count: null, price: 38 },
}

/** Invented demo data. A pair half made, back from the furnace with a bow. */
const form: OrderForm = {
  unit: 'mm', heightsBy: 'list', heights: '30', from: '', to: '', step: '', jawHeight: '', below: '0.5', lowest: '5', thickness: '10', lengthBy: 'length', length: '150', jawWidth: '', under: '1',
  pairs: '1', vises: '1', use: 'grinding', hrc: '60', due: null, faces: false, offer: { cost: '', days: '', match: '', parallel: '' },
}
const bars = ['demo-made-1', 'demo-made-2'] as const, matesId = 'demo-made-mates-1'
const done: readonly (readonly [step: StepKind, daysAgo: number, hours: string])[] = [
  ['check the delivery', 20, '0.2'], ['saw', 20, '0.5'], ['square the ends', 19, '0.5'], ['rough the edges', 19, '1'], ['deburr and mark', 19, ''], ['clean for the furnace', 18, '0.2'], ['harden', 10, ''], ['temper', 10, ''], ['read after hardening', 2, '0.4'],
]
const typed = { 'bow of the edges/0': ['0.12', '0.06'], 'bow of the faces/0': ['0.03', '0.02'], 'hardness/0': ['60.5', '60'], 'hardness/1': ['61', '60.5'], 'hardness/2': ['60.5', '60.5'], 'height/0': ['30.66', '30.65'], 'height/1': ['30.66', '30.66'], 'height/2': ['30.65', '30.66'] } as const

/** All that Make shows of the demo; `code` makes the label of a bar out of its id. */
export function demoMake(ago: (days: number) => By, code: (id: string) => string): { readonly changes: readonly Change[]; readonly checks: readonly Check[]; readonly events: readonly BarEvent[] } {
  const came = ago(200), cut = ago(20), { person, device, atIso, newId } = cut
  const kept = Object.entries(stock).map(([id, one]) => ({ id, offcut: false, form: 'length' as const, retired: false, note: '', ...one })), made = Object.entries(machines).map(([id, one]) => ({ id, ...plain, ...one }))
  const ofForm = (wanted: 'length' | 'plate') => kept.flatMap(({ form: is, retired: _retired, note: _note, ...one }) => (is === wanted ? [one] : []))
  const planned: PlannedWith = { lengths: ofForm('length'), plates: ofForm('plate'), machines: made.map(({ retired: _retired, note: _note, ...one }) => one), rates: demoRates, daysLeft: null }
  const job: JobFields = {
    name: 'Pair of 30 for the grinder', form, route: 'ground', planned, bars: bars.map((id) => ({ id, heightMm: 30, matesId })), tools: { 'cutting.diameter': '12' }, state: 'open', draftId: null, note: '',
    typed: Object.fromEntries(Object.entries(typed).flatMap(([what, texts]) => bars.map((id, at) => [`read after hardening/${id}/${what}`, texts[at]!]))),
    done: Object.fromEntries(done.map(([step, days, hours]) => [step, { hours, person: 'KM', atIso: ago(days).atIso }])),
  }
  return {
    changes: [
      ...made.map(({ id, ...fields }) => firstChange('machine', id, fields, came)), ...kept.map(({ id, ...fields }) => firstChange('stock', id, fields, came)),
      firstChange('mates', matesId, { name: '30 A', note: '' }, cut),
      ...bars.map((id, at) => firstChange('bar', id, { code: code(id), name: `30 A${at + 1}`, thicknessMm: 10, thicknessStanding: 'marked', lengthMm: 150, matesId, slotId: null, where: { at: 'slot' }, note: '' }, cut)),
      firstChange('job', 'demo-job-1', job, cut),
    ],
    checks: [{ id: newId(), method: 'stated', replaces: null, ...nothingTaken, readings: bars.map((bar) => ({ bar, station: 0, xMm: null, ...onTheFirstLine, text: '30', heightMm: 30 })), note: '', person, device, atIso }],
    events: bars.flatMap((bar) => (['added', 'in work'] as const).map((kind): BarEvent => ({ id: newId(), bar, kind, undoes: null, note: '', person, device, atIso }))),
  }
}
