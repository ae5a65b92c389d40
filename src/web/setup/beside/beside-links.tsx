import { Link } from '#web/parts/link.tsx'
import { useTerms } from '#web/units.ts'
import '#web/styles/beside.css'

/** The way from the setup to what stands beside it. */
export function BesideLinks() {
  const { vise } = useTerms()
  const links: readonly (readonly [to: string, name: string, what: string])[] = [
    ['down', 'Is it down?', 'The paper test: touch the strips that pull out.'],
    ['row', `Row of ${vise}s`, 'Which pair in which, and the Z of each.'],
    ['day', 'One pair for a part, pull list of the day', 'What to take out of the rack, with the fewest changes.'],
    ['block', 'Six-side block', 'Face after face, one pair for the long ones.'],
    ['fill', 'Fillers', 'Which bars of the rack fill a gap.'],
    ['table', 'On the table', 'Bars under straps, on drill press or mill.'],
    ['chuck', 'On the magnetic chuck', 'Blocked in by bars that lie flat.'],
  ]
  return (
    <section aria-label="Beside this setup">
      <h2 className="setup-rule">Beside this setup</h2>
      <nav className="beside-links" aria-label="Beside this setup">
        {links.map(([to, name, what]) => <Link key={to} to={`/setup/${to}`}><strong>{name}</strong><span>{what}</span></Link>)}
      </nav>
    </section>
  )
}
