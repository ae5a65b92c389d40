import type { Holder } from '#engine/rack/signing.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** Someone or something that can take bars at one tap. */
export type KnownHolder = { readonly key: string; readonly name: string; readonly holder: Holder }

/** Who may take bars: whoever works at this device first, then the other initials, the vises and the machines. */
export function knownHolders({ people, vises, machines, bars }: Pick<ShopSnapshot, 'people' | 'vises' | 'machines' | 'bars'>, personId: string | null): readonly KnownHolder[] {
  const named = new Set([...machines.filter(({ retired }) => !retired).map(({ name }) => name), ...bars.flatMap(({ where }) => (where.at === 'out' && where.to === 'machine' ? [where.who] : []))])
  return [
    ...people.toSorted((a, b) => Number(b.id === personId) - Number(a.id === personId)).map(({ id, initials }) => ({ key: id, name: initials, holder: { to: 'person' as const, who: initials } })),
    ...vises.filter(({ retired }) => !retired).map(({ id, name }) => ({ key: id, name, holder: { to: 'vise' as const, viseId: id, called: name } })),
    ...[...named].sort().map((who) => ({ key: `machine ${who}`, name: who, holder: { to: 'machine' as const, who } })),
  ]
}
