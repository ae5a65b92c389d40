import { useState } from 'react'
import { Link } from '#web/parts/link.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { exportRack } from '#web/rack/export-rack.ts'
import { type RackGroup, worstTrust } from '#web/rack/rack-bars.ts'

/** The rack as a whole: how many bars stand in it, in what state, and the ways in and out. */
export function RackSummary({ groups }: { readonly groups: readonly RackGroup[] }) {
  const wide = matchMedia('(min-width: 760px)').matches
  const [said, setSaid] = useState<string | null>(null)
  const here = groups.filter((group) => worstTrust(group) !== 'gone'), bars = here.flatMap((group) => group.bars)
  const overdue = bars.filter((bar) => bar.overdue).length
  const figures: readonly (readonly [number, string])[] = [
    [here.filter((group) => group.bars.length > 1).length, 'with mates'],
    [bars.filter(({ trust }) => trust === 'look first').length, 'look first'],
    [bars.filter(({ standing }) => standing === 'marked').length, 'marked only'],
    [bars.filter(({ elsewhere }) => elsewhere !== null).length, 'not in slot'],
  ]
  return (
    <div className="side-page">
      <h1 className="big-line"><strong className="big">{bars.length}</strong> bars</h1>
      <dl className="figures">{figures.map(([count, name]) => <div key={name}><dt>{name}</dt><dd>{count}</dd></div>)}</dl>
      {overdue > 0 ? <p><span className="mark" aria-hidden="true">!</span> <Link to="/rack/out">{overdue === 1 ? '1 bar is overdue' : `${overdue} bars are overdue`}</Link></p> : null}
      <p>Tap a row to see its bars, to say that one was knocked or looked over, or to change it.</p>
      <details className="sum rack-more" open={wide}>
        <summary>More of the rack</summary>
        <nav className="rack-ways" aria-label="More of the rack">
          <Link to="/rack/labels" className="press">Labels</Link>
          <Link to="/rack/regrind" className="press">Regrind</Link>
          <Link to="/rack/care" className="press">Care card</Link>
          <Link to="/rack/import" className="press">Bring in CSV</Link>
          <button type="button" className="press" onClick={() => void exportRack().then(setSaid)}>Save as CSV</button>
        </nav>
      </details>
      {said ? <StatusLine danger>{said}</StatusLine> : null}
      <div className="side-actions">
        <Link to="/rack/new" className="action main">Add bars</Link>
        <Link to="/rack/missing" className="action">What is missing</Link>
        <Link to="/rack/out" className="action">Who has what</Link>
      </div>
    </div>
  )
}
