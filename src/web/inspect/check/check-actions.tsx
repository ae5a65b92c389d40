import { useEffect, useState } from 'react'
import { checkFromDraft } from '#engine/inspect/read-draft.ts'
import { canonical } from '#model/canonical.ts'
import { Refusal } from '#model/refusal.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { dropDraft } from '#web/inspect/draft/draft-edits.ts'
import { bringNewBars } from '#web/inspect/draft/new-bars.ts'
import { newId } from '#web/new-id.ts'
import { Link } from '#web/parts/link.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { go } from '#web/router.ts'
import { writeDeed } from '#web/write.ts'

/** Keep it, put it on paper, or leave it: a half-done check waits for whoever goes on. */
export function CheckActions() {
  const { draft, read, facts, units, nameOf, open } = useCheckDesk(), { form } = draft
  const typed = canonical([form.zero, form.closing, form.temperature, form.bars, read.answer === null, read.cells.map(({ text, asks }) => [text, asks?.code ?? ''])])
  const [refused, setRefused] = useState<{ readonly why: Refusal; readonly typed: string } | null>(null)
  const keep = () => {
    try {
      const asked = read.cells.find(({ asks }) => asks !== null)
      if (asked) throw new Refusal('reading-asked-about', { field: 'reading', given: asked.text, cell: asked.cell.key, bar: asked.cell.bar, station: asked.cell.station })
      const body = checkFromDraft(draft, facts), checkId = newId()
      const { edits, events } = bringNewBars(draft)
      writeDeed({ checks: [{ ...body, id: checkId }], edits: [...edits, { kind: 'draft', record: draft.id, fields: { state: 'kept', checkId } }], events })
      go(`/inspect/done/${checkId}`, { replace: true })
      scrollTo({ top: 0, behavior: 'instant' })
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      setRefused({ why: error, typed })
      const { field } = error.facts
      if (typeof field === 'string' && field.startsWith('bars')) open('bars')
      toField(error)
    }
  }
  const drop = () => { dropDraft(draft.id, 'Half-done check'); go('/inspect') }
  useEnterToKeep()
  return (
    <div className="setup-actions insp-actions">
      {refused?.typed === typed ? <div className="insp-refused"><StatusLine danger>{sayRefusal(refused.why, units, nameOf)}</StatusLine></div> : null}
      <button type="button" className="action main" id="keep-check" onClick={keep}>Keep this check</button>
      <Link to={`/inspect/check/${draft.id}/sheet`} className="action">On paper</Link>
      <button type="button" className="action" onClick={drop}>Drop it</button>
    </div>
  )
}

/** Takes the person to what is missing: the reading, or the field by its name. */
function toField({ facts: { cell, field } }: Refusal): void {
  const found = typeof cell === 'string' ? document.querySelector<HTMLElement>(`[data-cell="${CSS.escape(cell)}"] input`)
    : field === 'zero' ? document.querySelector<HTMLElement>('.insp-head-field input') : null
  found?.focus()
}

/** Enter in the last field goes on to the button that keeps the check. Heard after the field itself, which has then let go. */
function useEnterToKeep(): void {
  useEffect(() => {
    const onward = ({ key, target }: KeyboardEvent) => {
      if (key === 'Enter' && target instanceof HTMLInputElement && target.closest('.setup-form') && document.activeElement === document.body) document.getElementById('keep-check')?.focus()
    }
    addEventListener('keydown', onward)
    return () => removeEventListener('keydown', onward)
  }, [])
}
