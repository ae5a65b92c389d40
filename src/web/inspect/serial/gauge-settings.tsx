import { capital } from '#words/wording.ts'
import type { GaugeLine } from '#web/inspect/serial/gauge-line.ts'
import type { Gauge } from '#web/inspect/serial/use-gauge.ts'
import { SelectField } from '#web/parts/select-field.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { useTerms } from '#web/units.ts'

const options = (...values: readonly (string | number)[]) => values.map((value) => ({ value: String(value), label: String(value) }))

/** A gauge on a serial line of this device: connect it, and how it talks. One that types like a keyboard needs none of this. */
export function GaugeSettings({ gauge: { state, how, put, connect, disconnect, heard } }: { readonly gauge: Gauge }) {
  const { gauge: word } = useTerms()
  if (state === 'not here') return <p className="setup-lines">A {word} that types like a keyboard works as it is. One on a serial line needs a browser with Web Serial and this page over https; here there is none.</p>
  const on = state === 'on' || state === 'asking'
  return (
    <section className="insp-gauge" aria-label={`${capital(word)} on a serial line`}>
      <h3>{capital(word)} on a serial line</h3>
      <div className="actions"><button type="button" className="action" onClick={on ? disconnect : connect}>{on ? 'Disconnect it' : 'Connect it'}</button></div>
      {state === 'broken' ? <StatusLine danger>The line could not be opened, or it broke off. See to the cable and the settings, then connect it again.</StatusLine> : null}
      {state === 'on' ? <StatusLine>{heard === null ? `Listening. Press send on the ${word}.` : heard.reading === null ? `“${heard.line}” came: no such number in it.` : `“${heard.line}” came, taken as ${heard.reading}.`}</StatusLine> : null}
      <details className="sum">
        <summary>How it talks</summary>
        <div className="field-list">
          <SelectField label="baud" value={String(how.baudRate)} options={options(1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200)} onChange={(value) => put({ baudRate: Number(value) })} />
          <SelectField label="data bits" value={String(how.dataBits)} options={options(7, 8)} onChange={(value) => put({ dataBits: value === '7' ? 7 : 8 })} />
          <SelectField label="parity" value={how.parity} options={options('none', 'even', 'odd')} onChange={(value) => put({ parity: value as GaugeLine['parity'] })} />
          <SelectField label="stop bits" value={String(how.stopBits)} options={options(1, 2)} onChange={(value) => put({ stopBits: value === '2' ? 2 : 1 })} />
          <SelectField label="line ends with" value={how.lineEnd} options={options('CR LF', 'CR', 'LF')} onChange={(value) => put({ lineEnd: value as GaugeLine['lineEnd'] })} />
          <SelectField label="the reading is" value={String(how.which)} options={[{ value: '0', label: 'the last number' }, ...[1, 2, 3].map((n) => ({ value: String(n), label: `number ${n} of the line` }))]} onChange={(value) => put({ which: Number(value) })} />
          <SelectField label="in" value={how.unit} options={[{ value: '', label: 'as the fields' }, ...options('mm', 'in', 'µm')]} onChange={(value) => put({ unit: value as GaugeLine['unit'] })} />
        </div>
      </details>
    </section>
  )
}
