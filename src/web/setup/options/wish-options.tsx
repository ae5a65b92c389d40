import { wordNumber } from '#model/length.ts'
import { uses } from '#model/wishes.ts'
import { Choice } from '#web/parts/choice.tsx'
import { useDesk } from '#web/setup/desk.ts'

/** What the pair is for: it sets how alike two bars must be. The numbers are under the sheet. */
export function WishOptions() {
  const { state: { form }, dispatch, view, units } = useDesk(), wishes = view.answered?.question.wishes
  return (
    <>
      <Choice quiet label="Use" value={form.use} options={uses.map((use) => ({ value: use, label: use }))} onChange={(use) => dispatch({ do: 'change form', fields: { use } })} />
      {wishes ? <p className="setup-lines">For {form.use} two bars may differ by {wordNumber(wishes.matchUm, units.decimalMark)} µm: the shop’s own limit, to be changed under Shop.</p> : null}
    </>
  )
}
