import { blockGrades, blockLimits } from '#reference/instruments/gauge-blocks.ts'
import { flatnessNamed } from '#reference/plates/named-grade.ts'

/** What a check asks the books, by grade as it stands in the records of plate and gauge blocks; null where they have no such row. */
export const inspectTables = {
  /** Overall flatness, highest to lowest, by the name of rule and grade and both sides. */
  plateFlatnessUm: (grade: string, lengthMm: number, widthMm: number): number | null => flatnessNamed(grade, lengthMm, widthMm)?.flatnessUm ?? null,
  /** Limit deviation ± of a block of this nominal height. */
  blockLimitUm: (grade: string, heightMm: number): number | null => {
    const known = blockGrades.find((one) => one === grade)
    return known === undefined ? null : blockLimits(known, heightMm)?.limitUm ?? null
  },
} as const
