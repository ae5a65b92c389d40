import { useId, type KeyboardEvent, type ReactNode } from 'react'
import { toNextField } from '#web/parts/next-field.ts'

type Props = {
  readonly label: string
  readonly value: string
  readonly onChange: (text: string) => void
  readonly error?: string | null
  readonly note?: ReactNode
  readonly maxLength: number
  /** Names already in use that may be meant. */
  readonly known?: readonly string[]
}

/** A name or remark in words, looking like its numeric sisters. */
export function TextField({ label, value, onChange, error, note, maxLength, known }: Props) {
  const id = useId()
  const told = [error ? `${id}-error` : null, note ? `${id}-note` : null].filter((part) => part !== null).join(' ')
  return (
    <div className="field" data-error={error ? '' : undefined}>
      <input
        id={id} type="text" autoComplete="off" dir="auto" value={value} maxLength={maxLength} list={known ? `${id}-known` : undefined}
        aria-invalid={error ? true : undefined} aria-describedby={told || undefined} onChange={(event) => onChange(event.target.value)} onKeyDown={moveOn}
      />
      <label htmlFor={id}>{label}</label>
      {known ? <datalist id={`${id}-known`}>{known.map((name) => <option key={name} value={name}>{name}</option>)}</datalist> : null}
      {note ? <p className="field-note" id={`${id}-note`}>{note}</p> : null}
      {error ? <p className="field-error" id={`${id}-error`}>{error}</p> : null}
    </div>
  )
}

/** Enter goes on as in the numbers; from the last field it sends the form. */
function moveOn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key === 'Enter' && !event.nativeEvent.isComposing && toNextField(event.currentTarget)) event.preventDefault()
}
