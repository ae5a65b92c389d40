import type { DraftBar, DraftRecord } from '#model/check-draft.ts'
import { readSizeMm } from '#model/length.ts'
import { newId } from '#web/new-id.ts'
import type { Doing, Edit } from '#web/write.ts'

/** A bar that is not in the rack yet: as thick and as long as the one before it, if that was new as well. */
export function newBarAfter(bars: readonly DraftBar[]): DraftBar {
  const last = bars.findLast(({ isNew }) => isNew)
  return { bar: newId(), isNew: true, name: '', thickness: last?.thickness ?? '', length: last?.length ?? '' }
}

/** The code of a bar that is new with a check, known before it is kept: its id is made of the same letters. */
export const codeOf = (bar: string): string => bar.slice(0, 8)

/**
 * What brings the new bars of a check into the rack, in the deed that keeps the check.
 *
 * @throws Refusal of a thickness or length that cannot be read, field `bars[2].thicknessMm`
 */
export function bringNewBars({ form: { bars, unit } }: Pick<DraftRecord, 'form'>): Required<Pick<Doing, 'edits' | 'events'>> {
  const edits = bars.flatMap(({ bar, isNew, name, thickness, length }, at): Edit[] => (!isNew ? [] : [{
    kind: 'bar', record: bar, fields: {
      code: codeOf(bar), name: name.trim(), thicknessMm: readSizeMm(thickness, unit, `bars[${at}].thicknessMm`), thicknessStanding: 'measured',
      lengthMm: readSizeMm(length, unit, `bars[${at}].lengthMm`), matesId: null, slotId: null, where: { at: 'slot' }, note: '',
    },
  }]))
  return { edits, events: edits.map(({ record }) => ({ bar: record, kind: 'added', undoes: null, note: '' })) }
}
