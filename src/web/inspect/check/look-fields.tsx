import { sayRefusal } from '#words/say-refusal.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeLook, noLook } from '#web/inspect/draft/draft-edits.ts'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'

/** Does each bar lie still? Pressed with a finger at the ends and in the middle, and a feeler tried under it. */
export function LookFields() {
  const { draft: { id, form, looks }, read, nameOf, units } = useCheckDesk()
  return (
    <div className="insp-looks">
      <p>Lay the bar on the plate and press each end and the middle with a finger. Then try the thinnest feeler under the middle and under the ends.</p>
      {form.bars.map(({ bar }) => {
        const look = looks[bar] ?? noLook, wrong = read.wrong[`looks.${bar}.feeler`]
        return (
          <section key={bar} className="insp-look" aria-label={nameOf(bar)}>
            <Choice
              label={nameOf(bar)} value={look.rock} onChange={(rock) => changeLook(id, bar, { rock })}
              options={[{ value: 'none', label: 'lies still' }, { value: 'rocks', label: 'rocks' }, { value: 'not tried', label: 'not tried' }]}
            />
            <NumberField label="feeler under it" more={`, ${nameOf(bar)}`} ifEmpty="none" value={look.feeler} error={wrong ? sayRefusal(wrong, units) : null} onChange={(feeler) => changeLook(id, bar, { feeler })} />
          </section>
        )
      })}
    </div>
  )
}
