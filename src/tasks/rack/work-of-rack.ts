import { barsFrom } from '#engine/rack/bar-from.ts'
import { type Coverage, coverageOf } from '#engine/rack/coverage/coverage.ts'
import { type TriedSet, tryASet } from '#engine/rack/coverage/try-a-set.ts'
import { type WorkLine, type WorkOfShop, workOfShop } from '#engine/rack/coverage/work-of-shop.ts'
import { type LadderPlan, ladderForVise } from '#engine/rack/ladder-for-vise.ts'
import { type RegrindOfShop, regrindOfShop } from '#engine/rack/regrind/regrind-of-shop.ts'
import { lowFrom, type RegrindTyped, usualRegrind, wishFrom } from '#engine/rack/regrind/regrind-typed.ts'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import type { Bar } from '#model/bar.ts'
import { type LengthUnit, readLengthMm, readSizeMm } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { unservedOf } from '#store/unserved.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'
import { viseNamed } from '#tasks/setup/vise-named.ts'

/** How to count, as typed. Left out: all vises, no stacks, not lying flat, steps of half a millimetre, thin enough for any part, three heights. */
export type CountAsked = {
  readonly vise?: string
  readonly stacks?: boolean
  readonly flat?: boolean
  readonly step?: string
  readonly thickness?: string
  readonly most?: number
  readonly unit?: LengthUnit
}

/** What is missing, each unserved line of work by its title. */
export type Missing = Omit<Coverage, 'vises'> & {
  readonly work: { readonly setups: number; readonly unserved: number; readonly typical: number; readonly unread: number }
  readonly vises: readonly (Coverage['vises'][number] & { readonly name: string })[]
  readonly lines: readonly (WorkLine & { readonly title: string; readonly vise: string })[]
}

export type SetAsked = CountAsked & { readonly from: string; readonly to: string; readonly setStep: string; readonly setThickness: string; readonly setLength: string }

/** What the shop's work asks for and its rack does not have. @throws Refusal as `viseNamed`, of what was typed, and as `coverageOf` */
export function whatIsMissing(store: Store, asked: CountAsked = {}): Promise<Missing> {
  return atOneMoment(store, async (tx) => {
    const { work: { question, lines, unread }, bars, names } = await workOf(tx, asked), coverage = coverageOf(question, indexRack(bars))
    const count = (from: WorkLine['from']) => lines.filter((line) => line.from === from).length
    return {
      ...coverage, work: { setups: count('setup'), unserved: count('unserved'), typical: count('typical'), unread },
      vises: coverage.vises.map((vise) => ({ ...vise, name: names.vise(vise.id) })),
      lines: lines.map((line, k) => ({ ...line, title: line.from === 'setup' ? names.setup(line.id) : '', vise: names.vise(question.setups[k]!.viseId ?? '') })),
    }
  })
}

/** A set before it is bought. @throws Refusal of what was typed, and as `tryASet` */
export function trySetOfShop(store: Store, asked: SetAsked): Promise<TriedSet> {
  return atOneMoment(store, async (tx) => {
    const { work, bars, units } = await workOf(tx, asked), size = (text: string, field: string) => readSizeMm(text, asked.unit ?? units.length, field)
    return tryASet(work.question, bars, {
      fromMm: size(asked.from, 'from'), toMm: size(asked.to, 'to'), stepMm: size(asked.setStep, 'step'), thicknessMm: size(asked.setThickness, 'thickness'), lengthMm: size(asked.setLength, 'length'),
    })
  })
}

export type RegrindAsked = {
  /** Ids or codes; one with `=15` behind it comes out 15 µm lower than the others. */
  readonly bars: readonly string[]
  readonly faces?: 1 | 2
  readonly datumFace?: 'A' | 'B'
  readonly cleanUpUm?: number
  readonly stepUm?: number
  readonly sparkOut?: number
}

/** Worn bars to one new height, and what that will serve. @throws Refusal `bar-not-known`, `height-not-measured`, `not-a-number`, and as `regrindOf` */
export function regrindBars(store: Store, asked: RegrindAsked): Promise<RegrindOfShop> {
  return atOneMoment(store, async (tx) => {
    const { work, bars } = await workOf(tx, {}), { ids, typed, low } = await regrindTyped(tx, asked)
    return regrindOfShop(ids, bars, work.question, { ...wishFrom(typed), lowUm: lowFrom(low) })
  })
}

/** What was asked as the form of a regrind has it: the bars by their ids, the rest as typed. @throws Refusal `bar-not-known` */
export async function regrindTyped(tx: Store, { bars, faces, datumFace, cleanUpUm, stepUm, sparkOut }: RegrindAsked): Promise<{ readonly ids: readonly string[]; readonly typed: RegrindTyped; readonly low: { readonly [bar: string]: string } }> {
  const named = await Promise.all(bars.map(async (text) => { const [name = '', low = ''] = text.split('='); return [(await barNamed(tx, name)).id, low] as const }))
  const text = (value: number | undefined, usual: string) => (value === undefined ? usual : String(value))
  return {
    ids: named.map(([id]) => id), low: Object.fromEntries(named),
    typed: { ...usualRegrind, faces: faces === 2 ? '2' : '1', datum: datumFace ?? '', cleanUp: text(cleanUpUm, usualRegrind.cleanUp), step: text(stepUm, ''), sparkOut: text(sparkOut, usualRegrind.sparkOut) },
  }
}

/** A ladder for one vise, sizes as typed; left out: the top 1 under the jaw, from 5 up, 1 shorter than the jaws, one vise, for milling, with what the rack has left out. */
export type LadderAsked = {
  readonly vise?: string
  readonly step: string
  readonly thickness: string
  readonly below?: string
  readonly lowest?: string
  readonly under?: string
  readonly vises?: number
  readonly whole?: boolean
  readonly unit?: LengthUnit
}

/** A whole ladder of heights for a vise, as an order for Make. @throws Refusal of what was typed, as `viseNamed` and `ladderForVise` */
export function ladderOfShop(store: Store, { vise, vises = 1, whole = false, unit, ...typed }: LadderAsked): Promise<LadderPlan> {
  return atOneMoment(store, async (tx) => {
    const facts = await rackFactsOf(tx), mm = (text: string, field: string) => readLengthMm(text, unit ?? facts.shop.units.length, field)
    return ladderForVise(viseFrom(await viseNamed(tx, vise ?? null)), barsFrom(facts, { viseId: null }), {
      stepMm: mm(typed.step, 'step'), thicknessMm: mm(typed.thickness, 'thickness'), belowMm: typed.below === undefined ? usualBelowMm : mm(typed.below, 'below'), lowestMm: typed.lowest === undefined ? usualLowestMm : mm(typed.lowest, 'lowest'),
      underMm: typed.under === undefined ? usualUnderMm : mm(typed.under, 'under'), vises, use: 'milling', hrc: null, dueDay: null, leaveOwned: !whole,
    })
  })
}

/** mm. Common practice, no source. */
const usualBelowMm = 1, usualLowestMm = 5, usualUnderMm = 1

type Worked = { readonly work: WorkOfShop; readonly bars: readonly Bar[]; readonly units: Units; readonly names: { readonly vise: (id: string) => string; readonly setup: (id: string) => string } }

async function workOf(tx: Store, { vise, stacks = false, flat = false, step, thickness, most = 3, unit }: CountAsked): Promise<Worked> {
  const facts = await rackFactsOf(tx), { units } = facts.shop, vises = await recordsOf(tx, 'vise'), mm = (text: string, field: string) => readSizeMm(text, unit ?? units.length, field)
  const stepMm = step === undefined ? 0.5 : mm(step, 'step')
  const work = workOfShop({ vises, setups: facts.setups, unserved: await unservedOf(tx), shop: facts.shop }, {
    viseId: vise === undefined ? null : (await viseNamed(tx, vise)).id, stacks, flat,
    next: { stepMm, lowestMm: stepMm, thicknessMm: thickness === undefined ? null : mm(thickness, 'thickness'), most },
  })
  const viseNames = new Map(vises.map(({ id, name }) => [id, name])), titles = new Map(facts.setups.map(({ id, title, operation }) => [id, [title, operation].filter((text) => text !== '').join(', ')]))
  return { work, bars: barsFrom(facts, { viseId: null }), units, names: { vise: (id) => viseNames.get(id) ?? '', setup: (id) => titles.get(id) ?? '' } }
}
