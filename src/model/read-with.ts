import { z } from 'zod'
import { readMethods } from '#model/read-methods.ts'

const figure = z.number().min(0).max(1e6)

export const readWithSchema = z.strictObject({
  method: z.enum(readMethods),
  /** The smallest step that is read. */
  resolutionUm: figure,
  /** Permissible error, ± over the travel used. */
  limitUm: figure.nullable(),
  /** Scatter known beforehand; where places were read more than once, theirs counts. */
  repeatabilityUm: figure.nullable(),
  /** Overall flatness of the plate, highest to lowest. */
  plateFlatnessUm: figure.nullable(),
  /** Limit deviation of the gauge block ±; the standard uncertainty of its certificate, which counts where both are given. */
  blockLimitUm: figure.nullable(),
  blockUUm: figure.nullable(),
  /** °C. Most that bar and block (or instrument) may differ, ±, and how far both are from 20. */
  betweenC: figure.nullable(),
  awayC: figure.nullable(),
  /** Expansion for each °C, and most that the two steels may differ in it, ±. */
  expansionPerC: figure,
  expansionApartPerC: figure,
})
/** What readings were taken with. A null leaves the part out. */
export type ReadWith = Readonly<z.infer<typeof readWithSchema>>
