import type { CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { Machine } from '#model/machine.ts'
import type { Making } from '#model/making.ts'
import type { MakingSteel } from '#model/making-steel.ts'
import type { MakeStep } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import type { Cost, Expected, RouteKind } from '#model/route.ts'
import { isCutOnly, isHardened } from '#engine/make/blanks/blanks-for.ts'
import { furnaceSteps, machineOf } from '#engine/make/route/step-list.ts'
import { worstOf } from '#engine/make/route/expected.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** mm, and length over thickness: beyond it hardened bars bow much. Common practice, no source. */
const thinMm = 6, thinRatio = 25

/** Sections beyond which one for each height is a burden. Common practice, no source. */
const manySections = 3

export type Considered = {
  readonly kind: RouteKind
  readonly order: Order
  readonly making: Making
  readonly steps: readonly MakeStep[]
  readonly cuts: CutList | null
  readonly steel: MakingSteel | null
  readonly expected: Expected
  readonly cost: Cost
  readonly days: number
}

/** What is missing, so that the route cannot be gone at all. */
export function missing({ kind, order, making, steps, cuts, steel }: Considered): readonly Finding[] {
  if (kind === 'bought') return making.bought === null ? [{ code: 'not-offered', facts: {} }] : []
  const outside = making.hardening !== null, has = (machine: string) => making.machines.some((one) => one.kind === machine)
  const machines = new Set(steps.flatMap(({ kind: step }) => (step === 'square the ends' || (furnaceSteps.includes(step) && outside) ? [] : (machineOf[step] ?? []))))
  const lacking = [...machines].filter((machine) => !has(machine)), longMm = Math.max(...steps.flatMap(({ sizes }) => sizes.map(({ size }) => size.lengthMm)), order.lengthMm)
  const takes = ({ longestMm }: Machine) => longestMm === null || longestMm >= longMm - touchMm
  const tooShort = making.machines.filter((one) => machines.has(one.kind) && one.kind !== 'saw' && !takes(one) && !making.machines.some((other) => other.kind === one.kind && takes(other)))
  return [
    ...lacking.map((machine) => ({ code: 'machine-missing', facts: { machine } })),
    ...tooShort.map(({ name, longestMm }) => ({ code: 'machine-too-short', facts: { machine: name, longestMm, lengthMm: longMm } })),
    ...(kind === 'hard milled' && has('mill') && !making.machines.some(({ hardMilling }) => hardMilling) ? [{ code: 'mill-not-for-hard', facts: {} }] : []),
    ...(isHardened(kind) && steel === null ? [{ code: 'no-steel-to-harden', facts: {} }] : []),
    ...tooHard(order, isHardened(kind) ? steel : null),
    ...(cuts !== null && cuts.short.length > 0 ? [{ code: 'stock-missing', facts: { heightsMm: cuts.short.map(({ heightMm }) => heightMm), bars: cuts.short.reduce((sum, { count }) => sum + count, 0) } }] : []),
  ]
}

function tooHard({ hrc }: Order, steel: MakingSteel | null): readonly Finding[] {
  const highestHrc = steel?.hardening?.hrcTo ?? null
  return hrc === null || highestHrc === null || hrc <= highestHrc ? [] : [{ code: 'harder-than-published', facts: { steel: steel!.name, askedHrc: hrc, highestHrc, source: steel!.source } }]
}

/** Where the route can be gone and still does not give what is asked. */
export function shortOf({ kind, order, making, expected, days, cuts }: Considered): readonly Finding[] {
  const limitUm = making.limitsUm[order.use], { countOnUm, carefulUm } = worstOf(expected), softest = hardnessOf(kind, making, cuts)
  return [
    ...(carefulUm === null && countOnUm === null ? [{ code: 'accuracy-not-known', facts: { use: order.use, limitUm } }] : []),
    ...(carefulUm !== null && carefulUm > limitUm + touchMm && (countOnUm === null || countOnUm > limitUm + touchMm) ? [{ code: 'use-not-reached', facts: { use: order.use, limitUm, worstUm: carefulUm } }] : []),
    ...(order.hrc !== null && softest !== null && softest < order.hrc ? [{ code: 'softer-than-asked', facts: { askedHrc: order.hrc, givenHrc: softest } }] : []),
    ...(making.daysLeft !== null && days > making.daysLeft ? [{ code: 'too-late', facts: { days, daysLeft: making.daysLeft } }] : []),
  ]
}

/** What speaks against it without ruling it out. */
export function drawbacks({ kind, order, making, expected, cuts, cost }: Considered): readonly Finding[] {
  const limitUm = making.limitsUm[order.use], { countOnUm, carefulUm } = worstOf(expected), bought = making.bought?.cost ?? null
  const isThin = order.thicknessMm <= thinMm + touchMm || order.lengthMm / order.thicknessMm > thinRatio
  return [
    ...((countOnUm === null || countOnUm > limitUm + touchMm) && carefulUm !== null && carefulUm <= limitUm + touchMm ? [{ code: 'only-with-care', facts: { use: order.use, limitUm, countOnUm, carefulUm } }] : []),
    ...(isCutOnly(kind) ? sectionsFinding(order.heightsMm.length, cost.stock, bought) : []),
    ...(kind !== 'bought' && !isCutOnly(kind) && cost.total !== null && bought !== null && cost.total > bought ? [{ code: 'dearer-than-buying', facts: { cost: cost.total, boughtCost: bought } }] : []),
    ...(isCutOnly(kind) ? [{ code: 'mates-from-one-bar-only', facts: {} }] : []),
    ...(kind === 'as drawn' || kind === 'milled' || kind === 'rubbed' ? [{ code: 'soft-bars-dent', facts: {} }] : []),
    ...((kind === 'milled' || kind === 'rubbed') && usedOf(making, cuts).some(({ condition }) => condition === 'drawn') ? [{ code: 'drawn-steel-bows', facts: {} }] : []),
    ...(kind === 'rubbed' ? [{ code: 'rubbing-rounds-ends', facts: {} }] : []),
    ...(isHardened(kind) && isThin ? [{ code: 'thin-bars-bow', facts: { thicknessMm: order.thicknessMm, lengthMm: order.lengthMm } }] : []),
    ...(isHardened(kind) && !making.machines.some((one) => one.kind === 'furnace') && making.hardening !== null ? [{ code: 'goes-back-to-temper', facts: {} }] : []),
    ...(isHardened(kind) && !making.faces ? [{ code: 'faces-only-straightened', facts: {} }] : []),
    ...(kind === 'bought' && (making.bought?.matchUm ?? null) === null ? [{ code: 'no-certificate', facts: {} }] : []),
    ...(expected.checks > 0 && expected.match.countOn.standing !== 'shop' && kind !== 'bought' ? [{ code: 'few-own-checks', facts: { checks: expected.checks } }] : []),
    ...(cuts?.findings.filter(({ code }) => code === 'rolled-skin-comes-off') ?? []),
    ...(cost.unpriced.length > 0 ? [{ code: 'not-priced', facts: { what: cost.unpriced } }] : []),
  ]
}

function sectionsFinding(sections: number, stockCost: number | null, boughtCost: number | null): readonly Finding[] {
  if (stockCost !== null && boughtCost !== null && stockCost > boughtCost) return [{ code: 'stock-dearer-than-set', facts: { sections, stockCost, boughtCost } }]
  return sections > manySections ? [{ code: 'section-for-each-height', facts: { sections } }] : []
}

/** The softest of what comes out, in HRC; 0 where it is soft steel, null where it is hardened here or nobody says. */
function hardnessOf(kind: RouteKind, { steels, lengths, plates }: Making, cuts: CutList | null): number | null {
  if (isHardened(kind) || kind === 'bought') return null
  const hrcs = usedOf({ lengths, plates }, cuts).map(({ steel, condition }) => (condition.startsWith('prehardened') ? (steels.find(({ name }) => name === steel)?.deliveredHrc ?? 0) : 0))
  return hrcs.length === 0 ? null : hrcs.reduce((a, b) => Math.min(a, b))
}

/** The stock that blanks come out of. */
const usedOf = ({ lengths, plates }: Pick<Making, 'lengths' | 'plates'>, cuts: CutList | null) => [...lengths, ...plates].filter(({ id }) => cuts?.takings.some(({ stockId }) => stockId === id) ?? false)
