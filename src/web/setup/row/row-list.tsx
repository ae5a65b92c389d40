import type { Row } from '#engine/setup/row/row.ts'
import { wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { calledSize } from '#words/say-bar.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { finely, type RowLine, serves } from '#web/setup/row/row-lines.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly lines: readonly RowLine[]; readonly answer: Row; readonly oneZ: boolean }

/** A line for each vise: its pair and slot, the Z it adds, and how the setup comes out there. */
export function RowList({ lines, answer, oneZ }: Props) {
  const units = useUnits(), um = (value: number) => `${wordNumber(value, units.decimalMark, null, 1)} µm`
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      <ul className="row-lines">
        {lines.map(({ vise, label, pair, slot, offset, comesOut }) => (
          <li key={vise.id}>
            <p className="row-pair name-text"><strong>{vise.name}</strong><strong className="row-label">{label}</strong></p>
            <p className="slot-box"><strong className="name-text">{slot}</strong><span>slot</span></p>
            <p className="row-z"><strong>{offset}</strong><span className="small">Z, {units.length}</span></p>
            <p className={serves(comesOut) ? 'row-more' : 'row-more beside-warn'}>
              {finely(pair.heightMm, units)}, match {um(pair.matchUm)}{pair.state}.{pair.marks === '' ? '' : ` Bars${pair.marks}.`} {sayComesOut(comesOut, units)}
            </p>
          </li>
        ))}
      </ul>
      <p><strong>Tops within {um(answer.spreadUm)}</strong>{saySpread(answer, oneZ, um)}</p>
    </section>
  )
}

function sayComesOut(of: RowLine['comesOut'], units: Units): string {
  if (of === null) return ''
  if ('choice' in of) return `Grip ${calledSize(of.choice.gripMm, units)}, ${calledSize(of.choice.stickOutMm, units)} above the jaws.`
  return 'refused' in of ? sayRefusal(of.refused, units) : `Does not serve here. ${of.why.map((finding) => sayFinding(finding, units)).join(' ')}`
}

function saySpread({ unique, worstMatchUm }: Row, oneZ: boolean, um: (value: number) => string): string {
  if (oneZ) return unique ? ': no other way is as close.' : ': another way is as close.'
  return typeof worstMatchUm === 'number' ? `, each with its own Z; the worst pair matches to ${um(worstMatchUm)}.` : ', each with its own Z.'
}
