import { createHash } from 'node:crypto'
import type { BarEvent } from '#model/bar-event.ts'
import type { BarFields } from '#model/bar-record.ts'
import type { By, Change } from '#model/change.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import { codeFrom } from '#model/code.ts'
import type { Deed } from '#model/deed.ts'
import { readLengthMm } from '#model/length.ts'
import { firstChange } from '#model/record-fields.ts'
import { type DemoBars, demoBars } from '#tasks/shop/demo/demo-bars.ts'
import { demoInspect } from '#tasks/shop/demo/demo-checks.ts'
import { demoMake } from '#tasks/shop/demo/demo-make.ts'
import { demoParts, demoSetups } from '#tasks/shop/demo/demo-forms.ts'
import { demoVises } from '#tasks/shop/demo/demo-vises.ts'

/** Bars came long ago, were measured, and looked over. */
const cameDaysAgo = 200, measuredDaysAgo = 30, lookedOverDaysAgo = 29
const stationsXMm = [0.1, 0.5, 0.9]

/** All invented demo data as one deed, as if `by` had kept the shop until now. Records have the same ids and codes every time; people who are there already are not invented again. */
export function demoDeed(by: By, knownInitials: readonly string[]): Deed {
  const ago = (days: number): By => ({ ...by, atIso: new Date(Date.parse(by.atIso) - days * 86_400_000).toISOString() })
  const slots = new Map([...new Set(demoBars.map((bars) => bars.slot))].map((name) => [name, `demo-slot-${name}`]))
  const came = ago(cameDaysAgo)
  const bars = demoBars.flatMap((one) => idsOf(one).map((id) => ({ id, saw: {}, ...barFields(one, id, slots.get(one.slot)!) }))), inspect = demoInspect(bars, ago), make = demoMake(ago, demoCode)
  const changes: Change[] = [
    ...Object.entries(demoVises).map(([id, fields]) => firstChange('vise', id, fields, came)),
    ...[...slots].map(([name, id]) => firstChange('slot', id, { code: demoCode(id), name }, came)),
    ...['KM', 'JO', 'TB'].filter((initials) => !knownInitials.includes(initials)).map((initials) => firstChange('person', `demo-${initials}`, { initials, units: null }, came)),
    ...demoBars.flatMap((bars) => (bars.mates === undefined ? [] : [firstChange('mates', `${bars.id}-mates`, { name: bars.mates, note: '' }, came)])),
    ...bars.map(({ id, saw: _saw, ...fields }) => firstChange('bar', id, fields, came)),
    ...inspect.changes,
    ...make.changes,
    ...Object.entries(demoParts).map(([id, part]) => firstChange('part', id, { ...part, retired: false }, came)),
    ...demoSetups.map(({ mates, daysAgo, partId, ...setup }, at) => firstChange('setup', `demo-setup-${at + 1}`, {
      ...setup, partId, form: demoParts[partId]!.form, usedAtIso: ago(daysAgo).atIso, retired: false,
      bars: idsOf(demoBars.find((bars) => bars.mates === mates)!),
    }, ago(daysAgo))),
  ]
  return { changes, checks: [...demoBars.flatMap((one) => checksOf(one, ago)), ...inspect.checks, ...make.checks], events: [...demoBars.flatMap((bars) => eventsOf(bars, ago)), ...make.events] }
}

const idsOf = ({ id, count }: DemoBars): string[] => Array.from({ length: count }, (_none, at) => (count === 1 ? id : `${id}-${at + 1}`))

function barFields(bars: DemoBars, id: string, slotId: string): BarFields {
  return {
    code: demoCode(id), name: bars.mates ?? '', slotId,
    thicknessMm: readLengthMm(bars.thickness, bars.unit), thicknessStanding: 'marked', lengthMm: readLengthMm(bars.length, bars.unit),
    matesId: bars.mates === undefined ? null : `${bars.id}-mates`, where: bars.where ?? { at: 'slot' }, note: bars.note ?? '',
  }
}

function checksOf(bars: DemoBars, ago: (days: number) => By): Check[] {
  const markedMm = readLengthMm(bars.text, bars.unit), lengthMm = readLengthMm(bars.length, bars.unit)
  const check = (days: number, method: Check['method'], readings: Check['readings']): Check => {
    const { person, device, atIso, newId } = ago(days)
    return { id: newId(), method, replaces: null, ...nothingTaken, readings, note: '', person, device, atIso }
  }
  const stated = check(cameDaysAgo, 'stated', idsOf(bars).map((bar) => ({ bar, station: 0, xMm: null, ...onTheFirstLine, text: bars.text, heightMm: markedMm })))
  if (bars.um === undefined) return [stated]
  return [stated, check(measuredDaysAgo, 'micrometer', idsOf(bars).flatMap((bar, at) => bars.um![at]!.map((um, station) => {
    const text = (markedMm + um / 1000).toFixed(3)
    return { bar, station, xMm: lengthMm * stationsXMm[station]!, ...onTheFirstLine, text, heightMm: Number(text) }
  })))]
}

function eventsOf(bars: DemoBars, ago: (days: number) => By): BarEvent[] {
  const event = (bar: string, days: number, kind: BarEvent['kind']): BarEvent => {
    const { person, device, atIso, newId } = ago(days)
    return { id: newId(), bar, kind, undoes: null, note: '', person, device, atIso }
  }
  const afterwards = { 'trusted': 'looked over', 'drill bar': 'made drill bar', 'gone': 'gone', 'look first': null } as const
  return idsOf(bars).flatMap((bar) => {
    const kind = afterwards[bars.trust]
    return [event(bar, cameDaysAgo, 'added'), ...(kind === null ? [] : [event(bar, lookedOverDaysAgo, kind)])]
  })
}

const demoCode = (id: string): string => codeFrom(createHash('sha256').update(id).digest(), 8)
