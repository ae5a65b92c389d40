import type { BarOnPlateData, PlateBar } from '#drafting/inspect/bar-on-plate.ts'
import type { CertificateBar, CertificateData } from '#drafting/inspect/certificate.ts'
import type { CheckSheetData, SheetBar } from '#drafting/inspect/check-sheet.ts'
import type { PairMatchData } from '#drafting/inspect/pair-match.ts'
import type { ProfileData, ProfileSeries } from '#drafting/inspect/profile.ts'
import type { TurnOverData } from '#drafting/inspect/turn-over.ts'
import { millimetres } from '#drafting/gallery/sheets.ts'
import type { TitleRow } from '#drafting/title-rows.ts'

/** Invented checks for the gallery: two bars of 25 on the plate. */
const even = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => 5 + (i * 140) / (count - 1))
const named = (pairs: readonly (readonly [string, string])[]) => pairs.map(([label, value]) => ({ label, value }))

export const seriesAt = (label: string, ums: readonly (number | null)[], uUm: number | null = 0.6): ProfileSeries =>
  ({ label, points: even(ums.length).map((xMm, i) => ({ xMm, um: ums[i]!, uUm: ums[i] === null ? null : uUm })) })

export const profile: ProfileData & { readonly title: string; readonly description: string; readonly lengthMm: number } = {
  title: 'Profile', description: 'Heights of two bars along their length', lengthMm: 150, zero: 'zero: block of 25', whiskers: '± U, 95 %',
  series: [seriesAt('25 A, bar 1', [3, 4, 2, 2.5, 3]), seriesAt('25 A, bar 2', [6, 5, 4, 4.5, 5])], band: { fromUm: 1.5, toUm: 6.5, label: '5 µm, fine milling' },
}

const plateBar = (id: string, label: string, count: number, rows: readonly (readonly [label: string, key: string])[] = [['', '0/A']]): PlateBar => ({
  label, heightMm: 25, thicknessMm: 10, lengthMm: 150, stationsMm: even(count), rows: rows.map(([name, key]) => ({ label: name, keys: even(count).map((_, i) => `${id}/${key}/${i}/0`) })),
})

/** Two bars with this many stations, half of them read. */
export function onPlate(count: number, more: Partial<BarOnPlateData> = {}): BarOnPlateData {
  const half = Array.from({ length: count }, (_, i) => (i < count / 2 ? 2 + (i % 3) : null))
  return {
    title: 'The bars on the plate', description: 'Two bars on the surface plate, marked end to the left', markedEnd: 'marked end', zero: 'block',
    bars: [plateBar('a', '25 A, bar 1', count), plateBar('b', '25 A, bar 2', count)], current: `a/0/A/${Math.floor(count / 2)}/0`, texts: { 'a/0/A/0/0': '+2', 'a/0/A/1/0': '+3' },
    profile: { ...profile, series: [seriesAt('25 A, bar 1', half)], band: null, whiskers: '' }, ...more,
  }
}

export const turnedBar: PlateBar = { ...plateBar('c', '6 D', 3, [['face A up', '0/A'], ['face B up', '0/B']]), heightMm: 4 }

export const pairMatched: PairMatchData = {
  title: 'Pair', description: 'Two bars as laid and turned', lengthMm: 150, first: seriesAt('25 A, bar 1', [3, 4, 2]), second: seriesAt('25 A, bar 2', [6, 5, 4]), zero: 'zero: block of 25', whiskers: '± U, 95 %',
  asLaid: { heading: 'As laid', says: 'Worst difference 3 µm.' }, turned: { heading: '25 A, bar 2 turned', says: 'Worst difference 4 µm.' },
}

export const turnedOver: TurnOverData = {
  title: 'Turned over', description: 'One bar with either face up', lengthMm: 150, stationsMm: [5, 75, 145], zero: 'zero: block of 25',
  faceA: { label: 'face A up', ums: [0, 6, 1] }, faceB: { label: 'face B up', ums: [0, -4, 1] }, height: { label: 'height', ums: [0, 2, 1] }, bend: { label: 'bend', ums: [0, 5, 0] },
  asRead: { heading: 'As read', says: 'Range 6 µm with face A up, 5 µm with face B up.' }, apart: { heading: 'Height and bend apart', says: 'Heights within 2 µm. Bent 5 µm toward face A.' },
}


const foot: readonly TitleRow[] = [[{ label: 'Shop', value: 'Demo shop (invented)', share: 0.4 }, { label: 'Printed on', value: '2025-03-14', share: 0.2 }, { label: 'Read on', value: '', share: 0.2 }, { label: 'Initials', value: '', share: 0.2 }]]

/** A sheet for so many bars, stations and passes, its boxes numbered through. */
export function checkSheet(bars = 2, stations = 5, passes = 2): CheckSheetData {
  let number = 0
  const bar = (_: unknown, i: number): SheetBar => ({
    label: `25 A, bar ${i + 1}`, sizes: '25 × 10 × 150 mm', heightMm: 25, lengthMm: 150, stations: even(stations).map((xMm) => ({ xMm, place: String(Math.round(xMm * 10) / 10) })),
    rows: Array.from({ length: passes }, (__, pass) => ({ label: `pass ${pass + 1}`, cells: even(stations).map((___, station) => ({ number: number += 1, station: station + 1 })) })),
  })
  return {
    title: 'Check sheet', description: 'To fill in by pencil', heading: 'Check sheet', under: 'Compared on the plate · readings in µm from the zero', code: { label: 'half-done check', value: '7KQ4M2XP' }, foot,
    taken: named([['Instrument', 'Lever indicator (invented), due 2025-09-30'], ['Plate', 'Granite 630 × 400 (invented)'], ['Zero on', 'a block of 25'], ['Gauge blocks', '']]),
    howTo: { heading: 'How', lines: ['Set the zero, read in the order of the numbers, read the zero again at the end.', 'In brackets the station, counted from the marked end.'] },
    bars: Array.from({ length: bars }, bar), markedEnd: 'marked end',
    looks: { heading: 'Look', ticks: ['wiped', 'stoned', 'lies still', 'rocks', 'bent', 'nicked', 'drilled', 'magnetised'], write: ['feeler'] },
    atTheEnd: named([['Zero at the end, µm', ''], ['Temperature, °C', ''], ['Note', '']]), cautions: { heading: 'Cautions', lines: ['Gauge blocks are never bars: they stay at the plate.', 'The instructions of the machine and its supplier, local rules and trained practice go before this list.'] },
  }
}

const uses = { heads: ['use', 'limit', 'verdict'], rows: [['drilling', '25 µm', 'proved'], ['milling', '10 µm', 'proved'], ['fine milling', '5 µm', 'proved'], ['grinding', '2 µm', 'not proved']] }

function certificateBar(label: string, ums: readonly number[]): CertificateBar {
  return {
    label, sizes: '25 × 10 × 150 mm', uses, turnOver: null, profile: { ...profile, series: [seriesAt(label, ums)] },
    figures: named([['Height', '25.003 mm (0.9844 in)'], ['its U, 95 %', '0.9 µm'], ['Parallelism', '2 µm'], ['its u', '0.5 µm'], ['Proved to', '2.8 µm'], ['Taper', '1 µm, marked end higher'], ['Crown', '1.5 µm']]),
    readings: { heads: ['as typed', ...even(ums.length).map((xMm, i) => `${i + 1} (${Math.round(xMm * 10) / 10})`)], rows: ['pass 1', 'pass 2'].map((pass) => [pass, ...ums.map((um) => `+${um}`)]) },
  }
}

/** The certificate of so many bars with so many stations. */
export function certificate(bars = 2, stations = 5): CertificateData {
  return {
    ...checkSheet(0), title: 'Certificate of a check', description: 'What was read and what it proves', heading: `Check of ${bars} bars`, under: 'Compared on the plate, 14 Mar 2025, KM', code: { label: 'check', value: '3XJ2K8PW' }, units: millimetres,
    taken: named([['Instrument', 'Lever indicator (invented), overdue since 2025-01-31'], ['Plate', 'Granite 630 × 400 (invented), due 2025-11-02'], ['Gauge blocks', 'Box 1 (invented), due 2025-12-01'], ['Zero', 'block of 25 mm'], ['Temperature', '20.5 °C'], ['Zero at the end', '+0.5 (0.5 µm)']]),
    corrections: { heading: 'Corrections', lines: ['Replaces check 7KQ4M2XP of 3 Mar 2025.'] },
    findings: { heading: 'Findings', lines: ['The lever indicator was due on 2025-01-31: what it proved is in doubt until it is calibrated again.', 'No temperature of the block was given.'] },
    bars: Array.from({ length: bars }, (_, i) => certificateBar(`25 A, bar ${i + 1}`, Array.from({ length: stations }, (__, at) => 2 + ((at * 7 + i * 3) % 5)))),
    pair: bars !== 2 ? null : { heading: '25 A, bar 1 and 25 A, bar 2 as mates', figures: named([['Mean difference', '2 µm'], ['Worst as laid', '3 µm'], ['Worst turned', '4 µm'], ['Better way', 'as laid']]), uses, match: pairMatched },
    uncertainty: {
      heading: 'Uncertainty', notes: ['Left out of the parallelism, as the same all along the bar: gauge block and setting of the zero.'],
      table: { heads: ['in µm', 'height', 'parallelism', 'difference of the two'], rows: [['reading step', '0.29', '0.41', '0.41'], ['repeats', '0.12', '0.2', '0.2'], ['plate', '0.87', '0.87', ''], ['standard uncertainty together', '0.92', '0.98', '0.46']] },
    },
    rule: { heading: 'Rule', lines: ['Proved: the value and 1.65 standard uncertainties lie within the limit.', 'The limits are the shop’s own.'] },
    notComputed: { heading: 'Not computed', lines: ['Straightness and squareness of the sides, hardness.'] }, sign: ['Checked by', 'Signature', 'Date'],
  }
}
