import type { CheckMethod } from '#model/check-methods.ts'
import { type Check, checkSchema } from '#model/check.ts'
import type { CheckForm } from '#model/check-draft.ts'
import type { LengthUnit } from '#model/length.ts'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'
import { cellsOf } from '#engine/inspect/cells.ts'
import { type Checked, checkedOf } from '#engine/inspect/checked.ts'
import { type InspectFacts, inspectFactsFrom } from '#engine/inspect/inspect-facts.ts'
import { checkFromDraft, readDraft } from '#engine/inspect/read-draft.ts'
import type { Finding } from '#model/finding.ts'
import { inspectTables } from '#reference/inspect-tables.ts'
import { addChecks, checksOf } from '#store/checks.ts'
import { eventsOf } from '#store/events.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'
import { instrumentNamed } from '#tasks/inspect/instrument-named.ts'

/** One reading as it was typed: bars by id or label, lines and repeats counted from 1. */
export type TypedReading = { readonly bar: string; readonly reading: string; readonly face?: 'A' | 'B'; readonly line?: 1 | 2; readonly repeat?: number }

/**
 * A check as it is given in one piece. Instrument, plate and blocks by their names or ids; left out: not told, and nothing is proved without
 * an instrument. `zero`: the height of the block, or with `zeroBar` of that bar; left out there: as it was taken to be.
 */
export type CheckGiven = {
  readonly method: Exclude<CheckMethod, 'rock'>
  readonly readings: readonly TypedReading[]
  readonly unit?: LengthUnit
  readonly zero?: string
  readonly zeroBar?: string
  readonly closing?: string
  readonly temperature?: string
  /** Where the stations are from the marked end; left out: spread evenly. */
  readonly places?: readonly string[]
  readonly instrument?: string
  readonly plate?: string
  readonly blocks?: string
  /** The check it corrects. */
  readonly replaces?: string
  readonly asFound?: boolean
  readonly note?: string
}

/** `asks`: readings that look like a slip of the unit, each with its text. They are kept as they were read. */
export type RecordedCheck = { readonly check: Check; readonly checked: Checked; readonly asks: readonly (Finding & { readonly text: string })[] }

/**
 * Keeps a check given in one piece, read as the screen reads it.
 *
 * @param dryRun  works it out and keeps nothing
 * @throws Refusal as `checkFromDraft`; `bar-not-known`, `instrument-not-known`, `readings-uneven`; as `addChecks`
 */
export function recordCheck(store: Store, given: CheckGiven, by: Maker, { dryRun = false }: { readonly dryRun?: boolean } = {}): Promise<RecordedCheck> {
  return inTransaction(store, async (tx) => {
    const shop = await recordOf(tx, 'shop', 'shop'), facts = inspectFactsFrom({
      shop, bars: await recordsOf(tx, 'bar'), checks: await checksOf(tx), events: await eventsOf(tx), instruments: await recordsOf(tx, 'instrument'),
    }, by.atIso.slice(0, 10), inspectTables)
    const draft = await draftFrom(tx, given, given.unit ?? shop.units.length, facts)
    const body = checkFromDraft(draft, facts)
    const check = readAs(checkSchema, { ...body, id: by.newId(), person: by.person, device: by.device, atIso: by.atIso })
    if (!dryRun) await addChecks(tx, [check])
    const lengths = new Map(facts.bars.map(({ id, lengthMm }) => [id, lengthMm]))
    return {
      check, checked: checkedOf(check, { limitsUm: shop.limitsUm, lengthMmOf: (bar) => lengths.get(bar) ?? null }),
      asks: readDraft(draft, facts).cells.flatMap(({ asks, text }) => (asks ? [{ ...asks, text }] : [])),
    }
  })
}

async function draftFrom(store: Store, given: CheckGiven, unit: LengthUnit, { instruments }: InspectFacts) {
  const readings = await Promise.all(given.readings.map(async (one) => ({ ...one, bar: (await barNamed(store, one.bar)).id })))
  const bars = [...new Set(readings.map(({ bar }) => bar))], lines = Math.max(1, ...readings.map(({ line = 1 }) => line)) as 1 | 2, repeats = Math.max(1, ...readings.map(({ repeat = 1 }) => repeat))
  const runs = new Map<string, string[]>()
  for (const { bar, face = 'A', line = 1, repeat = 1, reading } of readings) {
    const run = `${bar}/${line - 1}/${face}/${repeat - 1}`
    runs.set(run, [...(runs.get(run) ?? []), reading])
  }
  const stations = Math.max(1, ...[...runs.values()].map((run) => run.length))
  const [uneven] = [...runs].filter(([, run]) => run.length < stations)
  if (uneven) throw new Refusal('readings-uneven', { field: 'readings', bar: uneven[0].split('/')[0]!, given: uneven[1].length, needed: stations })
  const form: CheckForm = {
    method: given.method, unit, stations, lines, repeats, places: [...given.places ?? []],
    bars: bars.map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' })),
    instrumentId: instrumentNamed(instruments, given.instrument, 'instrument', given.method === 'micrometer' ? ['micrometer'] : ['indicator']),
    plateId: instrumentNamed(instruments, given.plate, 'plate', ['plate']), blocksId: instrumentNamed(instruments, given.blocks, 'blocks', ['gauge blocks']),
    zeroOn: given.zeroBar === undefined ? 'block' : 'bar', zero: given.zero ?? '', zeroBar: given.zeroBar === undefined ? null : (await barNamed(store, given.zeroBar)).id,
    closing: given.closing ?? '', temperature: given.temperature ?? '', asFound: given.asFound === true, replaces: given.replaces ?? null, note: given.note ?? '',
  }
  const typed = Object.fromEntries(cellsOf(form).map(({ key, bar, line, face, station, repeat }) => [key, runs.get(`${bar}/${line}/${face}/${repeat}`)?.[station] ?? '']))
  return { form, typed, looks: {} }
}
