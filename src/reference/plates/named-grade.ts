import { plateFlatness, type PlateFlatness } from '#reference/plates/plate-flatness.ts'
import { plateGrades } from '#reference/plates/plate-grades.ts'

/** What a plate's grade is called where rule and grade go together, as in its record: `DIN 876 0`. */
const nameOf = ({ rule, grade }: { readonly rule: string; readonly grade: string }): string => `${rule} ${grade}`

export const namedGrades: readonly string[] = plateGrades.map(nameOf)

/** Flatness by the name of rule and grade; sides in either order, above 0. Null where no rule has that grade. */
export function flatnessNamed(name: string, lengthMm: number, widthMm: number): PlateFlatness | null {
  const row = plateGrades.find((one) => nameOf(one) === name)
  return row === undefined ? null : plateFlatness(row.rule, row.grade, lengthMm, widthMm)
}
