import type { HeightsWanted, LengthWanted, OrderWanted } from '#model/order.ts'
import { Refusal } from '#model/refusal.ts'
import { uses } from '#model/wishes.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { mostHeights } from '#engine/make/order/order.ts'

/** mm. The top height below the jaw, and the length under its width, where nobody says. Common practice, no source. */
const topBelowMm = 0.5, underJawMm = 1, lowestMm = 5

/** HRC beyond which no steel for bars goes; above it a slip of the pen. */
const mostHrc = 70

/** An order as it stands in a raw case; the stand-ins of the reader stay in it and never get past `readCase`. */
export function readOrder(raw: RawObject): OrderWanted {
  return {
    heights: raw.object('heights', readHeights) ?? { by: 'list', heightsMm: [] },
    length: raw.object('length', readLength) ?? { by: 'length', lengthMm: NaN },
    thicknessMm: raw.number('thicknessMm'),
    pairs: raw.countOr('pairs', 1), vises: raw.countOr('vises', 1),
    use: raw.word('use', uses) ?? 'milling',
    hrc: raw.numberOr('hrc', null, mostHrc),
    dueDay: raw.has('dueDay') ? raw.text('dueDay') : null,
  }
}

function readHeights(raw: RawObject): HeightsWanted {
  const by = raw.word('by', ['list', 'ladder', 'jaw'])
  if (by === 'ladder') return { by, fromMm: raw.number('fromMm'), toMm: raw.number('toMm'), stepMm: raw.number('stepMm') }
  if (by === 'jaw') return { by, jawHeightMm: raw.number('jawHeightMm'), belowMm: raw.numberOr('belowMm', topBelowMm), stepMm: raw.number('stepMm'), lowestMm: raw.numberOr('lowestMm', lowestMm) }
  return { by: 'list', heightsMm: raw.numbers('heightsMm', undefined, mostHeights) }
}

function readLength(raw: RawObject): LengthWanted {
  const by = raw.word('by', ['length', 'jaw'])
  if (by === 'jaw') return { by, jawWidthMm: raw.number('jawWidthMm'), underMm: raw.numberOr('underMm', underJawMm) }
  return { by: 'length', lengthMm: raw.number('lengthMm') }
}

/** @throws Refusal `bad-day` where the day does not stand in the calendar as `2026-03-04` */
export function refuseBadDay({ dueDay }: OrderWanted): void {
  if (dueDay === null) return
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(dueDay) ?? [], isLeap = Number(year) % 4 === 0 && (Number(year) % 100 !== 0 || Number(year) % 400 === 0)
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][Number(month) - 1]
  if (days === undefined || Number(day) < 1 || Number(day) > days) throw new Refusal('bad-day', { field: 'dueDay', given: dueDay, needed: 'a day such as 2026-03-04' })
}
