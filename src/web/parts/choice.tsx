import { useId } from 'react'

type Props<Value extends string> = {
  readonly label: string
  readonly value: Value
  readonly options: readonly { readonly value: Value; readonly label: string }[]
  readonly onChange: (value: Value) => void
  /** The label is said, not shown: it is plain from what stands around. */
  readonly quiet?: boolean
}

/** One of a few, all in view: a radio group whose buttons are large enough for a thumb. */
export function Choice<Value extends string>({ label, value, options, onChange, quiet }: Props<Value>) {
  const name = useId()
  return (
    <fieldset className="choice">
      <legend className={quiet ? 'unseen' : undefined}>{label}</legend>
      <div className="choice-row">
        {options.map((option) => (
          <label key={option.value} className="choice-one">
            <input type="radio" name={name} checked={option.value === value} onChange={() => onChange(option.value)} />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
