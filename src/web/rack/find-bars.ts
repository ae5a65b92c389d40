import { finderOf } from '#engine/rack/find.ts'
import type { Units } from '#model/shop-record.ts'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'

/** Finds the groups with a bar that is meant by what was typed; made ready once for a rack, so that ten thousand bars answer between two keys. */
export function groupFinder(groups: readonly RackGroup[], units: Units): (typed: string) => readonly RackGroup[] {
  const bars = groups.flatMap((group) => group.bars.map((bar) => ({ bar, group }))), find = finderOf(bars.map(({ bar }) => findable(bar)), units)
  return (typed) => {
    if (typed.trim() === '') return groups
    const found = new Set(find(typed).map((k) => bars[k]!.group))
    return groups.filter((group) => found.has(group))
  }
}

const findable = ({ record: { code, name, thicknessMm, lengthMm }, heightMm, calledMm, standing, trust, condition, mates, slot, elsewhere, overdue, orphan }: RackBar) => ({
  code, name, thicknessMm, lengthMm, heightMm, calledMm, standing, trust, mates: orphan ? null : mates && mates.name, slot: slot && slot.name, elsewhere,
  more: [...(overdue ? ['overdue'] : []), ...(orphan ? ['orphan'] : []), ...(condition.magnetised ? ['magnetised'] : []), ...(elsewhere === null ? [] : ['out']), ...condition.open],
})
