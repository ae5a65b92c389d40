import { Refusal } from '#model/refusal.ts'
import { bestHeights } from '#engine/rack/coverage/best-heights.ts'
import type { CoverageQuestion } from '#engine/rack/coverage/coverage-question.ts'
import { goesUnder, type Want } from '#engine/rack/coverage/wants.ts'
import { heightOf, type HeightWindow, type Ladder, ladderTo, rungsIn } from '#engine/rack/heights/ladder.ts'

/**
 * Heights to own next: so many, rising, with how far each may be moved and still serve those that only it gains. `gained` counts
 * setups, each as often as it comes. `optimal`: no other so many gain more; `gap`: at most `bound`.
 */
export type NextHeights = {
  readonly count: number
  readonly heightsMm: readonly number[]
  readonly rangesMm: readonly HeightWindow[]
  readonly gained: number
  readonly status: 'optimal' | 'gap'
  readonly bound: number
}

/** The best one, two, three … heights, as long as one more gains something. @throws Refusal `too-many` (heights that one could get) */
export function nextHeightsOf({ ways, setups, next }: CoverageQuestion, wants: readonly Want[]): readonly NextHeights[] {
  const ladder = ladderFor(next, wants)
  const open = wants.filter(({ room }) => goesUnder(room, ways, next.thicknessMm)), rungs = worthwhileRungs(ladder, open)
  const at = new Map(rungs.map(({ rung }, k) => [rung, k])), found: NextHeights[] = []
  if (at.size === 0) return []
  const times = setups.map((setup) => setup.times), serves = rungs.map(({ wants: of }) => [...new Set(of.map(({ setup }) => setup))])
  for (let count = 1; count <= next.most; count += 1) {
    const { chosen, gained, bound } = bestHeights({ serves, times }, count)
    if (chosen.length < count) break
    found.push({
      count, heightsMm: chosen.map((k) => heightOf(ladder, rungs[k]!.rung)), rangesMm: chosen.map((k) => rangeOf(k, chosen)),
      gained, status: bound === gained ? 'optimal' : 'gap', bound,
    })
  }
  return found

  /** What the setups have in common that no other chosen height serves. */
  function rangeOf(k: number, chosen: readonly number[]): HeightWindow {
    const elsewhere = new Set(chosen.filter((other) => other !== k).flatMap((other) => serves[other]!))
    const spans = new Map<number, HeightWindow>()
    for (const { setup, lowMm, highMm } of rungs[k]!.wants) {
      if (elsewhere.has(setup)) continue
      const [low, high] = spans.get(setup) ?? [lowMm, highMm]
      spans.set(setup, [Math.min(low, lowMm), Math.max(high, highMm)])
    }
    return [Math.max(...[...spans.values()].map(([low]) => low)), Math.min(...[...spans.values()].map(([, high]) => high))]
  }
}

const mostRungs = 20_000

function ladderFor({ stepMm, lowestMm }: CoverageQuestion['next'], wants: readonly Want[]): Ladder {
  const ladder = ladderTo(lowestMm, stepMm, wants.map(({ lowMm, highMm }) => [lowMm, highMm]))
  if (ladder.rungs > mostRungs) throw new Refusal('too-many', { field: 'next.stepMm', given: ladder.rungs, needed: mostRungs })
  return ladder
}

type Rung = { readonly rung: number; readonly wants: readonly Want[] }

/** Rungs that serve something no neighbour serves as well: those at which a window ends, if one began since the last of them. */
function worthwhileRungs(ladder: Ladder, wants: readonly Want[]): readonly Rung[] {
  const spans = wants.map((want) => ({ want, ...rungsIn(ladder, [want.lowMm, want.highMm]) })).filter(({ first, last }) => first <= last).sort((a, b) => a.first - b.first)
  const rungs: Rung[] = []
  let open: typeof spans = [], next = 0
  for (const rung of [...new Set(spans.map(({ last }) => last))].sort((a, b) => a - b)) {
    const before = next
    while (next < spans.length && spans[next]!.first <= rung) next += 1
    open = [...open, ...spans.slice(before, next)]
    if (next > before) rungs.push({ rung, wants: open.map(({ want }) => want) })
    open = open.filter(({ last }) => last > rung)
  }
  return rungs
}
