import type { SetupRecord } from '#model/setup-record.ts'
import { useDesk } from '#web/setup/desk.ts'
import { copySetup, openSetup } from '#web/setup/saved/open-setup.ts'
import { SavedRow } from '#web/setup/saved/saved-row.tsx'
import { setupLines } from '#web/setup/saved/say-setup.ts'
import type { SetupState } from '#web/setup/state/setup-state.ts'

type Props = { readonly find: string; readonly open: (state: SetupState, said: string) => void }

const mostRows = 50

/** Setups that were kept, latest first. */
export function SavedSetups({ find, open }: Props) {
  const { shop, bench, units } = useDesk()
  const found = shop.setups.filter((setup) => !setup.retired && matches(setup, find)).toSorted((a, b) => (a.usedAtIso < b.usedAtIso ? 1 : -1))
  if (found.length === 0) return find === '' ? <p>No setup was kept yet.</p> : <p>No setup is called so.</p>
  return (
    <section>
      <h3>Setups</h3>
      <ul>
        {found.slice(0, mostRows).map((setup) => {
          const [title, more] = setupLines(setup, bench, units), vise = shop.vises.find(({ id }) => id === setup.viseId)?.name ?? ''
          return (
            <SavedRow
              key={setup.id} kind="setup" record={setup} name={setup.title} title={title} more={[vise, more].filter((text) => text !== '').join(' · ')}
              onOpen={() => open(openSetup(setup), `${title} opened.`)} onCopy={() => open(copySetup(setup), `${title} copied.`)}
            />
          )
        })}
      </ul>
      {found.length > mostRows ? <p className="small">{found.length - mostRows} older ones: find them by their title.</p> : null}
    </section>
  )
}

function matches({ title, operation }: SetupRecord, find: string): boolean {
  return `${title} ${operation}`.toLowerCase().includes(find.trim().toLowerCase())
}
