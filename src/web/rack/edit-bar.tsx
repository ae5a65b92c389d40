import { useState, type FormEvent } from 'react'
import type { BarFields } from '#model/bar-record.ts'
import type { Reading } from '#model/check.ts'
import { nothingTaken } from '#model/plain-check.ts'
import { readSizeMm, wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { Link } from '#web/parts/link.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { TextField } from '#web/parts/text-field.tsx'
import { useRefused } from '#web/parts/use-refused.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { noHeights, readHeights, slotNamed } from '#web/rack/bar-texts.ts'
import { HeightFields } from '#web/rack/height-fields.tsx'
import { MatesField, type MatesWish, matesWished } from '#web/rack/mates-field.tsx'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameOfBar } from '#web/rack/say-bar.ts'
import { go } from '#web/router.ts'
import { changedKeys } from '#web/shop/changed-keys.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

type Read = { heights: Reading[]; thicknessMm: number; lengthMm: number; slot: ReturnType<typeof slotNamed> }

/** What is written down about a bar, to be put right. Only what was changed is written; a height typed here is a new check. */
export function EditBar({ shop, bar }: { readonly shop: ShopSnapshot; readonly bar: RackBar }) {
  const units = useUnits(), { record } = bar
  const before = { name: record.name, thickness: wordLength(record.thicknessMm, units), length: wordLength(record.lengthMm, units), slot: bar.slot?.name ?? '', note: record.note }
  const [typed, setTyped] = useState(before), [heights, setHeights] = useState(noHeights(1))
  const [standing, setStanding] = useState(record.thicknessStanding), [mates, setMates] = useState<MatesWish>({ kind: 'as it is' })
  const put = (part: Partial<typeof typed>) => setTyped({ ...typed, ...part })
  const called = nameOfBar(bar, units), noHeight = heights.stated.trim() === '' && heights.measured[0]!.every((text) => text.trim() === '')
  const read = readFields<Read>({
    heights: () => (noHeight ? [] : readHeights(heights, [record.id], units.length)),
    thicknessMm: () => (typed.thickness === before.thickness ? record.thicknessMm : readSizeMm(typed.thickness, units.length, 'thicknessMm')),
    lengthMm: () => (typed.length === before.length ? record.lengthMm : readSizeMm(typed.length, units.length, 'lengthMm')),
    slot: () => slotNamed(typed.slot, shop),
  })
  const [wrong, setTried] = useRefused(read)

  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    const { thicknessMm, lengthMm, slot, heights: readings } = read.values
    const joined = matesWished(mates, record)
    const wanted: BarFields = { ...record, name: typed.name.trim(), thicknessMm, thicknessStanding: standing, lengthMm, slotId: slot.slotId, matesId: joined.matesId, note: typed.note }
    const { fields, old } = changedFields(wanted, record)
    writeDeed({
      edits: [...slot.edits, ...joined.edits, { kind: 'bar', record: record.id, fields }],
      checks: readings.length > 0 ? [{ method: heights.method, replaces: null, ...nothingTaken, readings, note: '' }] : [],
    })
    if (Object.keys(fields).length > 0) offerUndo(`${called}: changed.`, () => { writeDeed({ edits: [{ kind: 'bar', record: record.id, fields: old }] }) })
    go(`/rack/${record.id}`)
  }

  return (
    <form className="side-page" onSubmit={save} noValidate>
      <Link to={`/rack/${record.id}`} className="back">Back to the bar</Link>
      <h1 className="name-text">Change {called}</h1>
      <div className="field-list">
        <TextField label="name, as marked on it" value={typed.name} onChange={(name) => put({ name })} maxLength={40} />
        <TextField label="slot" value={typed.slot} onChange={(slot) => put({ slot })} maxLength={20} known={shop.slots.map(({ name }) => name)} error={wrong.slot ? sayRefusal(wrong.slot, units) : null} />
        <LengthField label="thickness" value={typed.thickness} onChange={(thickness) => put({ thickness })} refused={wrong.thicknessMm} />
        <LengthField label="length" value={typed.length} onChange={(length) => put({ length })} refused={wrong.lengthMm} />
      </div>
      <Choice label="The thickness is" value={standing} onChange={setStanding} options={[{ value: 'marked', label: 'as marked' }, { value: 'measured', label: 'measured here' }]} />
      <MatesField shop={shop} bar={bar} value={mates} onChange={setMates} />
      <section className="boxed">
        <h2>A new height</h2>
        <p className="small">Leave it empty and the height stays as it is. What stood before is kept in the history.</p>
        <HeightFields value={heights} onChange={setHeights} bars={[called]} refused={wrong.heights} />
      </section>
      <TextField label="note" value={typed.note} onChange={(note) => put({ note })} maxLength={2000} />
      {Object.keys(wrong).length > 0 ? <p className="status--danger" role="alert">Nothing was changed yet: see what is marked above.</p> : null}
      <div className="side-actions"><button className="action main">Save</button><Link to={`/rack/${record.id}`} className="action">Leave it</Link></div>
    </form>
  )
}

/** Only what differs, and what stood there before. */
function changedFields(wanted: BarFields, before: BarFields): { readonly fields: Partial<BarFields>; readonly old: Partial<BarFields> } {
  const keys = changedKeys(wanted, before)
  const of = (record: BarFields): Partial<BarFields> => Object.fromEntries(keys.map((key) => [key, record[key]]))
  return { fields: of(wanted), old: of(before) }
}
