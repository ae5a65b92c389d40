import { Refusal } from '#model/refusal.ts'

/** @param listedAs  the key of the list in the case @throws Refusal `bar-id-twice` */
export function refuseIdTwice(list: readonly { readonly id: string }[], listedAs: string): void {
  const first = new Map<string, number>()
  list.forEach(({ id }, k) => {
    const before = first.get(id)
    if (before !== undefined) throw new Refusal('bar-id-twice', { field: `${listedAs}[${k}].id`, given: id, needed: 'another id', first: `${listedAs}[${before}].id` })
    first.set(id, k)
  })
}
