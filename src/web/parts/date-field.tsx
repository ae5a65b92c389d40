import { useId } from 'react'

type Props = { readonly label: string; readonly value: string; readonly onChange: (day: string) => void }

/** A day, `2027-03-31`; empty: none. */
export function DateField({ label, value, onChange }: Props) {
  const id = useId()
  return (
    <div className="field">
      <input id={id} type="date" value={value} onChange={(event) => onChange(event.target.value)} />
      <label htmlFor={id}>{label}</label>
    </div>
  )
}
