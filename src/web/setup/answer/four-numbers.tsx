import { useDesk } from '#web/setup/desk.ts'
import { fourNumbers } from '#web/setup/answer/say-numbers.ts'
import { isRefused } from '#web/setup/view/view-from.ts'

/** The second depth: grip, above the jaws, clear of the jaws and match, in the person's units and below in the other. */
export function FourNumbers() {
  const { view: { answered }, units } = useDesk()
  const shown = answered?.shown
  if (!shown || isRefused(shown)) return null
  return (
    <dl className="figures setup-figures">
      {fourNumbers(shown, units).map(({ name, own, other }) => (
        <div key={name}><dt>{name}{other === '' ? null : <span className="setup-other">{other}</span>}</dt><dd>{own}</dd></div>
      ))}
    </dl>
  )
}
