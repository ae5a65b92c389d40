import { type FocusEvent, useId, type KeyboardEvent, type ReactNode } from 'react'
import { toNextField } from '#web/parts/next-field.ts'
import { inputModeNow, lowerPad, lowerPadAfterPress, raisePad } from '#web/parts/pad-state.ts'

export type NumberFieldProps = {
  /** The name that stands under the value. */
  readonly label: string
  /** More of the name for those who do not see where the field lies: `of the part`. */
  readonly more?: string
  /** The text as typed; never rewritten by us. */
  readonly value: string
  readonly onChange: (text: string) => void
  /** What is wrong and what to do; null or left out: nothing. */
  readonly error?: string | null
  /** The value in the other system, or another short remark. */
  readonly note?: ReactNode
  /** Shown faintly while the field is empty: what counts then. */
  readonly ifEmpty?: string
  /** Left out: 40, enough for one number; a list of them needs more. */
  readonly maxLength?: number
}

/** A size as a field of the drawing: the value, its name below, a blue line under both. Enter moves on to the next. */
export function NumberField({ label, more, value, onChange, error, note, ifEmpty, maxLength = 40 }: NumberFieldProps) {
  const id = useId()
  const told = [error ? `${id}-error` : null, note ? `${id}-note` : null].filter((part) => part !== null).join(' ')
  return (
    <div className="field field--number" data-error={error ? '' : undefined}>
      <input
        id={id} type="text" inputMode={inputModeNow()} autoComplete="off" autoCorrect="off" spellCheck={false} enterKeyHint="next" maxLength={maxLength}
        size={Math.max(2, (value || ifEmpty || '').length)} value={value} placeholder={ifEmpty} data-number=""
        aria-invalid={error ? true : undefined} aria-describedby={told || undefined}
        onChange={(event) => onChange(event.target.value)}
        onFocus={(event) => { event.target.select(); raisePad(event.target) }}
        onBlur={lowerUnlessStillTyping} onKeyDown={moveOn}
      />
      <label htmlFor={id}>{label}{more ? <span className="unseen"> {more}</span> : null}</label>
      {note ? <p className="field-note" id={`${id}-note`}>{note}</p> : null}
      {error ? <p className="field-error" id={`${id}-error`}>{error}</p> : null}
    </div>
  )
}

/** Gauges that type like a keyboard end with Enter: it must move on, and never send a form half filled in. */
function moveOn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key === 'Escape') return lowerPad()
  if (event.key !== 'Enter' || event.nativeEvent.isComposing) return
  event.preventDefault()
  if (!toNextField(event.currentTarget)) event.currentTarget.blur()
}

/** Focus that goes to another number, or to the pad itself, leaves the pad up. */
function lowerUnlessStillTyping({ relatedTarget: to, currentTarget: left }: FocusEvent<HTMLInputElement>): void {
  if (to instanceof HTMLElement && (to.closest('.pad') || to.dataset['number'] !== undefined)) return
  lowerPadAfterPress(left)
}
