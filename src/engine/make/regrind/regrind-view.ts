import type { Blank } from '#model/blank.ts'
import type { Check } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { MakePlan } from '#model/make-plan.ts'
import type { MadeBar } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import type { JobRoute, Route } from '#model/route.ts'
import { actualsFrom } from '#engine/make/job/actuals-from.ts'
import type { JobKnown } from '#engine/make/job/job-case.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import { orderFrom } from '#engine/make/job/order-from.ts'
import { orderOf } from '#engine/make/order/order.ts'
import { hoursNow, stepsNow } from '#engine/make/plan/plan.ts'
import { lastGrindingOf, regrindStepsOf } from '#engine/make/regrind/regrind-steps.ts'
import { checksAfter, regrindWork, type RegrindWork } from '#engine/make/regrind/regrind-work.ts'
import { usualHoursPerDay } from '#engine/make/route/read-making.ts'
import { expectedOf, useFor, worstOf } from '#engine/make/route/expected.ts'
import { limitUmOf } from '#engine/rack/question-at.ts'
import { regrindSums } from '#engine/rack/regrind/answer-regrind.ts'
import { useLimits } from '#engine/rack/use-limits.ts'

/**
 * A job of grinding bars of the rack to one new height, worked out from the last profiles before the wheel, and from what was read since. The heights at the plate are
 * those of checks made after the last face was ground.
 *
 * @throws Refusal as `orderFrom`, `orderOf` and `regrindWork`
 */
export function regrindView(job: JobRecord, checks: readonly Check[], { limitsUm }: JobKnown): JobView {
  const ordered = orderOf(orderFrom(job.form)), { actuals, refused } = actualsFrom(job, checksAfter(job, checks)), work = regrindWork(job, checks, actuals, ordered.lengthMm), planned = job.planned!
  const made = job.bars.map((bar): MadeBar => ({ ...bar, heightMm: work.newHeightMm(bar.id) })), heightsMm = [...new Set(made.map(({ heightMm }) => heightMm))].toSorted((a, b) => a - b)
  const order: Order = { ...ordered, heightsMm, each: made.length, bars: made.length, findings: [], sum: [] }
  const steps = regrindStepsOf({ work, order, made, planned, limitUm: limitUmOf(order.use, limitsUm) }), now = stepsNow(steps, made, { ...actuals, bars: made }), hours = hoursNow(now)
  const plan: MakePlan = {
    steps: now, next: now.find(({ state }) => state === 'next')?.kind ?? null, made, bars: [], packs: [], presses: [], hours, experience: null, findings: findingsOf(work, planned),
    sum: [...regrindSums(work.question, work.planned), ...(work.second === null ? [] : regrindSums(work.second.question, work.second.regrind))],
  }
  return { plan, order, refused, route: routeOf(job, work, order, steps, hours.planned, limitsUm) }
}

/** What is expected of bars ground in pairs is expected of bars ground again. */
function routeOf({ planned }: JobRecord, work: RegrindWork, order: Order, steps: Route['steps'], hours: number, shopLimitsUm: JobKnown['limitsUm']): Route<JobRoute> {
  const expected = expectedOf('ground', { bought: null, experience: [] }, { isPrehardenedGround: false, apart: null }), { countOnUm, carefulUm } = worstOf(expected), limitsUm = useLimits(shopLimitsUm)
  const cost = steps.reduce<number | null>((sum, step) => (sum === null || step.cost === null ? null : sum + step.cost), 0)
  return {
    kind: 'regrind', rank: 1, status: 'serves', steel: null, expected, use: { countOn: useFor(countOnUm, limitsUm), careful: useFor(carefulUm, limitsUm) },
    steps, blanks: order.heightsMm.map((heightMm) => blankOf(work, order, heightMm)), cuts: null, hours, machineHours: steps.reduce((sum, step) => sum + step.machineHours, 0),
    days: Math.ceil(hours / (planned!.rates.hoursPerDay ?? usualHoursPerDay)), cost: { total: cost, stock: 0, work: cost, outside: 0, tools: 0, unpriced: cost === null ? ['work'] : [] }, because: [], against: [],
  }
}

/** The bars before and after, for the drawings: off the first face what stands above the second's clean-up. */
function blankOf({ planned, question, cleanUpUm, newHeightMm }: RegrindWork, { thicknessMm, lengthMm }: Order, heightMm: number): Blank {
  const count = question.bars.filter(({ id }) => newHeightMm(id) === heightMm).length, size = (mm: number) => ({ heightMm: mm, thicknessMm, lengthMm }), secondMm = question.faces === 2 ? cleanUpUm / 1000 : 0
  const offMm = planned.totalUm / 1000, last = lastGrindingOf({ question }), off = (takenBy: Blank['allowances'][number]['takenBy'], eachMm: number) => ({ dimension: 'height', kind: 'cleaning up', sides: 1, eachMm, totalMm: eachMm, takenBy, source: 'REGRIND-RULES' }) as const
  return {
    heightMm, count, sawn: size(heightMm + offMm), finished: size(heightMm), hardened: null, perSideMm: { height: cleanUpUm / 1000, thickness: 0 },
    stages: [...(question.faces === 2 ? [{ after: 'grind the first face' as const, size: size(heightMm + secondMm) }] : []), { after: last, size: size(heightMm) }],
    allowances: [off('grind the first face', offMm - secondMm), ...(question.faces === 2 ? [off('grind the second face', secondMm)] : [])],
  }
}

function findingsOf({ bowMm, question: { faces }, cleanUpUm }: RegrindWork, { machines }: NonNullable<JobRecord['planned']>): readonly Finding[] {
  const bowUm = bowMm === null ? null : 1000 * bowMm
  return [
    ...(machines.some(({ kind }) => kind === 'grinder') ? [] : [{ code: 'machine-missing', facts: { machine: 'grinder' } }]),
    ...(bowUm === null ? [{ code: 'taken-as-straight', facts: {} }] : bowUm > 0 ? [faces === 2 ? { code: 'bow-comes-off', facts: { bowUm, eachUm: cleanUpUm } } : { code: 'bow-stays-in', facts: { bowUm } }] : []),
  ]
}
