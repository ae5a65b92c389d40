import type { CheckMethod } from '#model/check-methods.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { newForm } from '#web/inspect/draft/new-draft.ts'
import { sayHow, sayMethod } from '#web/inspect/say-check.ts'
import { Choice } from '#web/parts/choice.tsx'

const offered: readonly Exclude<CheckMethod, 'stated'>[] = ['compare', 'micrometer', 'turn-over', 'rock']

/** One of the four ways. What was typed stays; instrument and plate become those this way is usually done with. */
export function MethodPanel() {
  const { draft: { id, form }, shop, terms } = useCheckDesk()
  const take = (method: CheckMethod) => {
    const { instrumentId, plateId, blocksId } = newForm(method, form.unit, shop)
    const same = (form.method === 'compare' || form.method === 'turn-over') && (method === 'compare' || method === 'turn-over')
    changeForm(id, same ? { method } : { method, instrumentId, plateId, blocksId })
  }
  return (
    <>
      <Choice label="Method" quiet value={form.method} options={offered.map((method) => ({ value: method as CheckMethod, label: sayMethod(method) }))} onChange={take} />
      {form.method === 'stated' ? null : <p className="setup-lines">{sayHow(form.method, terms)}</p>}
    </>
  )
}
