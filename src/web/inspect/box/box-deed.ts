import type { BarEventKind } from '#model/bar-event.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { BoxOutcome } from '#web/inspect/box/box-outcome.ts'
import { codeOf } from '#web/inspect/draft/new-bars.ts'
import { type NamesToWrite, nameOfMates } from '#web/inspect/box/names-to-write.ts'
import { newId } from '#web/new-id.ts'
import type { Doing, Edit } from '#web/write.ts'

/**
 * What is written down when a box is kept: the check as found, every bar with its sizes and name, mates of the pairs, and what
 * each bar is from now on; scrap goes out at once, so that its readings have a bar they belong to.
 *
 * @param checkId  of the check, so that the half-done one names it
 */
export function boxDeed({ body, bars, sorted }: BoxOutcome, names: NamesToWrite, draft: DraftRecord, checkId: string, units: Units): Doing {
  const matesOf = new Map(sorted.pairs.flatMap(({ bars: [a, b] }) => { const id = newId(); return [[a, id], [b, id]] as const }))
  const mates = sorted.pairs.map(({ bars: [a, b] }): Edit => ({ kind: 'mates', record: matesOf.get(a)!, fields: { name: nameOfMates(names[a] ?? '', names[b] ?? ''), note: '' } }))
  const ground = new Map(sorted.regrind.flatMap(({ bars: few, newHeightMm }) => few.map((bar) => [bar, newHeightMm] as const)))
  const numbers = new Map(draft.form.bars.map(({ bar, name }) => [bar, name]))
  const becomes: readonly (readonly [BarEventKind, readonly string[]])[] = [
    ['added', bars.map(({ id }) => id)], ['made drill bar', sorted.drillBars.map(({ bar }) => bar)], ['in work', [...ground.keys()]], ['gone', sorted.scrap.map(({ bar }) => bar)],
  ]
  return {
    edits: [
      ...mates,
      ...bars.map(({ id, thicknessMm, lengthMm, seen }): Edit => ({
        kind: 'bar', record: id,
        fields: {
          code: codeOf(id), name: names[id] ?? '', thicknessMm, thicknessStanding: 'measured', lengthMm, matesId: matesOf.get(id) ?? null, slotId: null, where: { at: 'slot' },
          note: [`Out of a box, number ${numbers.get(id) ?? '?'}.`, ...(seen.length > 0 ? [`Seen: ${seen.join(', ')}.`] : []), ...(ground.has(id) ? [`To be ground to ${wordLength(ground.get(id)!, units)}.`] : [])].join(' '),
        },
      })),
      { kind: 'draft', record: draft.id, fields: { state: 'kept', checkId } },
    ],
    checks: [{ ...body, id: checkId }],
    events: becomes.flatMap(([kind, few]) => few.map((bar) => ({ bar, kind, undoes: null, note: '' }))),
  }
}
