import { type Finder, finderOf } from '#engine/rack/find.ts'
import type { Units } from '#model/shop-record.ts'
import type { RackGroup } from '#web/rack/rack-bars.ts'

/** The groups with a bar that is meant by what was typed, as `finderOf` understands it; made ready once for each list. */
export function findBars(groups: readonly RackGroup[], typed: string, units: Units): readonly RackGroup[] {
  if (typed.trim() === '') return groups
  const { finder, groupOf } = readyFor(groups, units), wanted = new Set(finder(typed).map((k) => groupOf[k]!))
  return groups.filter((_, at) => wanted.has(at))
}

type Ready = { readonly units: Units; readonly finder: Finder; readonly groupOf: readonly number[] }

const ready = new WeakMap<readonly RackGroup[], Ready>()

function readyFor(groups: readonly RackGroup[], units: Units): Ready {
  const before = ready.get(groups)
  if (before?.units === units) return before
  const bars = groups.flatMap((group) => group.bars)
  const made: Ready = {
    units, groupOf: groups.flatMap(({ bars: own }, at) => own.map(() => at)),
    finder: finderOf(bars.map(({ record, heightMm, calledMm, standing, trust, mates, slot, elsewhere, overdue, orphan }) => ({
      code: record.code, name: record.name, thicknessMm: record.thicknessMm, lengthMm: record.lengthMm, heightMm, calledMm, standing, trust,
      mates: mates === null ? null : mates.name, slot: slot?.name ?? null, elsewhere, more: [...(overdue ? ['overdue'] : []), ...(orphan ? ['orphan'] : [])],
    })), units),
  }
  ready.set(groups, made)
  return made
}
