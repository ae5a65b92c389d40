import type { Refusal } from '#model/refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { type HeightTexts, stations } from '#web/rack/bar-texts.ts'

type Props = { readonly value: HeightTexts; readonly onChange: (value: HeightTexts) => void; readonly bars: readonly string[]; readonly refused: Refusal | undefined }

/** The height as it is marked, or readings of a micrometer for each bar. */
export function HeightFields({ value, onChange, bars, refused }: Props) {
  const fieldRefused = refused?.facts['field']
  const measure = (bar: number, station: number, text: string) =>
    onChange({ ...value, measured: value.measured.map((texts, at) => (at === bar ? texts.map((old, place) => (place === station ? text : old)) : texts)) })
  return (
    <>
      <Choice
        label="The height is" value={value.method} onChange={(method) => onChange({ ...value, method })}
        options={[{ value: 'stated', label: 'as marked' }, { value: 'micrometer', label: 'measured here' }]}
      />
      {value.method === 'stated' ? (
        <div className="field-list">
          <LengthField label="height" value={value.stated} onChange={(stated) => onChange({ ...value, stated })} refused={refused} />
          <p className="small hint">The height lifts the work. A box or list that says “width” means this size.</p>
        </div>
      ) : bars.map((bar, at) => (
        <fieldset key={bar} className="readings">
          <legend className="small name-text">{bar}, readings of the micrometer</legend>
          <div className="field-list">
            {stations.map((station, place) => (
              <LengthField
                key={station} label={station} more={`height of ${bar}`} value={value.measured[at]?.[place] ?? ''} onChange={(text) => measure(at, place, text)}
                refused={fieldRefused === `bars[${at}].readings[${place}]` ? refused : undefined}
              />
            ))}
          </div>
        </fieldset>
      ))}
    </>
  )
}
