import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { sayPass } from '#web/inspect/check/plate-data.ts'
import { sayEcho } from '#web/inspect/check/say-echo.ts'
import { typeReading } from '#web/inspect/draft/draft-edits.ts'

/**
 * One line under the drawing, always there: the first reading that gives reason to ask, with one tap to put it right or
 * keep it; else what the reading in hand was taken for, in both systems.
 */
export function ReadingLine() {
  const { draft: { id, form }, read, units, nameOf, current, keepAsRead } = useCheckDesk()
  const asked = read.cells.find(({ asks }) => asks !== null)
  const where = ({ bar, station, ...cell }: (typeof read.cells)[number]['cell']) => [nameOf(bar), `station ${station + 1}`, sayPass(cell, form)].filter((part) => part !== '').join(', ')
  if (asked?.asks) {
    const { asks, cell, text } = asked, meant = asks.facts['meant']
    return (
      <div className="insp-line insp-line--asks" role="alert">
        <p><strong>{where(cell)}:</strong> {sayFinding(asks, units, nameOf)}</p>
        {typeof meant === 'string' ? <button type="button" className="action main" onClick={() => typeReading(id, cell.key, meant)}>Meant {meant}</button> : null}
        <button type="button" className="action" onClick={() => keepAsRead(asked)}>Keep {text}</button>
      </div>
    )
  }
  const at = read.cells.findIndex(({ cell }) => cell.key === current), one = read.cells[at]
  const shown = one && one.text === '' && at > 0 ? read.cells[at - 1]! : one
  const wrong = read.cells.find((cell) => cell.wrong !== null && cell.cell.key !== current)
  if (wrong?.wrong) return <p className="insp-line insp-line--wrong" role="alert"><strong>{where(wrong.cell)}:</strong> {sayRefusal(wrong.wrong, units, nameOf)}</p>
  if (read.cells.length === 0) return null
  const echo = shown && sayEcho(shown, units)
  return <p className="insp-line">{echo ? <><strong>{where(shown.cell)}:</strong> {shown.text.trim()} is {echo}</> : one ? `Next: ${where(one.cell)}.` : null}</p>
}
