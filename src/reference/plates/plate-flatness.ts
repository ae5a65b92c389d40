import type { Cited } from '#model/cited.ts'
import { listedPlates, listedWithin } from '#reference/plates/listed-plates.ts'
import { type PlateGrade, plateGrades } from '#reference/plates/plate-grades.ts'

export type PlateFlatness = Cited & { readonly rule: string; readonly grade: string; readonly flatnessUm: number }

/**
 * Overall flatness, highest to lowest, that a plate of a rule, grade and size is allowed when new; sides in either order, above 0.
 *
 * @returns null where `plateGrades` has no such rule and grade
 * @source DIN-876 ISO-8512-2 GGG-P-463C ASME-B89-3-7
 */
export function plateFlatness(rule: string, grade: string, lengthMm: number, widthMm: number): PlateFlatness | null {
  const row = plateGrades.find((one) => one.rule === rule && one.grade === grade)
  if (row === undefined) return null
  const { source, standing } = row
  return { rule, grade, flatnessUm: row.times * (listedUm(rule, lengthMm, widthMm) ?? byFormulaUm(row, lengthMm, widthMm)), source, standing }
}

function byFormulaUm({ size, sizeStepMm, constantUm, perMm, perSquareMm, resultStepUm }: PlateGrade, lengthMm: number, widthMm: number): number {
  const sizeMm = upTo(sizeStepMm, size === 'side' ? Math.max(lengthMm, widthMm) : Math.hypot(lengthMm, widthMm))
  return upTo(resultStepUm, constantUm + perMm * sizeMm + perSquareMm * sizeMm ** 2)
}

function listedUm(rule: string, lengthMm: number, widthMm: number): number | null {
  const [short, long] = [lengthMm, widthMm].toSorted((a, b) => a - b).map((sideMm) => sideMm / 25.4) as [number, number]
  const isNear = (given: number, listed: number) => Math.abs(given / listed - 1) <= listedWithin.share
  const found = listedPlates.find((plate) => plate.rule === rule && isNear(short, Math.min(plate.lengthIn, plate.widthIn)) && isNear(long, Math.max(plate.lengthIn, plate.widthIn)))
  return found === undefined ? null : found.finestUin * 0.0254
}

/** Rounded up to a multiple; what is over by rounding of the arithmetic alone stays. */
const upTo = (step: number | null, value: number): number => (step === null ? value : Math.ceil(value / step - 1e-9) * step)
