import type { Bar } from '#model/bar.ts'
import type { BarRecord } from '#model/bar-record.ts'
import { type JobFields, type JobRecord, jobNameLetters, type PlannedWith } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { Use } from '#model/wishes.ts'
import { regrindOf } from '#engine/rack/regrind/regrind.ts'
import { wornFrom } from '#engine/rack/regrind/regrind-of-shop.ts'
import { lowFrom, type RegrindTyped, wishFrom } from '#engine/rack/regrind/regrind-typed.ts'

/** The bars of the shop, as written down and as they stand today, and what is being made of which of them. */
export type RegrindRack = { readonly records: readonly BarRecord[]; readonly rack: readonly Bar[]; readonly jobs: readonly Pick<JobRecord, 'state' | 'name' | 'bars'>[] }

/**
 * How they are to be ground, as typed; `low`: by the id of a bar, how much lower it is to come out; `use`: what they are to be good for afterwards.
 * A `name` that is too long for a job, out of the names of many bars, is cut.
 */
export type RegrindOrder = { readonly typed: RegrindTyped; readonly low: { readonly [bar: string]: string }; readonly use: Use; readonly name: string; readonly units: Units; readonly planned: PlannedWith }

/** The least of places that show how a bar is worn. */
const leastPlaces = 2

/**
 * A job of grinding bars of the rack to one new height. What is typed stays as typed and is worked out anew each time.
 *
 * @throws Refusal `too-few-bars`, `bar-not-known`, `bar-id-twice`, `bar-gone`, `bar-in-work`, `bar-out`, `bar-in-job`, `height-not-measured`, `profile-not-read`,
 * as `wishFrom`, `lowFrom` and `regrindOf`
 */
export function regrindJob(ids: readonly string[], { records, rack, jobs }: RegrindRack, { typed, low, use, name, units, planned }: RegrindOrder): JobFields {
  const bars = ids.map((id, k) => { refuseUnfit(id, k, ids, { records, rack, jobs }); return rack.find((bar) => bar.id === id)! }), lowUm = lowFrom(low)
  const regrind = regrindOf({ ...wishFrom(typed), windowsMm: null, bars: bars.map((bar, k) => wornFrom(bar, bar.id, k, lowUm[bar.id] ?? 0)) }), [first] = bars, size = (mm: number) => wordLength(mm, units, { fractions: false })
  return {
    name: name.slice(0, jobNameLetters), route: 'regrind', planned: { ...planned, lengths: [], plates: [] }, typed: {}, done: {}, state: 'open', draftId: null, note: '',
    bars: bars.map(({ id, heightMm, mates }) => ({ id, heightMm, matesId: mates?.split('~')[0] ?? id })),
    tools: { ...prefixed('regrind.', typed), ...prefixed('regrind.low.', Object.fromEntries(ids.flatMap((id) => ((low[id] ?? '').trim() === '' ? [] : [[id, low[id]!]])))) },
    form: {
      unit: units.length, heightsBy: 'list', heights: size(regrind.newHeightMm), from: '', to: '', step: '', jawHeight: '', below: '', lowest: '', thickness: size(first!.thicknessMm), lengthBy: 'length', length: size(first!.lengthMm), jawWidth: '', under: '',
      pairs: '1', vises: '1', use, hrc: '', due: null, faces: false, offer: { cost: '', days: '', match: '', parallel: '' },
    },
  }
}

/** How a regrind is to be ground, as it was typed when it was begun. */
export function typedOf({ tools }: Pick<JobFields, 'tools'>): RegrindTyped {
  const text = (name: keyof RegrindTyped) => tools[`regrind.${name}`] ?? '', datum = text('datum')
  return {
    cleanUp: text('cleanUp'), step: text('step'), faces: text('faces') === '2' ? '2' : '1', datum: datum === 'A' || datum === 'B' ? datum : '',
    infeed: text('infeed'), fineInfeed: text('fineInfeed'), fineTakes: text('fineTakes'), sparkOut: text('sparkOut'),
  }
}

/** How much lower each bar is to come out, as typed. */
export const lowTypedOf = ({ tools }: Pick<JobFields, 'tools'>): { readonly [bar: string]: string } =>
  Object.fromEntries(Object.entries(tools).flatMap(([key, text]) => (key.startsWith('regrind.low.') ? [[key.slice('regrind.low.'.length), text]] : [])))

/** Whether enough places of a bar were read for what is worn off to be known. */
export const hasProfile = ({ heightsUm = [] }: Pick<Bar, 'heightsUm'>): boolean => heightsUm.length >= leastPlaces

export const profileNotRead = (k: number, given: number): Refusal => new Refusal('profile-not-read', { field: `bars[${k}]`, given, needed: { least: leastPlaces } })

function refuseUnfit(id: string, k: number, ids: readonly string[], { records, rack, jobs }: RegrindRack): void {
  const field = `bars[${k}]`, record = records.find((one) => one.id === id), bar = rack.find((one) => one.id === id), job = jobs.find(({ state, bars }) => state === 'open' && bars.some((one) => one.id === id))
  if (record === undefined || bar === undefined) throw new Refusal('bar-not-known', { field, given: id.slice(0, 60) })
  if (ids.indexOf(id) !== k) throw new Refusal('bar-id-twice', { field, given: record.name || record.code })
  if (bar.trust === 'gone') throw new Refusal('bar-gone', { field, given: record.name || record.code })
  if (bar.trust === 'in work') throw new Refusal('bar-in-work', { field, given: record.name || record.code })
  if (job !== undefined) throw new Refusal('bar-in-job', { field, given: record.name || record.code, job: job.name })
  if (record.where.at === 'out') throw new Refusal('bar-out', { field, given: record.where.who })
  if (bar.standing !== 'measured') throw new Refusal('height-not-measured', { field, given: bar.heightMm })
  if (!hasProfile(bar)) throw profileNotRead(k, bar.heightsUm?.length ?? 0)
}

const prefixed = (prefix: string, texts: { readonly [name: string]: string }): { readonly [name: string]: string } =>
  Object.fromEntries(Object.entries(texts).flatMap(([name, text]) => (text === '' ? [] : [[prefix + name, text]])))
