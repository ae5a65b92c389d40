import { useState, type FormEvent } from 'react'
import type { InstrumentIs, InstrumentRecord } from '#model/instrument-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { DateField } from '#web/parts/date-field.tsx'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { Link } from '#web/parts/link.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { useRefused } from '#web/parts/use-refused.ts'
import { go } from '#web/router.ts'
import { FigureFields } from '#web/shop/instruments/figure-fields.tsx'
import { instrumentTexts, type InstrumentTexts, newInstrumentTexts, readInstrument } from '#web/shop/instruments/instrument-texts.ts'
import { sayKind } from '#web/shop/instruments/say-instrument.ts'
import { RecordActions } from '#web/shop/record-actions.tsx'
import { keepRecord } from '#web/shop/record-edit.ts'
import { useUnits } from '#web/units.ts'

const kinds: readonly InstrumentIs['is'][] = ['plate', 'indicator', 'gauge blocks', 'micrometer']

/** An instrument, new or to be changed. A check keeps the figures as they were that day, whatever is changed here later. */
export function InstrumentForm({ instrument }: { readonly instrument: InstrumentRecord | null }) {
  const units = useUnits()
  const [texts, setTexts] = useState<InstrumentTexts>(() => (instrument ? instrumentTexts(instrument, units) : newInstrumentTexts('plate')))
  const read = readInstrument(texts, instrument, units), [wrong, setTried] = useRefused(read)
  const put = (part: Partial<InstrumentTexts>) => setTexts({ ...texts, ...part })
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    keepRecord('instrument', instrument, instrument ? read.values : { ...read.values, retired: false })
    go('/shop')
  }
  return (
    <form className="page" onSubmit={save} noValidate>
      <Link to="/shop" className="back">Shop</Link>
      <h1 className="name-text">{instrument ? `Change ${instrument.name}` : 'Add an instrument or plate'}</h1>
      {instrument ? null : (
        <Choice label="What it is" value={texts.is} onChange={(is) => { put({ is }); setTried(false) }} options={kinds.map((is) => ({ value: is, label: sayKind(is, units) }))} />
      )}
      <div className="field-list book">
        <TextField label="name" value={texts.name} onChange={(name) => put({ name })} maxLength={80} error={wrong.name ? sayRefusal(wrong.name, units) : null} />
        <DateField label="due again on" value={texts.due} onChange={(due) => put({ due })} />
      </div>
      <FigureFields texts={texts} put={put} wrong={wrong} />
      <TextField label="note" value={texts.note} onChange={(note) => put({ note })} maxLength={2000} />
      <p className="small">A check made with it keeps these figures as they are that day. One that is overdue is named on every check made with it.</p>
      <RecordActions kind="instrument" record={instrument} save={`Save ${instrument ? 'it' : `the ${sayKind(texts.is, units)}`}`} someWrong={Object.keys(wrong).length > 0} />
    </form>
  )
}
