import { useState, type FormEvent } from 'react'
import { nothingTaken } from '#model/plain-check.ts'
import { readNumber, readSizeMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { newCode, newId } from '#web/new-id.ts'
import { Choice } from '#web/parts/choice.tsx'
import { toFirstWrong } from '#web/parts/first-wrong.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { Link } from '#web/parts/link.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { TextField } from '#web/parts/text-field.tsx'
import { useRefused } from '#web/parts/use-refused.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { noHeights, readHeights, slotNamed } from '#web/rack/bar-texts.ts'
import { HeightFields } from '#web/rack/height-fields.tsx'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'
import { type Doing, type Edit, writeDeed } from '#web/write.ts'

const mostBars = 12
type Typed = { readonly how: 'one' | 'pair' | 'more'; readonly count: string; readonly name: string; readonly thickness: string; readonly length: string; readonly slot: string }
type Read = { count: number; heights: ReturnType<typeof readHeights>; thicknessMm: number; lengthMm: number; slot: ReturnType<typeof slotNamed> }

/** New bars: one, a pair or a set of mates. They stand as *look first*, their sizes as marked unless they were measured here. */
export function AddBars({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits()
  const [typed, setTyped] = useState<Typed>({ how: 'pair', count: '4', name: '', thickness: '', length: '', slot: '' })
  const [heights, setHeights] = useState(noHeights(mostBars)), [newIds] = useState(() => Array.from({ length: mostBars }, newId))
  const put = (part: Partial<Typed>) => setTyped({ ...typed, ...part })
  const count = countOf(typed), names = Array.from({ length: Number.isInteger(count) ? count : 0 }, (_one, at) => nameOf(typed, at, count)), ids = newIds.slice(0, names.length)
  const read = readFields<Read>({
    count: () => readCount(typed),
    heights: () => readHeights(heights, ids, units.length),
    thicknessMm: () => readSizeMm(typed.thickness, units.length, 'thicknessMm'),
    lengthMm: () => readSizeMm(typed.length, units.length, 'lengthMm'),
    slot: () => slotNamed(typed.slot, shop),
  })
  const [wrong, setTried] = useRefused(read)

  const add = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    if ('refused' in read) { setTried(true); return toFirstWrong(event.currentTarget) }
    writeDeed(deedOf(read.values, ids, names, typed.name.trim(), heights.method))
    offerUndo(`Added: ${names.filter((name) => name !== '').join(', ') || (count === 1 ? 'one bar' : `${count} bars`)}.`, () => {
      writeDeed({ events: ids.map((bar) => ({ bar, kind: 'gone', undoes: null, note: '' })) })
      go('/rack')
    })
    go(`/rack/${ids[0]}`)
  }

  return (
    <form className="side-page" onSubmit={add} noValidate>
      <Link to="/rack" className="back">All bars</Link>
      <h1>Add bars</h1>
      <Choice
        label="How many" value={typed.how} onChange={(how) => put({ how })}
        options={[{ value: 'one', label: 'one, odd' }, { value: 'pair', label: 'a pair' }, { value: 'more', label: 'more mates' }]}
      />
      {typed.how === 'more' ? <NumberField label="how many mates" value={typed.count} onChange={(text) => put({ count: text })} error={wrong.count ? sayRefusal(wrong.count, units) : null} /> : null}
      <HeightFields value={heights} onChange={setHeights} bars={names.map((name, at) => name || `bar ${at + 1}`)} refused={wrong.heights} />
      <div className="field-list">
        <LengthField label="thickness" value={typed.thickness} onChange={(thickness) => put({ thickness })} refused={wrong.thicknessMm} />
        <LengthField label="length" value={typed.length} onChange={(length) => put({ length })} refused={wrong.lengthMm} />
        <TextField label="slot" value={typed.slot} onChange={(slot) => put({ slot })} maxLength={20} known={shop.slots.map(({ name }) => name)} error={wrong.slot ? sayRefusal(wrong.slot, units) : null} />
        <TextField label="name marked on them" value={typed.name} onChange={(name) => put({ name })} maxLength={36} />
      </div>
      <p className="small">New bars stand as “look first” until somebody has wiped them, felt them over and said so.</p>
      {Object.keys(wrong).length > 0 ? <p className="status--danger" role="alert">Nothing was added yet: see what is marked above.</p> : null}
      <div className="side-actions"><button className="action main">{count === 1 ? 'Add this bar' : 'Add these bars'}</button><Link to="/rack" className="action">Leave it</Link></div>
    </form>
  )
}

function deedOf({ heights, thicknessMm, lengthMm, slot }: Read, ids: readonly string[], names: readonly string[], name: string, method: 'stated' | 'micrometer'): Doing {
  const matesId = ids.length > 1 ? newId() : null
  const mates: readonly Edit[] = matesId === null ? [] : [{ kind: 'mates', record: matesId, fields: { name, note: '' } }]
  const bars = ids.map((record, at): Edit => ({
    kind: 'bar', record,
    fields: { code: newCode(), name: names[at]!, thicknessMm, thicknessStanding: 'marked', lengthMm, matesId, slotId: slot.slotId, where: { at: 'slot' }, note: '' },
  }))
  return {
    edits: [...slot.edits, ...mates, ...bars],
    checks: [{ method, replaces: null, ...nothingTaken, readings: heights, note: '' }],
    events: ids.map((bar) => ({ bar, kind: 'added', undoes: null, note: '' })),
  }
}

function countOf({ how, count }: Typed): number {
  if (how !== 'more') return how === 'one' ? 1 : 2
  const number = /^\d+$/.test(count.trim()) ? Number(count) : 0
  return number >= 2 && number <= mostBars ? number : 0
}

/** @throws Refusal `too-many`, `value-not-allowed` */
function readCount(typed: Typed): number {
  const count = countOf(typed)
  if (count > 0) return count
  readNumber(typed.count, 'count')
  throw new Refusal('value-not-allowed', { field: 'bars', given: typed.count, needed: `a whole number from 2 to ${mostBars}` })
}

/** Mates of one name are told apart by a number. */
function nameOf({ name }: Typed, at: number, count: number): string {
  const bare = name.trim()
  return count === 1 || bare === '' ? bare : `${bare} ${at + 1}`
}
