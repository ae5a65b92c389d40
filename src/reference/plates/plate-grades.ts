import type { Cited } from '#model/cited.ts'

/**
 * Overall flatness of a surface plate, highest to lowest, by its size: `constantUm + perMm · size + perSquareMm · size²`.
 *
 * The rules in circulation differ, so a number always goes with the name of its rule.
 */
export type PlateGrade = Cited & {
  readonly rule: string
  readonly grade: string
  /** What counts as the size: the longest side, or the diagonal. */
  readonly size: 'side' | 'diagonal'
  /** The size is first rounded up to a multiple of it. */
  readonly sizeStepMm: number | null
  readonly constantUm: number
  readonly perMm: number
  readonly perSquareMm: number
  /** The result is rounded up to a multiple of it. */
  readonly resultStepUm: number | null
  /** Multiple of the finest grade of the rule. */
  readonly times: number
}

type Line = readonly [grade: string, constantUm: number, perMm: number, standing: Cited['standing']]

const din = ([grade, constantUm, perMm, standing]: Line): PlateGrade =>
  ({ rule: 'DIN 876', grade, size: 'side', sizeStepMm: null, constantUm, perMm, perSquareMm: 0, resultStepUm: null, times: 1, source: 'DIN-876', standing })

const iso = ([grade, constantUm, perMm, standing]: Line): PlateGrade =>
  ({ rule: 'ISO 8512-2', grade, size: 'diagonal', sizeStepMm: 100, constantUm, perMm, perSquareMm: 0, resultStepUm: null, times: 1, source: 'ISO-8512-2', standing })

type Curve = Pick<PlateGrade, 'rule' | 'constantUm' | 'perSquareMm' | 'resultStepUm' | 'source'>
const american = (curve: Curve): readonly PlateGrade[] => ([['AA', 1], ['A', 2], ['B', 4]] as const)
  .map(([grade, times]) => ({ ...curve, grade, times, size: 'diagonal', sizeStepMm: null, perMm: 0, standing: 'published' }))

const perMicroinchUm = 0.0254, perInchMm = 25.4

/** 40 + D²/25 µin with the diagonal D in inches. */
const inches = { constantUm: 40 * perMicroinchUm, perSquareMm: perMicroinchUm / 25 / perInchMm ** 2 }

/** @source DIN-876 ISO-8512-2 GGG-P-463C ASME-B89-3-7 */
export const plateGrades: readonly PlateGrade[] = [
  ...([['00', 2, 1 / 500, 'memory'], ['0', 4, 1 / 250, 'published'], ['1', 10, 1 / 100, 'published'], ['2', 20, 1 / 50, 'published'], ['3', 40, 1 / 25, 'published']] as const).map(din),
  ...([['0', 2.5, 0.003, 'published'], ['1', 5, 0.006, 'memory'], ['2', 10, 0.012, 'memory'], ['3', 20, 0.024, 'memory']] as const).map(iso),
  // The inch and the metric form differ by up to 1.5 %, because 1.6 and 1 are rounded: two rules, never mixed.
  ...american({ rule: 'GGG-P-463c', ...inches, resultStepUm: null, source: 'GGG-P-463C' }),
  ...american({ rule: 'GGG-P-463c metric', constantUm: 1, perSquareMm: 1.6e-6, resultStepUm: null, source: 'GGG-P-463C' }),
  ...american({ rule: 'ASME B89.3.7', ...inches, resultStepUm: 25 * perMicroinchUm, source: 'ASME-B89-3-7' }),
]
