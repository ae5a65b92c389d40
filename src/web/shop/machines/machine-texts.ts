import { type MachineKind } from '#model/machine.ts'
import type { MachineRecordFields, Spindle } from '#model/machine-record.ts'
import { readNumber, readSizeMm, wordLength, wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { type Readers, readFields, readName, type Refused } from '#web/parts/read-fields.ts'
import { amountText, readAbove0, readAmount } from '#web/shop/shop-money.ts'

/** A machine as typed; fields of another kind do not count. */
export type MachineTexts = {
  readonly kind: MachineKind
  readonly name: string; readonly perHour: string; readonly longest: string; readonly kerf: string; readonly sawnFace: string
  readonly hardMilling: boolean
  readonly leastRpm: string; readonly mostRpm: string; readonly speeds: string; readonly power: string; readonly mostFeed: string
  readonly note: string
}

type Read = {
  name: string; perHour: number | null; longestMm: number | null; kerfMm: number | null; sawnFaceMm: number | null
  leastRpm: number | null; mostRpm: number | null; speedsRpm: number[] | null; powerKw: number | null; mostFeedMmPerMin: number | null
}
export type MachineWrong = Refused<Read>

export const newMachineTexts: MachineTexts = { kind: 'mill', name: '', perHour: '', longest: '', kerf: '', sawnFace: '', hardMilling: false, leastRpm: '', mostRpm: '', speeds: '', power: '', mostFeed: '', note: '' }

export function machineTexts({ kind, name, perHour, longestMm, kerfMm, sawnFaceMm, hardMilling, spindle, note }: MachineRecordFields, units: Units): MachineTexts {
  const mm = (value: number | null | undefined) => (value === null || value === undefined ? '' : wordLength(value, units)), number = (value: number | null | undefined) => amountText(value ?? null, units)
  return {
    kind, name, note, hardMilling, perHour: number(perHour), longest: mm(longestMm), kerf: mm(kerfMm), sawnFace: mm(sawnFaceMm), leastRpm: number(spindle?.leastRpm), mostRpm: number(spindle?.mostRpm),
    speeds: spindle?.speedsRpm?.map((rpm) => wordNumber(rpm, units.decimalMark)).join(' ') ?? '', power: number(spindle?.powerKw), mostFeed: mm(spindle?.mostFeedMmPerMin),
  }
}

/** The machine that was typed, or every refusal. `before` keeps what the form does not ask. */
export function readMachine(texts: MachineTexts, before: MachineRecordFields | null, units: Units): { readonly values: Omit<MachineRecordFields, 'retired'> } | { readonly refused: MachineWrong } {
  const { kind } = texts, isMill = kind === 'mill', isSaw = kind === 'saw', size = (text: string, field: string) => (text.trim() === '' ? null : readSizeMm(text, units.length, field))
  const readers: Readers<Read> = {
    name: () => readName(texts.name, 'name'), perHour: () => readAmount(texts.perHour, 'perHour'), longestMm: () => size(texts.longest, 'longestMm'),
    kerfMm: () => (isSaw ? size(texts.kerf, 'kerfMm') : null), sawnFaceMm: () => (isSaw ? size(texts.sawnFace, 'sawnFaceMm') : null),
    leastRpm: () => (isMill ? readAbove0(texts.leastRpm, 'leastRpm') : null), mostRpm: () => (isMill ? readAbove0(texts.mostRpm, 'mostRpm') : null), speedsRpm: () => (isMill ? readSpeeds(texts.speeds) : null),
    powerKw: () => (isMill ? readAbove0(texts.power, 'powerKw') : null), mostFeedMmPerMin: () => (isMill ? size(texts.mostFeed, 'mostFeedMmPerMin') : null),
  }
  const read = readFields<Read>(readers)
  if ('refused' in read) return read
  const { name, perHour, longestMm, kerfMm, sawnFaceMm, ...speeds } = read.values, spindle: Spindle = { ...speeds, efficiency: before?.spindle?.efficiency ?? null }
  return { values: { name, kind, perHour, longestMm, kerfMm, sawnFaceMm, hardMilling: isMill && texts.hardMilling, spindle: isMill && Object.values(spindle).some((one) => one !== null) ? spindle : null, note: texts.note } }
}

/** The steps of a gearbox, a space between; rising whatever their order. @throws Refusal of `readNumber`, `size-not-positive` */
function readSpeeds(text: string): number[] | null {
  const speeds = text.split(/[\s;]+/).filter((one) => one !== '').map((one) => readNumber(one, 'speedsRpm')).toSorted((a, b) => a - b)
  if (speeds.length > 0 && speeds[0]! <= 0) throw new Refusal('size-not-positive', { field: 'speedsRpm', given: speeds[0]!, needed: { above: 0 } })
  return speeds.length === 0 ? null : speeds
}
