import type { RecordKind } from '#model/change.ts'
import { type Fact, Refusal } from '#model/refusal.ts'
import type { JawSet } from '#model/vise-record.ts'
import type { Store } from '#store/store.ts'
import { bearersOf, knownOf, type Standing } from '#store/records.ts'

type KindOf = { readonly kind: RecordKind }
type Reference = KindOf & { readonly field: string; readonly id: string }

/**
 * Refuses records, just written, that name something nobody knows, or a code that another bar or slot bears.
 *
 * @throws Refusal `unknown-record`, `jaw-set-not-known`, `code-used-twice`
 */
export async function mindReferences(store: Store, records: readonly (Standing & KindOf)[]): Promise<void> {
  const references = records.flatMap(referencesOf)
  for (const kind of new Set(references.map((one) => one.kind))) {
    const ours = references.filter((one) => one.kind === kind)
    const known = await knownOf(store, kind, ours.map((one) => one.id))
    const lost = ours.find((one) => !known.has(one.id))
    if (lost) throw new Refusal('unknown-record', { field: lost.field, kind, given: lost.id })
  }
  for (const record of records) {
    if (record.kind !== 'vise') continue
    const sets = record.values['jawSets'] as readonly JawSet[], fitted = record.values['fittedJawSetId']!
    if (!sets.some((set) => set.id === fitted)) throw new Refusal('jaw-set-not-known', { field: 'fittedJawSetId', given: fitted, needed: sets.map((set) => set.name) })
  }
  await mindCodes(store, records.filter((record) => record.kind === 'bar' || record.kind === 'slot'))
}

function referencesOf({ kind, values }: Standing & KindOf): Reference[] {
  const to = (other: RecordKind, field: string, id: Fact | undefined): Reference[] => (typeof id === 'string' ? [{ kind: other, field, id }] : [])
  if (kind === 'bar') {
    const where = values['where'] as { readonly viseId?: string }
    return [...to('mates', 'matesId', values['matesId']), ...to('slot', 'slotId', values['slotId']), ...to('vise', 'where.viseId', where.viseId)]
  }
  if (kind === 'outcome') return to('setup', 'setupId', values['setupId'])
  if (kind !== 'setup') return []
  const bars = values['bars'] as readonly string[]
  return [...to('vise', 'viseId', values['viseId']), ...to('part', 'partId', values['partId']), ...bars.flatMap((id, at) => to('bar', `bars[${at}]`, id))]
}

async function mindCodes(store: Store, records: readonly Standing[]): Promise<void> {
  const borne = new Map<string, string>()
  for (const { kind, id, code } of await bearersOf(store, records.map((record) => record.values['code'] as string))) {
    const bearer = `${kind} ${id}`, other = borne.get(code)
    if (other !== undefined && other !== bearer) throw new Refusal('code-used-twice', { field: 'code', given: code })
    borne.set(code, bearer)
  }
}
