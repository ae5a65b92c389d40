import type { Row } from '#engine/setup/row/row.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import { capital } from '#words/wording.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import type { RowLine } from '#web/setup/row/row-lines.tsx'
import { useTerms, useUnits } from '#web/units.ts'

type Props = { readonly lines: readonly RowLine[]; readonly answer: Row; readonly oneZ: boolean }

/** A line for each vise: its pair and slot, the Z it adds, and how the setup comes out there. */
export function RowTable({ lines, answer, oneZ }: Props) {
  const units = useUnits(), { vise: word } = useTerms()
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      <div className="beside-scroll" tabIndex={0} role="group" aria-label="The row, line by line">
        <table className="beside-table">
          <thead><tr><th scope="col">{capital(word)}</th><th scope="col">Pair</th><th scope="col">Slot</th><th scope="col">Z, {units.length}</th><th scope="col">Comes out as</th></tr></thead>
          <tbody>
            {lines.map(({ vise, label, pair, slot, offset, comesOut }) => (
              <tr key={vise.id}>
                <th scope="row" className="name-text">{vise.name}</th>
                <td><strong className="name-text">{label}</strong><br /><span className="small">{wordLength(pair.heightMm, units, units.length === 'mm' ? { decimals: 4 } : { fractions: false })}, match {wordNumber(pair.matchUm, units.decimalMark, null, 1)} µm</span></td>
                <td>{slot}</td><td><strong>{offset}</strong></td><td>{sayComesOut(comesOut)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p><strong>Tops within {wordNumber(answer.spreadUm, units.decimalMark, null, 1)} µm</strong>{oneZ ? answer.unique ? ': no other way is as close.' : ': another way is as close.' : answer.worstMatchUm === null || answer.worstMatchUm === undefined ? '.' : `, each with its own Z; the worst pair matches to ${wordNumber(answer.worstMatchUm, units.decimalMark, null, 1)} µm.`}</p>
    </section>
  )

  function sayComesOut(of: RowLine['comesOut']): string {
    if (of === null) return '–'
    if ('choice' in of) return `grip ${wordLength(of.choice.gripMm, units)}, ${wordLength(of.choice.stickOutMm, units)} above the jaws`
    return 'refused' in of ? sayRefusal(of.refused, units) : `Does not serve. ${of.why.map((finding) => sayFinding(finding, units)).join(' ')}`
  }
}
