import type { BarRecord } from '#model/bar-record.ts'
import { Refusal } from '#model/refusal.ts'
import { bearersOf, knownOf, recordOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'

/** The bar of an id or a label's code, large or small letters. @throws Refusal `bar-not-known` */
export async function barNamed(store: Store, idOrCode: string): Promise<BarRecord> {
  const text = idOrCode.trim()
  if ((await knownOf(store, 'bar', [text])).has(text)) return recordOf(store, 'bar', text)
  const borne = (await bearersOf(store, [text.toUpperCase()])).find((bearer) => bearer.kind === 'bar')
  if (!borne) throw new Refusal('bar-not-known', { field: 'bar', given: text.slice(0, 60) })
  return recordOf(store, 'bar', borne.id)
}
