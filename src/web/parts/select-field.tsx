import { useId, type ReactNode } from 'react'

type Props = {
  readonly label: string
  readonly value: string
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly onChange: (value: string) => void
  readonly note?: ReactNode
}

/** One of many, of which only the chosen one is in view. */
export function SelectField({ label, value, options, onChange, note }: Props) {
  const id = useId()
  return (
    <div className="field">
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)} aria-describedby={note ? `${id}-note` : undefined}>
        {options.map((option) => <option key={option.value} value={option.value}>{option.label}</option>)}
      </select>
      <label htmlFor={id}>{label}</label>
      {note ? <p className="field-note" id={`${id}-note`}>{note}</p> : null}
    </div>
  )
}
