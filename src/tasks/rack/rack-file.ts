import { type RackFile, type RackFileImport, rackFileSchema } from '#model/rack-file.ts'
import type { FieldsOf } from '#model/record-fields.ts'
import { firstChange } from '#model/record-fields.ts'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'
import { addChecks, checksOf } from '#store/checks.ts'
import { applyChanges } from '#store/changes.ts'
import { addEvents, eventsOf } from '#store/events.ts'
import { knownOf, recordsOf } from '#store/records.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import { barsIn } from '#tasks/inspect/export-checks.ts'
import type { Maker } from '#tasks/maker.ts'

/** The whole rack as data (docs/rack-json.md), in the order of ids and of time, so that the same rack gives the same file. */
export function exportRackFile(store: Store): Promise<RackFile> {
  return atOneMoment(store, async (tx) => ({
    slots: (await recordsOf(tx, 'slot')).map(fieldsOf), mates: (await recordsOf(tx, 'mates')).map(fieldsOf), bars: (await recordsOf(tx, 'bar')).map(fieldsOf),
    events: await eventsOf(tx), checks: await checksOf(tx),
  }))
}

/**
 * Takes in a whole rack: all of it, or nothing. Bars, mates and slots that are there under the same id stay as they are; events and checks that are there
 * already likewise. A bar in a vise this shop does not have comes into its slot, which is told.
 *
 * @throws Refusal what `readAs` refuses, `bar-not-known` (a check or event of a bar that is neither in the file nor in the shop), `code-used-twice`, `id-used-twice`
 */
export async function importRackFile(store: Store, raw: unknown, by: Maker, { dryRun = false }: { readonly dryRun?: boolean } = {}): Promise<RackFileImport> {
  const file = readAs(rackFileSchema, raw)
  return await (dryRun ? atOneMoment : inTransaction)(store, async (tx) => {
    const known = { slot: await knownOf(tx, 'slot', idsOf(file.slots)), mates: await knownOf(tx, 'mates', idsOf(file.mates)), bar: await knownOf(tx, 'bar', idsOf(file.bars)) }
    const vises = new Set((await recordsOf(tx, 'vise')).map(({ id }) => id)), strange: string[] = []
    const bars = file.bars.map((bar) => {
      if (bar.where.at !== 'vise' || vises.has(bar.where.viseId)) return bar
      strange.push(bar.id)
      return { ...bar, where: { at: 'slot' as const } }
    })
    const named = [...file.events.map(({ bar }) => bar), ...file.checks.flatMap(barsIn)], here = new Set([...idsOf(bars), ...await knownOf(tx, 'bar', named)]), lost = named.find((bar) => !here.has(bar))
    if (lost !== undefined) throw new Refusal('bar-not-known', { field: 'bar', given: lost })
    if (!dryRun) {
      await applyChanges(tx, [...changesOf('slot', file.slots, known.slot, by), ...changesOf('mates', file.mates, known.mates, by), ...changesOf('bar', bars, known.bar, by)])
      await addChecks(tx, file.checks)
      await addEvents(tx, file.events)
    }
    return {
      dryRun, bars: file.bars.length, known: known.bar.size, events: file.events.length, checks: file.checks.length,
      notes: strange.length === 0 ? [] : [{ code: 'vise-not-of-this-shop', facts: { bars: strange } }],
    }
  })
}

const fieldsOf = <Kept extends { readonly saw: unknown }>({ saw: _saw, ...fields }: Kept): Omit<Kept, 'saw'> => fields
const idsOf = (records: readonly { readonly id: string }[]): readonly string[] => records.map(({ id }) => id)

const changesOf = <Kind extends 'slot' | 'mates' | 'bar'>(kind: Kind, records: readonly (FieldsOf[Kind] & { readonly id: string })[], known: ReadonlySet<string>, by: Maker) =>
  records.filter(({ id }) => !known.has(id)).map(({ id, ...fields }) => firstChange(kind, id, fields as unknown as FieldsOf[Kind], by))
