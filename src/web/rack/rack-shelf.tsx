import type { RackGroup } from '#web/rack/rack-bars.ts'

export function RackShelf({ groups }: { readonly groups: readonly RackGroup[] }) {
  return <p hidden>{groups.length}</p>
}
