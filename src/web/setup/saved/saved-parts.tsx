import { useDesk } from '#web/setup/desk.ts'
import { openPart } from '#web/setup/saved/open-setup.ts'
import { SavedRow } from '#web/setup/saved/saved-row.tsx'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import type { SetupState } from '#web/setup/state/setup-state.ts'

type Props = { readonly find: string; readonly open: (state: SetupState, said: string) => void }

/** Parts that come back, by name; opened, they are asked of the vise looked at. */
export function SavedParts({ find, open }: Props) {
  const { shop, bench, state: { viseId } } = useDesk(), vise = viseId ?? bench.vise.id
  const found = shop.parts.filter(({ name, retired }) => !retired && name.toLowerCase().includes(find.trim().toLowerCase())).toSorted((a, b) => (a.name < b.name ? -1 : 1))
  if (found.length === 0) return null
  return (
    <section>
      <h3>Parts</h3>
      <ul>
        {found.map((part) => (
          <SavedRow
            key={part.id} kind="part" record={part} name={part.name} title={part.name} more={sayPart(part.form)}
            onOpen={() => open(openPart(part, vise), `${part.name} opened.`)}
            onCopy={() => open({ ...openPart(part, vise), partId: null, title: `${part.name}, copy`.slice(0, 80) }, `${part.name} copied.`)}
          />
        ))}
      </ul>
    </section>
  )
}
