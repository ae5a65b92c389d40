import type { ReadCell } from '#engine/inspect/read-cell.ts'
import type { DraftLook, DraftRecord } from '#model/check-draft.ts'
import { changeLook, noLook } from '#web/inspect/draft/draft-edits.ts'
import { HeightCell } from '#web/inspect/draft/height-cell.tsx'
import { Choice } from '#web/parts/choice.tsx'
import { Toggles } from '#web/parts/toggles.tsx'

type Props = { readonly draft: DraftRecord; readonly bar: string; readonly name: string; readonly slot: string | null; readonly cells: readonly ReadCell[] }

const ends = ['marked end', 'other end']

/** One bar of a quick look: three touches and two readings. */
export function QuickBar({ draft, bar, name, slot, cells }: Props) {
  const look = draft.looks[bar] ?? noLook, put = (part: Partial<DraftLook>) => changeLook(draft.id, bar, part)
  const done = ([['wiped', look.wiped], ['stoned', look.stoned]] as const).flatMap(([what, is]) => (is ? [what] : []))
  return (
    <section className="boxed quick-bar" aria-label={name}>
      <h2 className="name-text">{name}{slot === null ? '' : <span className="small name-text"> slot {slot}</span>}</h2>
      <Toggles
        label="Done" more={`to ${name}`} chosen={done} onChange={(chosen) => put({ wiped: chosen.includes('wiped'), stoned: chosen.includes('stoned') })}
        options={[{ value: 'wiped', label: 'wiped' }, { value: 'stoned', label: 'stoned, no burrs' }]}
      />
      <Choice label="On a flat" value={look.rock} onChange={(rock) => put({ rock })} options={[{ value: 'not tried', label: 'not tried' }, { value: 'none', label: 'no rock' }, { value: 'rocks', label: 'rocks' }]} />
      <div className="field-list">{cells.map((one, at) => <HeightCell key={one.cell.key} draftId={draft.id} one={one} label={ends[at]!} more={`height of ${name}`} />)}</div>
    </section>
  )
}
