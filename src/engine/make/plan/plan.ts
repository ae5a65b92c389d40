import type { Finding } from '#model/finding.ts'
import { type ActualField, type BarLeft, type MakePlan, type PackDown, type PackLeft, type PlannedStep, type Worked, worked } from '#model/make-plan.ts'
import type { Making } from '#model/making.ts'
import type { Actuals, MadeBar, MakeStep, StepKind } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import { Refusal } from '#model/refusal.ts'
import type { Experience, Route } from '#model/route.ts'
import type { Sum } from '#model/sum.ts'
import { barsLeft, leftFindings, readOf } from '#engine/make/plan/bars-left.ts'
import { fieldsOf } from '#engine/make/plan/fields.ts'
import { packsLeft } from '#engine/make/plan/packs-left.ts'
import { pressesFor } from '#engine/make/plan/presses.ts'
import { refuseIdTwice } from '#engine/read/refuse-twice.ts'

/**
 * What is left of the work once some of it is done: steps with blanks for actual values, what each bar still has on it against what it needs,
 * passes and shims of every pack, and, when all is done, what the shop has learned.
 *
 * @throws Refusal `bar-id-twice`, `height-not-ordered`, `bar-not-in-making`, `step-not-in-route`
 * @source MAKE-RULES
 */
export function planFrom(order: Order, route: Route, making: Making, actuals: Actuals): MakePlan {
  refuseUnfit(order, route, actuals)
  const made = actuals.bars.length > 0 ? actuals.bars : barsToBe(order)
  const steps = stepsNow(route.steps, made, actuals)
  const isToCome = (kind: StepKind) => steps.some((step) => step.kind === kind && step.state !== 'done')
  const sides = worked.filter((side) => (side === 'edges' ? isToCome('grind the edges') || isToCome('hard mill the edges') : isToCome('grind the faces')))
  const bars = sides.flatMap((side) => barsLeft(side, made, route.blanks, making, actuals)), packs = route.kind === 'ground' ? sides.flatMap((side) => packsLeft(side, made, bars, route.blanks, making, actuals)) : []
  return {
    steps, next: steps.find(({ state }) => state === 'next')?.kind ?? null, made, bars, packs, presses: isToCome('straighten') ? pressesFor(route, made, actuals) : [], hours: hoursNow(steps),
    experience: experienceOf(route, made, steps, actuals),
    findings: [...leftFindings(bars, packs, making), ...hardnessFindings(order, route, making, bars.filter(({ side }) => side === 'edges')), ...outsideFindings(steps, sides)],
    sum: [...bars.map((bar) => barSum(bar, making)), ...packs.flatMap((pack) => packSum(pack, making))],
  }
}

/** The steps with how far they are and their blanks. */
export function stepsNow(steps: readonly MakeStep[], made: readonly MadeBar[], actuals: Actuals): readonly PlannedStep[] {
  const next = steps.findIndex(({ kind }) => !actuals.done.some(({ step }) => step === kind))
  return steps.map((step, k): PlannedStep => {
    const done = actuals.done.find((one) => one.step === step.kind)
    return { ...step, state: done !== undefined ? 'done' : k === next ? 'next' : 'open', takenHours: done?.hours ?? null, fields: fieldsOf(step, made, actuals) }
  })
}

export const hoursNow = (steps: readonly PlannedStep[]): MakePlan['hours'] =>
  ({ planned: total(steps.map(({ hours }) => hours)), taken: total(steps.map(({ takenHours }) => takenHours ?? 0)), left: total(steps.map((step) => (step.state === 'done' ? 0 : step.hours))) })

/** As many as are ordered, in pairs, until the saw has given them their own marks: `12/1` and `12/2` are mates. */
export function barsToBe({ heightsMm, each }: Order): readonly MadeBar[] {
  return heightsMm.flatMap((heightMm) => Array.from({ length: each }, (_, k): MadeBar => ({ id: `${heightMm}/${k + 1}`, heightMm, matesId: `${heightMm}/${k - (k % 2) + 1}` })))
}

function refuseUnfit({ heightsMm }: Order, route: Route, { bars, readings, done }: Actuals): void {
  refuseIdTwice(bars, 'actuals.bars')
  bars.forEach(({ heightMm }, k) => { if (!heightsMm.includes(heightMm)) throw new Refusal('height-not-ordered', { field: `actuals.bars[${k}].heightMm`, given: heightMm, needed: heightsMm }) })
  const steps = route.steps.map(({ kind }) => kind)
  readings.forEach(({ bar, step }, k) => {
    if (!bars.some(({ id }) => id === bar)) throw new Refusal('bar-not-in-making', { field: `actuals.readings[${k}].bar`, given: bar })
    if (!steps.includes(step)) throw new Refusal('step-not-in-route', { field: `actuals.readings[${k}].step`, given: step, needed: steps })
  })
  done.forEach(({ step }, k) => { if (!steps.includes(step)) throw new Refusal('step-not-in-route', { field: `actuals.done[${k}].step`, given: step, needed: steps }) })
}

/** A measured hardness is taken as it is, also one that no book knows. */
function hardnessFindings({ hrc }: Order, { steel: name }: Route, { steels }: Making, bars: readonly BarLeft[]): readonly Finding[] {
  const steel = steels.find((one) => one.name === name), most = steel?.hardening?.hrcTo ?? null
  return bars.flatMap((bar): Finding[] => {
    if (bar.hrc === null) return []
    return [
      ...(hrc !== null && bar.hrc < hrc ? [{ code: 'bar-softer-than-asked', facts: { bar: bar.id, hrc: bar.hrc, askedHrc: hrc } }] : []),
      ...(most !== null && bar.hrc > most ? [{ code: 'bar-harder-than-published', facts: { bar: bar.id, hrc: bar.hrc, steel: name, highestHrc: most, source: steel!.source } }] : []),
    ]
  })
}

/** Readings outside their limits, each with the step at which it was read. Hardness, and bow that is still to be ground off, are told elsewhere. */
function outsideFindings(steps: readonly PlannedStep[], sides: readonly Worked[]): readonly Finding[] {
  const isTold = (kind: StepKind, { what }: ActualField) => what === 'hardness' || (kind === 'read after hardening' && sides.some((side) => readOf[side].bow === what))
  return steps.flatMap(({ kind, fields }) => fields.filter((field) => field.isInside === false && !isTold(kind, field))
    .map(({ bar, what, values, least, most }) => ({ code: 'reading-outside', facts: { step: kind, bar, what, values: values!, least, most } })))
}

/** From the readings at the plate: parallelism of each bar, difference of mates place by place, and the hours if all were noted. */
function experienceOf({ kind }: Route, made: readonly MadeBar[], steps: readonly PlannedStep[], { readings }: Actuals): Experience | null {
  if (steps.some(({ state }) => state !== 'done')) return null
  const heights = new Map(readings.filter(({ step, what }) => step === 'inspect' && what === 'height').map(({ bar, values }) => [bar, values])), um = (mm: number) => Math.round(mm * 1e6) / 1e3
  const parallelUm = [...heights.values()].filter((values) => values.length > 1).map((values) => um(values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b))))
  const matchUm = [...new Set(made.map(({ matesId }) => matesId))].flatMap((matesId) => {
    const [a, b] = made.filter((bar) => bar.matesId === matesId).map(({ id }) => heights.get(id))
    return a === undefined || b === undefined || a.length !== b.length ? [] : [um(a.reduce((most, mm, k) => Math.max(most, Math.abs(mm - b[k]!)), 0))]
  })
  if (parallelUm.length === 0 && matchUm.length === 0) return null
  const own = steps.filter(({ hours }) => hours > 0), isNoted = own.every(({ takenHours }) => takenHours !== null)
  return { route: kind, matchUm, parallelUm, hours: isNoted ? { planned: total(own.map(({ hours }) => hours)), taken: total(own.map(({ takenHours }) => takenHours!)) } : null }
}

const sources = ['MAKE-RULES']

function barSum({ id, bowMm, neededPerSideMm }: BarLeft, { leave }: Making): Sum {
  return { formula: bowMm === null ? 'needed-per-side-planned' : 'needed-per-side', result: { name: 'neededPerSideMm', value: neededPerSideMm }, inputs: { bar: id, bowMm: bowMm ?? leave.bowMm, cleanUpMm: leave.cleanUpMm, skinMm: leave.skinMm }, sources }
}

function packSum({ bars, grind, clean, ordered }: PackLeft, { infeeds: { sparkOut } }: Making): readonly Sum[] {
  const passesSum = ({ downfeedMm, passes, passesTotal }: PackDown): Sum =>
    ({ formula: 'passes-per-side', result: { name: 'passesTotal', value: passesTotal }, inputs: { downfeedMm, cutting: total(passes), sparkOut }, sources })
  const highestMm = grind.sides === 'edges' ? grind.heightMm : grind.thicknessMm
  return [
    passesSum(clean),
    ...(ordered === null ? [] : [{ formula: 'downfeed-per-side', result: { name: 'downfeedMm', value: ordered.downfeedMm }, inputs: { mates: bars.join(', '), highestMm, finishedMm: ordered.toMm, bowMm: grind.bowMm }, sources }, passesSum(ordered)]),
  ]
}

const total = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0)
