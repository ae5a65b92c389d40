import type { Blank } from '#model/blank.ts'
import type { SteelState } from '#model/cutting-data.ts'
import type { JobFields, PlannedWith } from '#model/job-record.ts'
import type { MakePlan, PackLeft, PlannedStep, Press } from '#model/make-plan.ts'
import type { Order } from '#model/order.ts'
import type { JobRoute, Route } from '#model/route.ts'
import type { StockLength } from '#model/stock-length.ts'
import { cardMm, cardNumber } from '#engine/make/job/card-fields.ts'

/** A job as its cards see it. */
export type CardJob = Pick<JobFields, 'form' | 'tools'> & { readonly planned: PlannedWith; readonly order: Order; readonly route: Route<JobRoute>; readonly plan: MakePlan }

/** A case of a calculation; null where the plan has nothing for it. */
export type Case = { readonly [key: string]: unknown } | null

/**
 * The case of `cutting` for a milling step: all the stock from before it to after it, the two mates side by side, the tallest blank of the order.
 *
 * On soft bars roughing, finishing and spring pass are one case: the answer tells its passes.
 *
 * @throws Refusal of `cardNumber` and `cardMm`
 */
export function cuttingCase(job: CardJob, step: PlannedStep['kind']): Case {
  const blank = job.route.blanks.at(-1), taken = blank && stockOf(blank, step)
  if (blank === undefined || taken === undefined || taken.stockMm <= 0) return null
  const diameterMm = cardMm(job, 'cutting.diameter'), stock = stockUsed(job), state: SteelState = step === 'hard mill the edges' ? 'hardened' : (stock?.condition.startsWith('prehardened') ?? false) ? 'prehardened' : 'soft'
  const depthMm = cardMm(job, 'cutting.depth') ?? taken.depthMm, spindle = job.planned.machines.find(({ kind, hardMilling }) => kind === 'mill' && (state !== 'hardened' || hardMilling))?.spindle
  return withoutNulls({
    steel: job.route.steel ?? stock?.steel ?? null, state, depthMm, lengthMm: blank.finished.lengthMm, stockMm: taken.stockMm,
    cutter: withoutNulls({ diameterMm, teeth: cardNumber(job, 'cutting.teeth'), stickOutMm: cardMm(job, 'cutting.stickOut') ?? stickOutFor(depthMm), material: job.tools['cutting.material'] === 'HSS' ? 'HSS' : 'carbide' }),
    rpm: cardNumber(job, 'cutting.rpm'), feedPerToothMm: cardMm(job, 'cutting.feed'), machine: spindle ? withoutNulls(spindle) : null,
  })
}

/** The case of `heat`, of the bars as they go in; the hardness as typed, or as ordered, or the lowest the steel is worked at. @throws Refusal of `cardNumber` */
export function heatCase(job: CardJob, steels: readonly { readonly name: string; readonly hardening: { readonly hrcFrom: number } | null }[]): Case {
  const { route, plan, order } = job, size = sizeAfter(route.blanks.at(-1), 'rough the edges')
  if (route.steel === null || size === null) return null
  const read = plan.steps.find(({ kind }) => kind === 'read after hardening')?.fields.flatMap(({ what, values }) => (what === 'hardness' ? (values ?? []) : [])) ?? []
  const hrc = cardNumber(job, 'heat.hrc') ?? order.hrc ?? steels.find(({ name }) => name === route.steel)?.hardening?.hrcFrom ?? null
  return withoutNulls({ steel: route.steel, ...size, hrc, measuredHrc: read.length === 0 ? null : read.reduce((most, one) => Math.max(most, one), 0) })
}

/** The case of `straighten` for one press; null until the yield stress is known. @throws Refusal of `cardNumber` */
export function straightenCase(job: CardJob, { spanMm, widthMm, depthMm, wantedSetUm }: Press): Case {
  const yieldMPa = cardNumber(job, 'straighten.yield')
  return yieldMPa === null ? null : { spanMm, widthMm, depthMm, wantedSetUm, eMPa: cardNumber(job, 'straighten.e'), yieldMPa }
}

/** The case of `grind` for one pack, with the wheel as far as it was typed. @throws Refusal of `cardNumber` and `cardMm` */
export function grindCase(job: CardJob, { grind }: PackLeft): Case {
  const widthMm = cardMm(job, 'grind.wheelWidth')
  const wheel = widthMm === null ? null : withoutNulls({ widthMm, diameterMm: cardMm(job, 'grind.wheelDiameter'), rpm: cardNumber(job, 'grind.wheelRpm'), markedRpm: cardNumber(job, 'grind.markedRpm') })
  return withoutNulls({ ...grind, wheel })
}

/** The stock the order is mostly cut from. */
export function stockUsed({ route, planned }: Pick<CardJob, 'route' | 'planned'>): StockLength | null {
  const id = route.cuts?.takings.at(-1)?.stockId
  return [...planned.lengths, ...planned.plates].find((stock) => stock.id === id) ?? null
}

/** Off each side by the milling that a step belongs to, and how deep along the cutter: two bars side by side. */
function stockOf(blank: Blank, step: PlannedStep['kind']): { readonly stockMm: number; readonly depthMm: number } | undefined {
  const faces = step === 'mill the faces', hard = step === 'hard mill the edges', size = blank.finished
  const takers = hard ? [step] : faces ? [step] : ['rough the edges', 'finish the edges']
  const stockMm = blank.allowances.reduce((sum, { dimension, takenBy, eachMm }) => (dimension === (faces ? 'thickness' : 'height') && takers.includes(takenBy) ? sum + eachMm : sum), 0)
  return { stockMm: Math.round(stockMm * 1e6) / 1e6, depthMm: faces ? size.heightMm : 2 * size.thicknessMm }
}

/** mm. Of the cutter beyond its cut, to clear the work. Common practice, no source. */
const stickOutFor = (depthMm: number): number => depthMm + 5

const sizeAfter = (blank: Blank | undefined, step: PlannedStep['kind']) => blank?.stages.find(({ after }) => after === step)?.size ?? null

const withoutNulls = (record: object): { readonly [key: string]: unknown } => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== null))
