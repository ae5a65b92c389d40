import { barsFrom } from '#engine/rack/bar-from.ts'
import { matesTogether } from '#engine/rack/mates-together.ts'
import { type Bar, isFinished, trusts } from '#model/bar.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { calledMm } from '#words/say-bar.ts'
import { trustWords } from '#words/say-place.ts'
import { termsFor } from '#words/terms.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import { namesOf } from '#web/setup/view/rack-names.ts'
import { today } from '#web/today.ts'

/** Two mates that may be used together. */
export type RackPair = {
  readonly id: string; readonly bars: readonly [Bar, Bar]; readonly heightMm: number; readonly thicknessMm: number; readonly label: string; readonly slot: string
  /** What tells its bars from other mates of the same name: their codes; empty where there are no others. */
  readonly marks: string
  /** `, look first` where one of them is; empty for trusted ones. */
  readonly state: string
}

/** The rack seen from no vise: what may be used, by the names people call it. */
export type RackHere = {
  readonly bars: readonly Bar[]; readonly pairs: readonly RackPair[]; readonly labelOf: (id: string) => string; readonly slotOf: (ids: readonly string[]) => string
  /** `, look first, out` of some bars; empty for trusted ones in their slots. */
  readonly stateOf: (bars: readonly Bar[]) => string
}

const trustOf = (bars: readonly Bar[]): string => {
  const worst = trusts.findLast((trust) => trust !== 'trusted' && bars.some((bar) => bar.trust === trust))
  return worst === undefined ? '' : `, ${trustWords[worst]}`
}

/** Bars that are neither gone nor in work, and pairs out of mates that are next to each other in height; lowest first. */
export function rackHere(shop: ShopSnapshot, units: Units): RackHere {
  const bars = barsFrom({ ...shop, today: today() }, { viseId: null }).filter(({ trust }) => isFinished(trust)), known = new Map(bars.map((bar) => [bar.id, bar]))
  const names = namesOf(shop)
  const stateOf = (some: readonly Bar[]): string => {
    const places = new Set(some.map(({ id }) => names.recordOf(id)?.where.at))
    return `${trustOf(some)}${places.has('out') ? ', out' : places.has('vise') ? `, in a ${termsFor(units.words).vise}` : ''}`
  }
  const labelOf = (id: string) => barLabel(id, { names, bars: known }, units), slotOf = (ids: readonly string[]) => names.slotsOf(ids).join(' · ') || '–'
  const pairCalled = (id: string, heightMm: number): string => {
    const name = names.matesOf(id)?.name || names.nameOf(id), height = wordLength(names.markedMm(id) ?? calledMm(heightMm, units), units)
    return name.startsWith(height) ? name : `${height} ${name}`.trim()
  }
  const pairOf = (one: Bar, other: Bar, isAlone: boolean): RackPair => {
    const two = [one, other] as const, ids = two.map(({ id }) => id), heightMm = (one.heightMm + other.heightMm) / 2
    const codes = ids.map((id) => (names.recordOf(id)?.code ?? '').slice(0, 4))
    return {
      id: ids.toSorted().join('+'), bars: two, heightMm, thicknessMm: Math.max(one.thicknessMm, other.thicknessMm),
      label: pairCalled(one.id, heightMm), slot: slotOf(ids), marks: isAlone ? '' : ` ${codes.join(' ')}`, state: trustOf(two),
    }
  }
  const pairs = matesTogether(bars).flatMap((group) => Array.from({ length: Math.floor(group.length / 2) }, (_, k) => pairOf(group[2 * k]!, group[2 * k + 1]!, group.length < 4)))
    .toSorted((a, b) => a.heightMm - b.heightMm)
  return { bars, pairs, labelOf, slotOf, stateOf }
}
