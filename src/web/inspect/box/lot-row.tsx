import type { DraftRecord } from '#model/check-draft.ts'
import type { Finding } from '#model/finding.ts'
import { sayFinding } from '#words/say-finding.ts'
import { codeOf } from '#web/inspect/draft/new-bars.ts'
import type { BoxOutcome } from '#web/inspect/box/box-outcome.ts'
import type { NamesToWrite } from '#web/inspect/box/names-to-write.ts'
import { typeReading } from '#web/inspect/draft/draft-edits.ts'
import { TextField } from '#web/parts/text-field.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { capital } from '#words/wording.ts'
import { calledSize } from '#words/say-bar.ts'
import { useUnits } from '#web/units.ts'

type Props = {
  readonly draft: DraftRecord
  readonly outcome: BoxOutcome
  readonly names: NamesToWrite
  readonly marked: { readonly [bar: string]: string }
  readonly nameOf: (bar: string) => string
  readonly bars: readonly string[]
  readonly because: readonly Finding[]
}

/** Bars that go one way together: the reason, and for each what is to be written on it. Scrap has nothing to write. */
export function LotRow({ draft, outcome, names, marked, nameOf, bars, because }: Props) {
  const units = useUnits(), heights = outcome.bars.filter(({ id }) => bars.includes(id)).flatMap(({ heightsMm }) => heightsMm)
  return (
    <li className="lot">
      <h3 className="name-text">{capital(bars.map(nameOf).join(' and '))}, {calledSize(heights.reduce((sum, mm) => sum + mm, 0) / heights.length, units)}</h3>
      <p className="small">{because.map((finding) => capital(sayFinding(finding, units, nameOf))).join(' ')}</p>
      {bars.filter((bar) => bar in names).map((bar) => (
        <div key={bar} className="to-write">
          <TextField label={`write on ${nameOf(bar)}`} value={draft.typed[`name/${bar}`] ?? names[bar]!} onChange={(text) => typeReading(draft.id, `name/${bar}`, text)} maxLength={40} note={`code ${codeOf(bar)}`} />
          <Toggles label="On the bar" more={nameOf(bar)} chosen={marked[bar] ? ['marked'] : []} onChange={(chosen) => typeReading(draft.id, `marked/${bar}`, chosen.length > 0 ? 'yes' : '')} options={[{ value: 'marked', label: 'marked' }]} />
        </div>
      ))}
    </li>
  )
}
