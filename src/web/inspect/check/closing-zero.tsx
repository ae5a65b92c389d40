import { sayRefusal } from '#words/say-refusal.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { NumberField } from '#web/parts/number-field.tsx'

/** What the indicator shows on the zero again at the end: the last thing that is read. */
export function ClosingZero() {
  const { draft: { id, form }, read, units } = useCheckDesk(), wrong = read.wrong['closing']
  if (form.bars.length === 0 || (form.method !== 'compare' && form.method !== 'turn-over')) return null
  return (
    <div className="insp-closing">
      <NumberField
        label={`zero again, ${read.bareUnit}`} more="at the end" ifEmpty="not read" value={form.closing} error={wrong ? sayRefusal(wrong, units) : null}
        onChange={(closing) => changeForm(id, { closing })}
      />
      <p className="small">Back on the zero after the last station: what it is off by has crept in meanwhile.</p>
    </div>
  )
}
