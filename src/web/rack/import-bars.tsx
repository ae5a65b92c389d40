import { type ChangeEvent, useId, useState } from 'react'
import { type LengthUnit, wordLength } from '#model/length.ts'
import type { Complaint, RackImport } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { sayComplaint } from '#words/say-complaint.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { ask, Away } from '#web/api.ts'
import { deviceNow } from '#web/device.ts'
import { Choice } from '#web/parts/choice.tsx'
import { Link } from '#web/parts/link.tsx'
import { newId } from '#web/new-id.ts'
import { textOfFile } from '#web/rack/csv-file.ts'
import { go } from '#web/router.ts'
import { refresh } from '#web/shop-store.ts'
import { useUnits } from '#web/units.ts'

type Looked =
  | { readonly came: 'fits'; readonly will: RackImport }
  | { readonly came: 'complaints'; readonly complaints: readonly Complaint[]; readonly count: number }
  | { readonly came: 'refused'; readonly said: string }

const example = 'name,height,thickness,length,mates,slot\nC left,35,8,150,C,B4\nC right,35,8,150,C,B4'

/** Bars out of a CSV file: looked through first, and then brought in all or not at all. */
export function ImportBars() {
  const units = useUnits(), id = useId()
  const [csv, setCsv] = useState(''), [unit, setUnit] = useState<LengthUnit>(units.length), [oldText, setOldText] = useState(false)
  const [looked, setLooked] = useState<Looked | null>(null), [busy, setBusy] = useState(false)
  const [fileId, setFileId] = useState(newId)
  const change = (text: string, old = false) => { setCsv(text); setOldText(old); setLooked(null); setFileId(newId) }
  const open = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    if (file) void file.arrayBuffer().then((bytes) => { const read = textOfFile(new Uint8Array(bytes)); change(read.text, read.oldText) })
  }
  const look = async (dryRun: boolean) => {
    setBusy(true)
    const answer = await sent({ id: fileId, csv, unit, dryRun, person: deviceNow().person?.initials ?? '' }, units)
    setLooked(answer)
    setBusy(false)
    // Also where it was only looked through: it came in before, and the answer was lost.
    if (answer.came === 'fits' && !answer.will.dryRun) { await refresh(); go('/rack') }
  }
  return (
    <div className="side-page">
      <Link to="/rack" className="back">All bars</Link>
      <h1>Bring in bars from CSV</h1>
      <p className="small">The first line names the columns: height, thickness and length are needed; name, mates, slot, code, state and note may follow. “Width”, as printed on boxes, is taken for the height. Bars with the same text under mates become mates.</p>
      <div className="file-field"><label htmlFor={`${id}-file`}>A file</label><input id={`${id}-file`} type="file" accept=".csv,.txt,text/csv,text/plain" onChange={open} /></div>
      <div className="paste-field"><label htmlFor={`${id}-text`}>or its lines, pasted</label><textarea id={`${id}-text`} rows={8} spellCheck={false} value={csv} placeholder={example} onChange={(event) => change(event.target.value)} /></div>
      {oldText ? <p className="status">The file is in an old Western encoding and was read as such; see that names look right.</p> : null}
      <Choice label="Numbers without a unit are in" value={unit} onChange={(next) => { setUnit(next); setLooked(null); setFileId(newId) }} options={[{ value: 'mm', label: 'mm' }, { value: 'in', label: 'inch' }]} />
      <Outcome looked={looked} units={units} />
      <div className="side-actions">
        {looked?.came === 'fits'
          ? <button type="button" className="action main" disabled={busy} onClick={() => void look(false)}>Bring in {looked.will.bars === 1 ? '1 bar' : `${looked.will.bars} bars`}</button>
          : <button type="button" className="action main" disabled={busy || csv.trim() === ''} onClick={() => void look(true)}>{busy ? 'Looking' : 'Look through it'}</button>}
        <Link to="/rack" className="action">Leave it</Link>
      </div>
    </div>
  )
}

/** What came of looking is below the file: it is brought into view. */
const intoView = (element: HTMLElement | null) => element?.scrollIntoView({ block: 'nearest' })

const slotsShown = 20

function Outcome({ looked, units }: { readonly looked: Looked | null; readonly units: Units }) {
  if (looked === null) return null
  if (looked.came === 'refused') return <p className="status status--danger" role="alert" ref={intoView}>{looked.said}</p>
  if (looked.came === 'fits') {
    const { bars, mates, newSlots, lowestMm, highestMm, notes } = looked.will
    return (
      <div className="boxed" role="alert" ref={intoView}>
        <p>
          <strong>{bars === 1 ? '1 bar' : `${bars} bars`}</strong>, {wordLength(lowestMm, units)} to {wordLength(highestMm, units)} {units.length} high,{' '}
          {mates === 1 ? '1 group' : `${mates} groups`} of mates{newSlots.length > 0 ? <>, new slots: <span className="name-text">{newSlots.slice(0, slotsShown).join(', ')}{newSlots.length > slotsShown ? ' …' : ''}</span></> : null}.
        </p>
        {notes.map((note) => <p key={note.code}>{sayFinding(note, units)}</p>)}
        <p className="small">Nothing is in yet. They will stand as “look first”, their sizes as marked.</p>
      </div>
    )
  }
  const { complaints, count } = looked
  return (
    <div className="boxed" role="alert" ref={intoView}>
      <p className="status--danger">Nothing was brought in: {count === 1 ? 'one thing is' : `${count} things are`} to be put right in the file.</p>
      <ol className="rows complaints">
        {complaints.map((complaint, at) => (
          <li key={at} className="name-text">{sayComplaint(complaint, units)}</li>
        ))}
      </ol>
      {count > complaints.length ? <p className="small">and {count - complaints.length} more</p> : null}
    </div>
  )
}

async function sent(body: { readonly id: string; readonly csv: string; readonly unit: LengthUnit; readonly dryRun: boolean; readonly person: string }, units: Units): Promise<Looked> {
  try { return { came: 'fits', will: await ask<RackImport>('/api/rack/import', body) } } catch (error) {
    if (error instanceof Refusal && error.code === 'csv-not-imported') {
      return { came: 'complaints', complaints: error.facts['complaints'] as unknown as readonly Complaint[], count: Number(error.facts['count']) }
    }
    if (error instanceof Refusal) return { came: 'refused', said: sayRefusal(error, units) }
    if (error instanceof Away) return { came: 'refused', said: 'The file is looked through by the shop’s server, which does not answer just now. Keep the file and try again later.' }
    throw error
  }
}
