import { attempt } from '#model/attempt.ts'
import type { Check } from '#model/check.ts'
import type { JobFields } from '#model/job-record.ts'
import { type LengthUnit, readLengthMm, readNumber } from '#model/length.ts'
import { type Actuals, type ReadingKind, readingKinds, type StepKind, stepKinds } from '#model/make-step.ts'
import { Refusal } from '#model/refusal.ts'

type Reading = Actuals['readings'][number]

/** What was done and read, and the texts that could not be read, by their key. */
export type ReadActuals = { readonly actuals: Actuals; readonly refused: { readonly [key: string]: Refusal } }

export const readingKey = (step: StepKind, bar: string, what: ReadingKind, place: number): string => `${step}/${bar}/${what}/${place}`
export const hoursKey = (step: StepKind): string => `hours/${step}`

/**
 * The facts of a job as numbers. A text that cannot be read counts as not yet read, and is told.
 *
 * Heights at the plate are those of the latest check of each bar: nobody types them twice.
 */
export function actualsFrom({ form: { unit }, bars, typed, done }: Pick<JobFields, 'form' | 'bars' | 'typed' | 'done'>, checks: readonly Check[]): ReadActuals {
  const refused: { [key: string]: Refusal } = {}, ids = new Set(bars.map(({ id }) => id))
  const readAt = (key: string, read: () => number): readonly number[] => {
    const got = attempt(read)
    if (!(got instanceof Refusal)) return [got]
    refused[key] = got
    return []
  }
  const places = new Map<string, { readonly reading: Omit<Reading, 'values'>; readonly at: readonly (readonly [place: number, value: number])[] }>()
  for (const [key, text] of Object.entries(typed)) {
    const [step, bar, what, place] = key.split('/')
    if (text.trim() === '' || !isStep(step) || !isReading(what) || bar === undefined || !ids.has(bar)) continue
    const name = `${step}/${bar}/${what}`, before = places.get(name)?.at ?? []
    places.set(name, { reading: { step, bar, what }, at: [...before, ...readAt(key, () => readValue(text, what, unit)).map((value) => [Number(place), value] as const)] })
  }
  const readings = [...places.values()].flatMap(({ reading, at }): Reading[] => (at.length === 0 ? [] : [{ ...reading, values: at.toSorted((a, b) => a[0] - b[0]).map(([, value]) => value) }]))
  const ticks = stepKinds.flatMap((step) => {
    const tick = done[step]
    if (tick === undefined) return []
    const [hours = null] = tick.hours.trim() === '' ? [] : readAt(hoursKey(step), () => readHours(tick.hours))
    return [{ step, hours }]
  })
  return { actuals: { bars, readings: [...readings, ...atThePlate(bars.map(({ id }) => id), checks)], done: ticks }, refused }
}

/** The latest check with heights of each bar that no other replaces. Those said or marked do not count. */
function atThePlate(ids: readonly string[], checks: readonly Check[]): readonly Reading[] {
  const replaced = new Set(checks.map(({ replaces }) => replaces))
  const measured = checks.filter(({ id, method }) => (method === 'compare' || method === 'micrometer') && !replaced.has(id)).toSorted((a, b) => (a.atIso < b.atIso ? -1 : 1))
  return ids.flatMap((bar): Reading[] => {
    const values = measured.findLast(({ readings }) => readings.some((one) => one.bar === bar))?.readings.filter((one) => one.bar === bar).map(({ heightMm }) => heightMm) ?? []
    return values.length === 0 ? [] : [{ step: 'inspect', bar, what: 'height', values: values.slice(0, 100) }]
  })
}

const readValue = (text: string, what: ReadingKind, unit: LengthUnit): number => notBelow0(what === 'hardness' ? readNumber(text, what) : readLengthMm(text, unit, what), text)

function notBelow0(value: number, text: string): number {
  if (value < 0) throw new Refusal('value-not-allowed', { field: 'value', given: text, needed: 'not below 0' })
  return value
}

const isStep = (word: string | undefined): word is StepKind => stepKinds.some((step) => step === word)
const isReading = (word: string | undefined): word is ReadingKind => readingKinds.some((kind) => kind === word)

/** Hours as typed. @throws Refusal of `readNumber`, `wish-negative` */
export const readHours = (text: string): number => notBelow0(readNumber(text, 'hours'), text)
