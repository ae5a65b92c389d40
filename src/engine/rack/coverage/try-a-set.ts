import type { Bar } from '#model/bar.ts'
import { Refusal } from '#model/refusal.ts'
import type { CoverageQuestion } from '#engine/rack/coverage/coverage-question.ts'
import { coverageOf, type Coverage, type Share } from '#engine/rack/coverage/coverage.ts'
import { heightOf, ladderTo } from '#engine/rack/heights/ladder.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A set of pairs as a box has it, its heights `fromMm` to `toMm` in steps. */
export type SetTried = { readonly fromMm: number; readonly toMm: number; readonly stepMm: number; readonly thicknessMm: number; readonly lengthMm: number }

export type TriedSet = {
  readonly heightsMm: readonly number[]
  /** With what the shop owns, with the set besides, and with the set alone. */
  readonly now: Share
  readonly withSet: Share
  readonly setAlone: Share
  /** Heights that serve something in the set alone; the others stand in the box. */
  readonly usefulMm: readonly number[]
  /** In each vise: heights that stand at or above the lower jaw, and whether the bars are longer than the jaws are wide; null where nobody said how wide. */
  readonly vises: readonly { readonly id: string; readonly tooHighMm: readonly number[]; readonly tooLong: boolean | null }[]
  readonly coverage: Coverage
}

const mostHeights = 200

/**
 * A set before it is bought, as if owned: pairs that match, measured and trusted.
 *
 * @param bars  of the shop
 * @throws Refusal `size-not-positive`, `ladder-upside-down`, `too-many` (heights)
 */
export function tryASet(question: CoverageQuestion, bars: readonly Bar[], set: SetTried): TriedSet {
  const heightsMm = heightsOfSet(set), boxed = heightsMm.flatMap((heightMm, k) => pairOf(heightMm, k, set))
  const share = ({ setups, served, share: of }: Share): Share => ({ setups, served, share: of }), none = { ...question, next: { ...question.next, most: 0 } }
  const coverage = coverageOf(question, indexRack([...bars, ...boxed])), alone = coverageOf(none, indexRack(boxed))
  return {
    heightsMm, now: share(coverageOf(none, indexRack(bars))), withSet: share(coverage), setAlone: share(alone), coverage,
    usefulMm: heightsMm.filter((heightMm, k) => coverageOf(none, indexRack(pairOf(heightMm, k, set))).served > bedAlone(none)),
    vises: question.vises.map(({ id, jawHeightMm, lowerJawHeightMm = jawHeightMm, jawWidthMm }) => ({
      id, tooHighMm: heightsMm.filter((mm) => mm >= Math.min(jawHeightMm, lowerJawHeightMm) - touchMm), tooLong: jawWidthMm === undefined ? null : set.lengthMm > jawWidthMm + touchMm,
    })),
  }
}

const bedAlone = (question: CoverageQuestion): number => coverageOf(question, indexRack([])).served

function heightsOfSet({ fromMm, toMm, stepMm, thicknessMm, lengthMm }: SetTried): readonly number[] {
  for (const [field, given] of Object.entries({ fromMm, toMm, stepMm, thicknessMm, lengthMm })) if (!(given > touchMm)) throw new Refusal('size-not-positive', { field, given, needed: { aboveMm: 0 } })
  if (toMm < fromMm - touchMm) throw new Refusal('ladder-upside-down', { field: 'toMm', given: toMm, needed: { leastMm: fromMm } })
  const ladder = ladderTo(fromMm, stepMm, [[fromMm, toMm]])
  if (ladder.rungs > mostHeights) throw new Refusal('too-many', { field: 'stepMm', given: ladder.rungs, needed: mostHeights })
  return Array.from({ length: ladder.rungs }, (_, rung) => heightOf(ladder, rung))
}

const pairOf = (heightMm: number, k: number, { thicknessMm, lengthMm }: SetTried): readonly Bar[] => ['a', 'b'].map((side): Bar => ({
  id: `tried-${k}-${side}`, heightMm, thicknessMm, lengthMm, mates: `tried-${k}`, trust: 'trusted', standing: 'measured', thicknessStanding: 'measured', where: 'slot',
}))
