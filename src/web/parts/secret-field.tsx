import { useId, useState } from 'react'

type Props = {
  readonly label: string
  readonly value: string
  readonly onChange: (text: string) => void
  readonly error?: string | null
  /** One that is made here, not one that is known. */
  readonly fresh?: boolean
}

/** A passphrase: hidden while it is typed, unless whoever types wants to see it. */
export function SecretField({ label, value, onChange, error, fresh = false }: Props) {
  const id = useId(), [shown, setShown] = useState(false)
  return (
    <div className="secret">
      <div className="field" data-error={error ? '' : undefined}>
        <input
          id={id} type={shown ? 'text' : 'password'} autoComplete={fresh ? 'new-password' : 'current-password'} value={value} maxLength={200}
          aria-invalid={error ? true : undefined} aria-describedby={error ? `${id}-error` : undefined} onChange={(event) => onChange(event.target.value)}
        />
        <label htmlFor={id}>{label}</label>
        {error ? <p className="field-error" id={`${id}-error`}>{error}</p> : null}
      </div>
      <button type="button" className="action" aria-pressed={shown} onClick={() => setShown(!shown)}>{shown ? 'Hide' : 'Show'}</button>
    </div>
  )
}
