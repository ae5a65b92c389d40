import type { BarFields, MatesFields, SlotFields } from '#model/bar-record.ts'
import type { BarEvent } from '#model/bar-event.ts'
import type { By } from '#model/change.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { SetupFields } from '#model/setup-record.ts'
import type { ViseFields } from '#model/vise-record.ts'

/** Small records for tests. Ids and times count up, so that a test reads the same on every run. */
export function byFrom(person: string, device = 'bench', atIso = '2025-03-04T08:00:00.000Z'): By {
  let made = 0
  return { person, device, atIso, newId: () => `${device}-${person}-${(made += 1).toString().padStart(4, '0')}` }
}

export const barFields = (code: string, more: Partial<BarFields> = {}): BarFields => ({
  code, name: '35', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId: null, slotId: null, where: { at: 'slot' }, note: '', ...more,
})
export const matesFields: MatesFields = { name: 'A', note: '' }
export const slotFields = (code: string, name = 'A1'): SlotFields => ({ code, name })
export const viseFields: ViseFields = {
  name: 'Vise 1', jawWidthMm: 125, openingMm: 150, fittedJawSetId: 'jaws', retired: false, note: '', measured: null,
  jawSets: [{ id: 'jaws', name: 'standard', fixedHeightMm: 45, movingHeightMm: 45, stepHeightMm: null, face: 'smooth' }],
}
export const setupForm: SetupForm = {
  unit: 'mm', shape: 'block', height: '19', offTop: '6', proud: '', between: '38', along: '60', cuts: [], hollows: [], use: 'milling',
  wishes: { grip: '', air: '', holeAir: '', bedAir: '', gap: '', tolerance: '' },
}
export const setupFields = (viseId: string, more: Partial<SetupFields> = {}): SetupFields => ({
  title: 'Plate', operation: 'face', viseId, partId: null, form: setupForm, bars: [], stand: 'on edge', usedAtIso: '2025-03-04T08:00:00.000Z',
  retired: false, ...more,
})
export const stated = (id: string, bar: string, heightMm: number, more: Partial<Check> = {}): Check => ({
  id, method: 'stated', replaces: null, ...nothingTaken, readings: [{ bar, station: 0, xMm: null, ...onTheFirstLine, text: `${heightMm}`, heightMm }], note: '',
  person: 'KM', device: 'bench', atIso: '2025-03-04T08:00:00.000Z', ...more,
})
export const event = (id: string, bar: string, kind: BarEvent['kind'], more: Partial<BarEvent> = {}): BarEvent => ({
  id, bar, kind, undoes: null, note: '', person: 'KM', device: 'bench', atIso: '2025-03-04T08:00:00.000Z', ...more,
})
