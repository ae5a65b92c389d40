import { useState } from 'react'
import type { ViseMeasured } from '#model/vise-measured.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { Choice } from '#web/parts/choice.tsx'
import { Link } from '#web/parts/link.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useTerms } from '#web/units.ts'
import { FourReadings } from '#web/shop/vise-measured/four-readings.tsx'
import { KnownOfVise } from '#web/shop/vise-measured/known-of-vise.tsx'
import { withFound } from '#web/shop/vise-measured/measured-texts.ts'
import { ShortWays } from '#web/shop/vise-measured/short-ways.tsx'
import { writeDeed } from '#web/write.ts'
import '#web/styles/beside.css'

/** What is known of a vise, and the short ways to find it out: no surface plate is needed. */
export function ViseMeasuredScreen({ vise }: { readonly vise: ViseRecord }) {
  const { vise: word, indicator } = useTerms(), [way, setWay] = useState<'four' | 'one'>('four')
  const keep = (found: Partial<ViseMeasured>, said: string) => {
    const put = (measured: ViseMeasured | null) => { writeDeed({ edits: [{ kind: 'vise', record: vise.id, fields: { measured } }] }) }
    put(withFound(vise.measured, found))
    offerUndo(`${vise.name}: ${said} kept.`, () => put(vise.measured))
  }
  return (
    <div className="page">
      <Link to={`/shop/vise/${vise.id}`} className="back name-text">{vise.name}</Link>
      <h1 className="name-text">Measure {vise.name}</h1>
      <p>The smallest errors of a setup are those of the bars. These of the {word} come before them, and each takes a minute with the {indicator}.</p>
      <KnownOfVise measured={vise.measured} />
      <Choice label="Way" value={way} onChange={setWay} options={[{ value: 'four', label: 'four readings on a ground block' }, { value: 'one', label: 'one thing at a time' }]} />
      {way === 'four' ? <FourReadings onKeep={keep} /> : <ShortWays onKeep={keep} />}
    </div>
  )
}
