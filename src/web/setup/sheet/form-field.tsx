import { sayRefusal } from '#words/say-refusal.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import type { SetupField } from '#web/setup/sheet/setup-fields.ts'
import { type Placed, spotStyle } from '#web/setup/sheet/spot-style.ts'
import { textAt } from '#web/setup/state/field-path.ts'
import { textRefusal } from '#web/setup/state/readable.ts'
import { isHalfTyped } from '#web/setup/state/setup-state.ts'

/** One typed number of the form, in the list or at its place on the drawing. While it is half typed it is marked and nothing is said. */
export function FormField({ field, placed }: { readonly field: SetupField; readonly placed?: Placed | undefined }) {
  const desk = useDesk(), { state, dispatch, units } = desk, { path } = field
  const typing = state.typing?.path === path, foreign = state.form.unit === units.length ? '' : state.form.unit === 'in' ? ', in inches' : ', in millimetres'
  return (
    <div
      data-path={path} className={placed ? 'setup-field setup-spot' : 'setup-field'} style={placed && spotStyle(placed)} data-half={typing && isHalfTyped(state) ? '' : undefined}
      onFocus={() => dispatch({ do: 'enter field', path })} onBlur={() => dispatch({ do: 'leave field', path })}
    >
      <NumberField
        label={field.label} more={`${field.more ?? ''}${foreign}`} {...(field.ifEmpty === undefined ? {} : { ifEmpty: field.ifEmpty })}
        value={textAt(state.form, path)} error={wrongAt(path, desk)} onChange={(text) => dispatch({ do: 'type', path, text })}
      />
    </div>
  )
}

/** What is wrong in a field nobody is typing in, or what the whole was refused for there. */
function wrongAt(path: string, { state, view, units }: Desk): string | null {
  const own = state.typing?.path === path ? null : textRefusal(path, textAt(state.form, path), state.form.unit)
  const refusal = own ?? (view.refusal?.path === path ? view.refusal : null)
  return refusal && sayRefusal(refusal, units)
}

