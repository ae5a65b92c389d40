import type { Change } from '#model/change.ts'
import { firstChange } from '#model/record-fields.ts'
import { recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { readText } from '#tasks/rack/read-text.ts'

export type SlotsNamed = {
  /** The slot of a name, made where there is none; null for an empty name. Large and small letters are alike. @throws Refusal `value-not-allowed` */
  readonly idOf: (name: string) => string | null
  /** What is to be written for the slots made so far. */
  readonly made: readonly Change[]
}

/** Slots by the names people call them. Of two with one name the first by id is taken. */
export async function slotsNamed(store: Store, by: Maker): Promise<SlotsNamed> {
  const ids = new Map<string, string>()
  for (const { id, name } of await recordsOf(store, 'slot')) if (!ids.has(keyOf(name))) ids.set(keyOf(name), id)
  const made: Change[] = []
  const idOf = (name: string): string | null => {
    const key = keyOf(name)
    if (key === '') return null
    if (!ids.has(key)) {
      const id = by.newId()
      ids.set(key, id)
      made.push(firstChange('slot', id, { code: by.newCode(), name: readText('slot', 'name', name, 'slot') }, by))
    }
    return ids.get(key)!
  }
  return { idOf, made }
}

const keyOf = (name: string): string => name.trim().toUpperCase()
