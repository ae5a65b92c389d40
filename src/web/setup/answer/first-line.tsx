import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { openSetup } from '#web/setup/saved/open-setup.ts'
import { setupLines } from '#web/setup/saved/say-setup.ts'
import { sameAgain } from '#web/setup/state/same-again.ts'

/** The first line for a hand with planned jobs: the same as last time on this vise, the last five. */
export function SameAsLastTime() {
  const { shop, bench, state, dispatch, units } = useDesk()
  const last = sameAgain(shop.setups, bench.vise.id)
  if (last.length === 0) return null
  return (
    <section>
      <h2 className="setup-rule">Same as last time</h2>
      <ul>
        {last.map((setup) => {
          const [title, more] = setupLines(setup, bench, units)
          return (
            <li key={setup.id}>
              <button
                type="button" className="setup-row setup-row--last"
                onClick={() => { dispatch({ do: 'put', state: openSetup(setup) }); offerUndo(`${title} opened.`, () => dispatch({ do: 'put', state })) }}
              >
                <strong className="name-text">{title}</strong><span className="name-text">{more}</span>
              </button>
            </li>
          )
        })}
      </ul>
    </section>
  )
}
