import { useState, type FormEvent } from 'react'
import type { InstrumentFields, InstrumentIs, InstrumentRecord } from '#model/instrument-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital } from '#words/wording.ts'
import { newId } from '#web/new-id.ts'
import { Choice } from '#web/parts/choice.tsx'
import { DateField } from '#web/parts/date-field.tsx'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { Link } from '#web/parts/link.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { go } from '#web/router.ts'
import { FigureFields } from '#web/shop/instruments/figure-fields.tsx'
import { instrumentTexts, type InstrumentTexts, type InstrumentWrong, newInstrumentTexts, readInstrument } from '#web/shop/instruments/instrument-texts.ts'
import { sayKind } from '#web/shop/instruments/say-instrument.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

const kinds: readonly InstrumentIs['is'][] = ['plate', 'indicator', 'gauge blocks', 'micrometer']

/** An instrument, new or to be changed. A check keeps the figures as they were that day, whatever is changed here later. */
export function InstrumentForm({ instrument }: { readonly instrument: InstrumentRecord | null }) {
  const units = useUnits()
  const [texts, setTexts] = useState<InstrumentTexts>(() => (instrument ? instrumentTexts(instrument, units) : newInstrumentTexts('plate')))
  const [wrong, setWrong] = useState<InstrumentWrong>({})
  const put = (part: Partial<InstrumentTexts>) => setTexts({ ...texts, ...part })
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const read = readInstrument(texts, instrument, units)
    if ('refused' in read) { setWrong(read.refused); return toFirstWrong(event.currentTarget) }
    if (instrument === null) writeDeed({ edits: [{ kind: 'instrument', record: newId(), fields: { ...read.values, retired: false } }] })
    else change(instrument, read.values)
    go('/shop')
  }
  return (
    <form className="page" onSubmit={save} noValidate>
      <Link to="/shop" className="back">Shop</Link>
      <h1 className="name-text">{instrument ? `Change ${instrument.name}` : 'Add an instrument or plate'}</h1>
      {instrument ? null : (
        <Choice label="What it is" value={texts.is} onChange={(is) => { put({ is }); setWrong({}) }} options={kinds.map((is) => ({ value: is, label: sayKind(is, units) }))} />
      )}
      <div className="field-list book">
        <TextField label="name" value={texts.name} onChange={(name) => put({ name })} maxLength={80} error={wrong.name ? sayRefusal(wrong.name, units) : null} />
        <DateField label="due again on" value={texts.due} onChange={(due) => put({ due })} />
      </div>
      <FigureFields texts={texts} put={put} wrong={wrong} />
      <TextField label="note" value={texts.note} onChange={(note) => put({ note })} maxLength={2000} />
      <p className="small">A check made with it keeps these figures as they are that day. One that is overdue is named on every check made with it.</p>
      {Object.keys(wrong).length > 0 ? <p className="status--danger" role="alert">Nothing was saved yet: see what is marked above.</p> : null}
      <div className="actions">
        <button className="action main">Save {instrument ? 'it' : `the ${sayKind(texts.is, units)}`}</button>
        {instrument ? <button type="button" className="action" onClick={() => { change(instrument, { retired: !instrument.retired }); go('/shop') }}>{instrument.retired ? 'Take back into use' : 'Retire'}</button> : null}
        <Link to="/shop" className="action">Leave it</Link>
      </div>
    </form>
  )
}

/** Writes what differs, and offers to put it back. */
function change(instrument: InstrumentRecord, wanted: Partial<InstrumentFields>): void {
  const keys = (Object.keys(wanted) as (keyof InstrumentFields)[]).filter((key) => JSON.stringify(wanted[key]) !== JSON.stringify(instrument[key]))
  if (keys.length === 0) return
  const of = (from: Partial<InstrumentFields>): Partial<InstrumentFields> => Object.fromEntries(keys.map((key) => [key, from[key]]))
  writeDeed({ edits: [{ kind: 'instrument', record: instrument.id, fields: of(wanted) }] })
  const said = wanted.retired === true ? 'retired' : wanted.retired === false ? 'back in use' : 'changed'
  offerUndo(`${capital(instrument.name)}: ${said}.`, () => { writeDeed({ edits: [{ kind: 'instrument', record: instrument.id, fields: of(instrument) }] }) })
}
