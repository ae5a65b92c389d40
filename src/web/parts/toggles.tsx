type Props<Value extends string> = {
  readonly label: string
  /** More of the name for those who do not see where they stand: `of 25.4 A`. */
  readonly more?: string
  readonly options: readonly { readonly value: Value; readonly label: string }[]
  readonly chosen: readonly Value[]
  readonly onChange: (chosen: readonly Value[]) => void
}

/** Any of a few, all in view: a mark and a filled ground say which are on. */
export function Toggles<Value extends string>({ label, more, options, chosen, onChange }: Props<Value>) {
  const toggle = (value: Value) => onChange(chosen.includes(value) ? chosen.filter((one) => one !== value) : [...chosen, value])
  return (
    <fieldset className="choice toggles">
      <legend>{label}{more ? <span className="unseen"> {more}</span> : null}</legend>
      <div className="choice-row">
        {options.map(({ value, label: name }) => (
          <label key={value} className="choice-one">
            <input type="checkbox" checked={chosen.includes(value)} onChange={() => toggle(value)} />
            <span>{name}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
