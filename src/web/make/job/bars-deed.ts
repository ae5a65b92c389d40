import type { JobView } from '#engine/make/job/job-view.ts'
import { barsToBe } from '#engine/make/plan/plan.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { JobRecord } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import type { MadeBar } from '#model/make-step.ts'
import { newCode, newId } from '#web/new-id.ts'
import { shopNow } from '#web/shop-store.ts'
import { unitsIn } from '#web/units.ts'
import type { Doing, Edit } from '#web/write.ts'

/** The letters that mates of one height are told apart by; beyond them numbers. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

/**
 * All bars of a job in the rack, in work, with names to mark on them: `30 A1` and `30 A2` are mates. Their height is the one they are made for, as if marked,
 * until the plate has said it.
 */
export function barsDeed(job: JobRecord, { order }: JobView): Required<Pick<Doing, 'edits' | 'checks' | 'events'>> & { readonly made: MadeBar[] } {
  const units = unitsIn(shopNow().shop, null), toBe = barsToBe(order), mates = [...new Set(toBe.map(({ matesId }) => matesId))], made: MadeBar[] = []
  const edits: Edit[] = mates.flatMap((old): Edit[] => {
    const [first] = toBe.filter(({ matesId }) => matesId === old), heightMm = first!.heightMm, at = mates.filter((one) => one.split('/')[0] === old.split('/')[0]).indexOf(old), matesId = newId()
    const name = `${wordLength(heightMm, units)} ${letters[at] ?? at + 1}`
    const bars = toBe.filter(({ matesId: one }) => one === old).map((_one, k): Edit => {
      const id = newId()
      made.push({ id, heightMm, matesId })
      return { kind: 'bar', record: id, fields: { code: newCode(), name: `${name}${k + 1}`, thicknessMm: order.thicknessMm, thicknessStanding: 'marked', lengthMm: order.lengthMm, matesId, slotId: null, where: { at: 'slot' }, note: job.name } }
    })
    return [{ kind: 'mates', record: matesId, fields: { name, note: '' } }, ...bars]
  })
  return {
    made, edits,
    checks: [{ method: 'stated', replaces: null, ...nothingTaken, readings: made.map(({ id, heightMm }) => ({ bar: id, station: 0, xMm: null, ...onTheFirstLine, text: wordLength(heightMm, units, { fractions: false }), heightMm })), note: '' }],
    events: made.flatMap(({ id }) => (['added', 'in work'] as const).map((kind) => ({ bar: id, kind, undoes: null, note: '' }))),
  }
}
