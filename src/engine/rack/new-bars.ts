import type { BarEvent } from '#model/bar-event.ts'
import type { BarFields } from '#model/bar-record.ts'
import type { By } from '#model/change.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { Deed } from '#model/deed.ts'
import { firstChange } from '#model/record-fields.ts'

/** A bar as it comes into the shop: its height as marked, `look first` or to be drilled into. */
export type NewBar = Pick<BarFields, 'code' | 'name' | 'thicknessMm' | 'lengthMm' | 'matesId' | 'slotId' | 'note'> & {
  readonly id: string
  readonly heightMm: number
  /** The height as it was typed or printed. */
  readonly heightText: string
  readonly drillBar: boolean
}

/** A check takes so many readings. */
const mostReadings = 5000

/**
 * What is written down when bars come in, bought, made elsewhere or imported: each with all its fields, one stated
 * reading of its height and its first event. None is trusted, no size of theirs counts as measured.
 *
 * @param newBars  their mates and slots are added beside this
 */
export function deedOfNewBars(newBars: readonly NewBar[], by: By): Deed {
  const stamp = () => ({ id: by.newId(), person: by.person, device: by.device, atIso: by.atIso })
  const event = (bar: string, kind: BarEvent['kind']): BarEvent => ({ ...stamp(), bar, kind, undoes: null, note: '' })
  const checks: Check[] = []
  for (let from = 0; from < newBars.length; from += mostReadings) {
    const readings = newBars.slice(from, from + mostReadings)
      .map(({ id, heightMm, heightText }) => ({ bar: id, station: 0, xMm: null, ...onTheFirstLine, text: heightText.slice(0, 40), heightMm }))
    checks.push({ ...stamp(), method: 'stated', replaces: null, ...nothingTaken, note: '', readings })
  }
  return {
    changes: newBars.map(({ id, heightMm: _heightMm, heightText: _heightText, drillBar: _drillBar, ...bar }) =>
      firstChange('bar', id, { ...bar, thicknessStanding: 'marked', where: { at: 'slot' } }, by)),
    checks,
    events: newBars.flatMap(({ id, drillBar }) => [event(id, 'added'), ...(drillBar ? [event(id, 'made drill bar')] : [])]),
  }
}
