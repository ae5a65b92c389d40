import type { BarSize } from '#model/bar-size.ts'
import type { Allowance, AllowanceKind, Blank, BlankStage, Dimension } from '#model/blank.ts'
import type { GrindingAllowance } from '#model/grinding-allowance.ts'
import type { StepKind } from '#model/make-step.ts'
import type { Hardening } from '#model/making-steel.ts'
import type { Leave } from '#model/making.ts'
import type { RouteKind } from '#model/route.ts'
import { finishPassMm, usualPerSide } from '#engine/make/blanks/leave.ts'

export type BlankQuestion = {
  readonly route: RouteKind
  readonly finished: BarSize
  readonly count: number
  /** Edges are as drawn or rolled on a stock length, sawn on a strip out of a plate. */
  readonly form: 'length' | 'plate'
  /** Whether faces are milled, and whether they are ground as well on a route that grinds. */
  readonly faces: boolean
  readonly groundFaces: boolean
  readonly sawnFaceMm: number
  readonly leave: Leave
  readonly allowances: readonly GrindingAllowance[]
  /** Null where nothing is hardened. */
  readonly hardening: Hardening | null
}

/**
 * Sizes of a bar from the finished one back to the sawn blank, every allowance named with the step that takes it.
 *
 * Left on each side after hardening: bow + clean-up + skin + half of what hardening may take away, and at least what is usual for the
 * size. Growth is never counted on: it only adds.
 *
 * @source MAKE-RULES
 */
export function blankOf(question: BlankQuestion): Blank {
  const { finished, count, hardening } = question, allowances = allowancesOf(question)
  const sawn = sizeBefore(allowances, finished, () => true), steps = [...new Set(allowances.map(({ takenBy }) => takenBy))].toSorted((a, b) => orderOf(a) - orderOf(b))
  const stages: BlankStage[] = steps.map((after) => ({ after, size: sizeBefore(allowances, finished, (step) => orderOf(step) > orderOf(after)) }))
  const soft = sizeBefore(allowances, finished, isHard)
  const grown = (mm: number): readonly [number, number] => [round(mm * (1 + hardening!.growthFromPercent / 100)), round(mm * (1 + hardening!.growthToPercent / 100))]
  return {
    heightMm: finished.heightMm, count, sawn, stages, finished, allowances,
    hardened: hardening === null ? null : { heightMm: grown(soft.heightMm), lengthMm: grown(soft.lengthMm) },
    perSideMm: { height: perSide(allowances, 'height', hardening !== null), thickness: perSide(allowances, 'thickness', hardening !== null) },
  }
}

/** Of the steps that take stock away, in the order of work. */
const takers: readonly StepKind[] = ['square the ends', 'mill the faces', 'rough the edges', 'finish the edges', 'rub', 'hard mill the edges', 'grind the faces', 'grind the edges']
const orderOf = (step: StepKind): number => takers.indexOf(step)
const isHard = (step: StepKind): boolean => step === 'hard mill the edges' || step === 'grind the faces' || step === 'grind the edges'

function allowancesOf(question: BlankQuestion): readonly Allowance[] {
  const { route, finished, form, faces, groundFaces, sawnFaceMm, leave, hardening, allowances: table } = question
  if (route === 'bought') return []
  const isCutOnly = route === 'as drawn' || route === 'as delivered', end = isCutOnly ? leave.cutEndMm : leave.endMm
  const ends = [allowance('length', 'sawn face', end, 'square the ends')]
  if (isCutOnly) return ends
  const edgeMm = form === 'plate' ? sawnFaceMm : leave.edgeMm, kind = form === 'plate' ? 'sawn face' : 'milling'
  const milled = faces ? [allowance('thickness', 'milling', leave.faceMm, 'mill the faces')] : []
  if (hardening !== null) {
    const isGround = route === 'ground'
    return [
      ...ends, ...milled, allowance('height', kind, edgeMm, 'rough the edges'),
      ...hardAllowances('height', isGround ? 'grind the edges' : 'hard mill the edges', finished, leave, hardening, table),
      ...(groundFaces && isGround ? hardAllowances('thickness', 'grind the faces', finished, leave, hardening, table) : []),
    ]
  }
  const finishMm = Math.min(finishPassMm, edgeMm)
  return [
    ...ends, ...milled,
    ...(edgeMm > finishMm ? [allowance('height', kind, edgeMm - finishMm, 'rough the edges')] : []),
    allowance('height', 'milling', finishMm, 'finish the edges'),
    ...(route === 'rubbed' ? [allowance('height', 'rubbing', leave.rubMm / 2, 'rub')] : []),
  ]
}

/** What hardening leaves to be taken off both sides of one size. */
function hardAllowances(dimension: 'height' | 'thickness', takenBy: StepKind, finished: BarSize, leave: Leave, hardening: Hardening, table: readonly GrindingAllowance[]): readonly Allowance[] {
  const sizeMm = dimension === 'height' ? finished.heightMm : finished.thicknessMm
  const shrinkageMm = Math.max(0, -hardening.growthFromPercent / 100) * sizeMm / 2, neededMm = leave.bowMm + leave.cleanUpMm + leave.skinMm + shrinkageMm
  const usual = usualPerSide(takenBy === 'hard mill the edges' ? 'hard mill' : 'grind', dimension, hardening.quench, finished, table)
  const parts: readonly (readonly [AllowanceKind, number])[] = [['bow', leave.bowMm], ['cleaning up', leave.cleanUpMm], ['skin', leave.skinMm], ['shrinkage', shrinkageMm], ['reserve', Math.max(0, usual.mm - neededMm)]]
  return parts.filter(([, mm]) => round(mm) > 0).map(([kind, mm]) => allowance(dimension, kind, mm, takenBy, kind === 'reserve' ? usual.source : undefined))
}

/** On both sides. */
function allowance(dimension: Dimension, kind: AllowanceKind, eachMm: number, takenBy: StepKind, source = 'MAKE-RULES'): Allowance {
  return { dimension, kind, sides: 2, eachMm: round(eachMm), totalMm: round(2 * round(eachMm)), takenBy, source }
}

/** The size while the allowances of these steps are still on. */
function sizeBefore(allowances: readonly Allowance[], { heightMm, thicknessMm, lengthMm }: BarSize, isOn: (step: StepKind) => boolean): BarSize {
  const on = (dimension: Dimension, mm: number) => round(allowances.reduce((sum, one) => (one.dimension === dimension && isOn(one.takenBy) ? sum + one.totalMm : sum), mm))
  return { heightMm: on('height', heightMm), thicknessMm: on('thickness', thicknessMm), lengthMm: on('length', lengthMm) }
}

/** Left on each side for the last tool: after hardening, or for the last milling where nothing is hardened. */
function perSide(allowances: readonly Allowance[], dimension: 'height' | 'thickness', hardened: boolean): number {
  const last = (step: StepKind) => (hardened ? isHard(step) : step === 'finish the edges' || step === 'mill the faces')
  return round(allowances.reduce((sum, one) => (one.dimension === dimension && last(one.takenBy) ? sum + one.eachMm : sum), 0))
}

/** To a nanometre, so that what is written in decimals comes out in decimals. */
const round = (mm: number): number => Math.round(mm * 1e6) / 1e6
