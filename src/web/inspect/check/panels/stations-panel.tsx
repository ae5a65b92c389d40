import { useState } from 'react'
import { suggestedStations } from '#engine/inspect/stations.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { withUnit } from '#model/length.ts'

const counts = [2, 3, 5, 7, 9], most = 99

/** How many stations along each bar, on one line or two, how often. */
export function StationsPanel() {
  const { draft: { id, form }, facts, units } = useCheckDesk(), { stations } = form
  const longest = Math.max(0, ...form.bars.map(({ bar }) => facts.bars.find((one) => one.id === bar)?.lengthMm ?? 0))
  const [other, setOther] = useState(counts.includes(stations) ? '' : String(stations)), count = Number(other), readable = other === '' || (Number.isInteger(count) && count >= 1 && count <= most)
  const put = (next: number) => changeForm(id, { stations: next, places: [] })
  return (
    <>
      <Choice label="Stations along the bar" value={String(stations)} options={counts.map((n) => ({ value: String(n), label: String(n) }))} onChange={(n) => { setOther(''); put(Number(n)) }} />
      <div className="field-list">
        <NumberField
          label="or as many as" value={other} error={readable ? null : `A whole number from 1 to ${most}.`} ifEmpty="–"
          onChange={(text) => { setOther(text); const n = Number(text); if (text !== '' && Number.isInteger(n) && n >= 1 && n <= most) put(n) }}
        />
      </div>
      {longest > 0 ? <p className="setup-lines">{suggestedStations(longest)} are usual for {withUnit(longest, units)} (common practice, no source).</p> : null}
      <Choice label="Lines" value={String(form.lines)} options={[{ value: '1', label: 'one, in the middle' }, { value: '2', label: 'two, by the edges' }]} onChange={(n) => changeForm(id, { lines: n === '2' ? 2 : 1 })} />
      <Choice label="Passes over each bar" value={String(form.repeats)} options={['1', '2', '3', '5'].map((n) => ({ value: n, label: n }))} onChange={(n) => changeForm(id, { repeats: Number(n) })} />
      <Places />
    </>
  )
}

/** Where the stations lie, for those who have marked them; spread evenly where nothing is typed. */
function Places() {
  const { draft: { id, form }, read, units } = useCheckDesk(), wrong = read.wrong['places']
  const put = (at: number, text: string) => {
    const places = Array.from({ length: form.stations }, (_, i) => (i === at ? text : form.places[i] ?? ''))
    changeForm(id, { places: places.every((place) => place === '') ? [] : places })
  }
  return (
    <details className="sum" open={form.places.length > 0 || undefined}>
      <summary>Where they lie</summary>
      <p className="setup-lines">Spread evenly unless typed, from the marked end, in {form.unit}.</p>
      <div className="field-list">{Array.from({ length: form.stations }, (_, at) => <NumberField key={at} label={`station ${at + 1} at`} ifEmpty="even" value={form.places[at] ?? ''} onChange={(text) => put(at, text)} />)}</div>
      {wrong && form.places.length > 0 ? <p className="status--danger">{sayRefusal(wrong, units)}</p> : null}
    </details>
  )
}
