import type { KeyboardEvent } from 'react'
import type { DraftRead } from '#engine/inspect/read-draft.ts'
import { barMarks } from '#model/bar-marks.ts'
import type { DraftBar, DraftRecord } from '#model/check-draft.ts'
import { Refusal } from '#model/refusal.ts'
import { boxStations, changeBar, leaveBar } from '#web/inspect/box/box-edits.ts'
import { changeLook, noLook } from '#web/inspect/draft/draft-edits.ts'
import { HeightCell } from '#web/inspect/draft/height-cell.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { Toggles } from '#web/parts/toggles.tsx'

type Props = {
  readonly draft: DraftRecord
  readonly bar: DraftBar
  readonly cells: DraftRead['cells']
  readonly wrong: DraftRead['wrong']
  readonly at: number
  readonly onNext: () => void
  readonly onLeave: () => void
}

/** The bar in hand: three heights, a look, and its other sizes, which go on from the bar before. */
export function BoxBar({ draft, bar, cells, wrong, at, onNext, onLeave }: Props) {
  const look = draft.looks[bar.bar] ?? noLook, said = wrong[`bars[${at}].length`], called = `bar ${bar.name}`
  // Once the other sizes are known, Enter after the last height takes the next bar: a hand that measures need not leave the keys.
  const enter = (event: KeyboardEvent<HTMLElement>) => {
    const inputs = [...event.currentTarget.querySelectorAll('input')]
    if (event.key !== 'Enter' || event.nativeEvent.isComposing || event.target !== inputs.at(-1) || bar.thickness.trim() === '' || bar.length.trim() === '') return
    event.preventDefault()
    event.stopPropagation()
    onNext()
  }
  return (
    <section className="box-bar" aria-label={called}>
      <h1 className="name-text">Bar {bar.name || '?'}</h1>
      <div className="field-list" onKeyDownCapture={enter}>
        {cells.map((one) => <HeightCell key={one.cell.key} draftId={draft.id} one={one} label={boxStations[one.cell.station]!} more={`height of ${called}`} />)}
      </div>
      <Toggles label="What is seen on it" chosen={look.seen} onChange={(seen) => changeLook(draft.id, bar.bar, { seen: [...seen] })} options={barMarks.map((mark) => ({ value: mark, label: mark }))} />
      <div className="field-list">
        <LengthField label="thickness" value={bar.thickness} onChange={(thickness) => changeBar(draft, bar.bar, { thickness })} />
        <LengthField label="length" value={bar.length} onChange={(length) => changeBar(draft, bar.bar, { length })} refused={said ? new Refusal(said.code, said.facts) : undefined} />
        <TextField label="number chalked on it" value={bar.name} onChange={(name) => changeBar(draft, bar.bar, { name })} maxLength={36} />
      </div>
      {draft.form.bars.length > 1 ? <div><button type="button" className="press" onClick={() => { leaveBar(draft, bar.bar); onLeave() }}>Leave this bar out</button></div> : null}
    </section>
  )
}
