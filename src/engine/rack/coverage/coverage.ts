import type { CoverageQuestion } from '#engine/rack/coverage/coverage-question.ts'
import { type Gap, gapsOf } from '#engine/rack/coverage/gaps.ts'
import { type NextHeights, nextHeightsOf } from '#engine/rack/coverage/next-heights.ts'
import { newPairPlaced, placedFor } from '#engine/rack/coverage/placed-for.ts'
import { servingOf } from '#engine/rack/coverage/serving.ts'
import { type Want, wantsOf } from '#engine/rack/coverage/wants.ts'
import type { RackIndex } from '#engine/setup/index-rack.ts'

/** Why nothing serves a setup, the nearest to being served first. */
const whyNots = ['no-place', 'bars-too-thick', 'no-bar-of-height', 'only-above-advice', 'no-height-serves', 'wider-than-vises'] as const
export type WhyNot = (typeof whyNots)[number]

/** Of so many setups so many are served, each as often as it comes; share null where there are none. */
export type Share = { readonly setups: number; readonly served: number; readonly share: number | null }

export type Coverage = Share & {
  /** Setups, by their places in the question, that nothing serves in any vise. */
  readonly unserved: readonly { readonly setup: number; readonly why: WhyNot }[]
  /** For each vise the setups that are for it or for any, those served in it, and where bars are missing for setups that are served nowhere. */
  readonly vises: readonly (Share & { readonly id: string; readonly gaps: readonly Gap[] })[]
  /** The same for setups whose heights were given, which name no vise. */
  readonly gaps: readonly Gap[]
  readonly next: readonly NextHeights[]
}

/**
 * How much of a shop's work its rack serves, where it fails, and which heights to own next.
 *
 * A setup is served when one vise it is for has bars for it, judged by height, match, thickness and trust, and with `places` where it has cuts, by
 * whether they find a place clear of them. One bar more never makes it less.
 *
 * @throws Refusal `too-many` where the steps of what one could get are too fine
 * @source SETUP-RULES
 */
export function coverageOf(question: CoverageQuestion, rack: RackIndex): Coverage {
  const { setups, vises, ways } = question, timesOf = (setup: number) => setups[setup]!.times
  const servedIn = vises.map(() => 0), unserved: { readonly setup: number; readonly why: WhyNot }[] = [], open: Want[] = []
  let served = 0
  for (let setup = 0; setup < setups.length; setup += 1) {
    const wants = wantsOf(question, setups[setup]!, setup), misses: WhyNot[] = [], missed: Want[] = []
    const isPlaced = placedFor(question, setup, rack)
    for (const want of wants) {
      if (typeof want === 'string') {
        misses.push(want)
        continue
      }
      const serving = servingOf(rack, ways, want, isPlaced)
      if (serving === 'served') {
        if (want.vise !== null) servedIn[want.vise]! += timesOf(setup)
        continue
      }
      misses.push(missNames[serving])
      missed.push(want)
    }
    if (misses.length < wants.length) {
      served += timesOf(setup)
      continue
    }
    unserved.push({ setup, why: whyNots.find((why) => misses.includes(why)) ?? 'wider-than-vises' })
    open.push(...missed)
  }
  const asked = (viseId: string) => setups.reduce((sum, setup) => sum + ('lowMm' in setup.asked || (setup.viseId ?? viseId) !== viseId ? 0 : setup.times), 0)
  return {
    ...shareOf(setups.reduce((sum, { times }) => sum + times, 0), served), unserved,
    vises: vises.map(({ id }, k) => ({ id, ...shareOf(asked(id), servedIn[k]!), gaps: gapsOf(open.filter(({ vise }) => vise === k), timesOf) })),
    gaps: gapsOf(open.filter(({ vise }) => vise === null), timesOf),
    next: nextHeightsOf(question, open.filter(({ setup }) => newPairPlaced(question, setup))),
  }
}

const missNames = { 'no-place': 'no-place', 'too-thick': 'bars-too-thick', 'none': 'no-bar-of-height' } as const

const shareOf = (setups: number, served: number): Share => ({ setups, served, share: setups === 0 ? null : served / setups })
