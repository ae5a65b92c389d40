import type { BarSize } from '#model/bar-size.ts'
import type { Blank } from '#model/blank.ts'
import type { Making } from '#model/making.ts'
import type { MakeStep, NewBarStep, StepKind } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import { contentOf, type ContentQuestion, readsAfter } from '#engine/make/route/step-content.ts'
import { calcOf, cautionsAt, furnaceSteps, machineOf, stepsOf } from '#engine/make/route/step-list.ts'

/** Every step of a route with hours, cost, sizes, what to do, what to read and what to be warned of. */
export function stepsFor(question: ContentQuestion): readonly MakeStep[] {
  const { order, route, making, blanks } = question, isOutside = !making.machines.some(({ kind }) => kind === 'furnace')
  const hoursFactor = factorOf(question)
  const isMilled = blanks.some(({ allowances }) => allowances.some(({ takenBy }) => takenBy === 'mill the faces'))
  return stepsOf(route, making.faces || isMilled, making.faces).map((kind): MakeStep => {
    const outside = kind === 'order' || (isOutside && furnaceSteps.includes(kind)), machine = outside ? null : machineFor(kind, making)
    return {
      kind, machine, outside, ...workOf(kind, machine, order, making, outside && kind !== 'order' ? 0 : hoursFactor),
      calcs: calcsAt(kind, question),
      content: contentOf(kind, question), sizes: sizesAfter(kind, blanks), reads: readsAfter(kind, question), cautions: outside ? [] : (cautionsAt[kind] ?? []).filter((caution) => caution !== 'quench' || question.hardening?.quench !== 'air'),
    }
  })
}

type Work = Pick<MakeStep, 'hours' | 'machineHours' | 'cost'>

/** Hours and cost of a step: those of a person by `factor`, the machine's with what it does by itself. */
export function workOf(kind: StepKind, machine: MakeStep['machine'], order: Pick<Order, 'heightsMm' | 'bars'>, shop: Pick<Making, 'times' | 'machines' | 'handPerHour'>, factor: number): Work {
  const { orderMin, heightMin, barMin, unattendedMin } = shop.times.find(({ step }) => step === kind)!
  const hours = factor * (orderMin + heightMin * order.heightsMm.length + barMin * order.bars) / 60, machineHours = machine === null ? 0 : hours + unattendedMin / 60
  const hand = hours > 0 ? shop.handPerHour : 0, perHour = machineHours > 0 ? (shop.machines.find((one) => one.kind === machine)?.perHour ?? null) : 0
  return { hours, machineHours, cost: hand === null || perHour === null ? null : hours * hand + machineHours * perHour }
}

function calcsAt(kind: NewBarStep, { cuts }: ContentQuestion): MakeStep['calcs'] {
  const own = calcOf[kind]
  if (kind !== 'saw') return own === undefined ? [] : [own]
  return [...(cuts !== null && cuts.bars.length > 0 ? (['cut-bars'] as const) : []), ...(cuts !== null && cuts.plates.length > 0 ? (['cut-plate'] as const) : [])]
}

/** Ends are squared on the mill where there is one. */
const machineFor = (kind: StepKind, { machines }: Making): MakeStep['machine'] =>
  kind === 'square the ends' ? (machines.some((one) => one.kind === 'mill') ? 'mill' : null) : (machineOf[kind] ?? null)

/** By how much the shop took longer than planned on this route, all told; 1 where nothing was noted. */
function factorOf({ route, making }: ContentQuestion): number {
  const noted = making.experience.flatMap((one) => (one.route === route && one.hours !== null ? [one.hours] : []))
  const planned = noted.reduce((sum, one) => sum + one.planned, 0), taken = noted.reduce((sum, one) => sum + one.taken, 0)
  return planned > 0 ? taken / planned : 1
}

/** The sizes of each height once the step is done, as far as a step changes them. */
function sizesAfter(kind: StepKind, blanks: readonly Blank[]): MakeStep['sizes'] {
  return blanks.flatMap(({ heightMm, sawn, stages }) => {
    const size: BarSize | undefined = kind === 'saw' ? sawn : kind === 'inspect' ? (stages.at(-1)?.size ?? sawn) : stages.find(({ after }) => after === kind)?.size
    return size === undefined ? [] : [{ heightMm, size }]
  })
}
