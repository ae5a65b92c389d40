import { Refusal } from '#model/refusal.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'

/**
 * The vise of a name or id, large or small letters. Where nothing is said: the only one, else the one set up last.
 *
 * @throws Refusal `no-vise`, `unknown-vise`, `which-vise` with the names there are
 */
export function viseNamed(store: Store, nameOrId: string | null): Promise<ViseRecord> {
  return atOneMoment(store, async (tx) => {
    const vises = (await recordsOf(tx, 'vise')).filter((vise) => !vise.retired)
    const names = vises.map((vise) => vise.name)
    if (vises.length === 0) throw new Refusal('no-vise')
    if (nameOrId !== null) {
      const wanted = nameOrId.trim().toLowerCase()
      const found = vises.filter((vise) => vise.id === nameOrId.trim() || vise.name.toLowerCase() === wanted)
      if (found.length > 1) throw new Refusal('which-vise', { needed: found.map((vise) => vise.id) })
      if (!found[0]) throw new Refusal('unknown-vise', { given: nameOrId.slice(0, 60), needed: names })
      return found[0]
    }
    if (vises.length === 1) return vises[0]!
    const lately = (await recordsOf(tx, 'setup')).filter((setup) => vises.some((vise) => vise.id === setup.viseId))
      .sort((a, b) => (a.usedAtIso < b.usedAtIso ? 1 : -1))[0]
    const last = vises.find((vise) => vise.id === lately?.viseId)
    if (!last) throw new Refusal('which-vise', { needed: names })
    return last
  })
}
