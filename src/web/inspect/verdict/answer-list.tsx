import type { Checked, CheckedBar } from '#engine/inspect/checked.ts'
import type { UseVerdict } from '#engine/inspect/uses-proved.ts'
import { judgedOf } from '#engine/inspect/judged.ts'
import { sayFinding } from '#words/say-finding.ts'
import { verdictWords } from '#words/verdict-words.ts'
import type { NameOf } from '#words/wording.ts'
import { sayHeightOf, sayUm, shapeFigures } from '#web/inspect/verdict/say-verdict.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { useUnits } from '#web/units.ts'

/** The second and third depth: use by use, bar by bar, what to look at again, and the sums. */
export function AnswerList({ answer, nameOf }: { readonly answer: Checked | null; readonly nameOf: NameOf }) {
  const units = useUnits()
  if (answer === null) return null
  const { uses } = judgedOf(answer)
  return (
    <section className="setup-list" aria-label="More of the answer">
      {answer.findings.length > 0 ? <ul className="setup-points" aria-label="Look at again">{answer.findings.map((finding, at) => <li key={at}>{sayFinding(finding, units, nameOf)}</li>)}</ul> : null}
      {uses.length > 0 ? <><h2 className="setup-rule">{answer.pair ? 'Both bars and their difference, for each use' : 'For each use'}</h2><UseRows uses={uses} /></> : null}
      {answer.method === 'rock' ? null : <><h2 className="setup-rule">Bar by bar</h2>{answer.bars.map((bar) => <BarRow key={bar.id} bar={bar} name={nameOf(bar.id)} />)}</>}
      {answer.sum.length > 0 ? <div className="setup-sums"><ShowSum sums={answer.sum} /></div> : null}
    </section>
  )
}

function UseRows({ uses }: { readonly uses: readonly UseVerdict[] }) {
  const units = useUnits()
  return (
    <ul aria-label="Uses">
      {uses.toReversed().map(({ use, limitUm, verdict }) => (
        <li key={use} className="insp-use" data-verdict={verdict}>
          <span className="mark" aria-hidden="true">{verdictWords[verdict].mark}</span><span>{use}</span><span className="small">within {sayUm(limitUm, units)} µm</span><strong>{verdictWords[verdict].word}</strong>
        </li>
      ))}
    </ul>
  )
}

function BarRow({ bar, name }: { readonly bar: CheckedBar; readonly name: string }) {
  const units = useUnits(), proved = bar.provedToUm === null ? [] : [['proved to', sayUm(bar.provedToUm, units, { up: true })] as const]
  return (
    <section className="insp-bar" aria-label={name}>
      <h3 className="name-text">{name}</h3>
      <p className="insp-bar-height">{sayHeightOf(bar, units)}</p>
      <dl className="facts">{[...shapeFigures(bar, units), ...proved].map(([label, value]) => <div key={label}><dt>{label}</dt><dd>{value} µm</dd></div>)}</dl>
    </section>
  )
}
