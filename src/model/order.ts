import { z } from 'zod'
import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { uses } from '#model/wishes.ts'

const lengthMm = z.number().positive().max(1e6), count = z.number().int().min(1).max(1000)

/** Heights one by one; up from a height in steps; or down in steps from a stated distance below the top of a jaw. */
export const heightsWantedSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('list'), heightsMm: z.array(lengthMm).min(1).max(500) }),
  z.strictObject({ by: z.literal('ladder'), fromMm: lengthMm, toMm: lengthMm, stepMm: lengthMm }),
  z.strictObject({ by: z.literal('jaw'), jawHeightMm: lengthMm, belowMm: z.number().min(0).max(1e6), stepMm: lengthMm, lowestMm: lengthMm }),
])
export type HeightsWanted = z.infer<typeof heightsWantedSchema>

/** As long as told, or so much shorter than the jaws are wide. */
export const lengthWantedSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('length'), lengthMm }),
  z.strictObject({ by: z.literal('jaw'), jawWidthMm: lengthMm, underMm: z.number().min(0).max(1e6) }),
])
export type LengthWanted = z.infer<typeof lengthWantedSchema>

/** What is to be made, as one form asks for it. */
export const orderWantedSchema = z.strictObject({
  heights: heightsWantedSchema,
  length: lengthWantedSchema,
  thicknessMm: lengthMm,
  /** Pairs of each height in each vise, and how many vises. */
  pairs: count,
  vises: count,
  use: z.enum(uses),
  /** The hardness asked for, in HRC; null: soft will do. */
  hrc: z.number().min(0).max(70).nullable(),
  /** `2026-03-04`; null: no hurry. */
  dueDay: z.iso.date().nullable(),
})
export type OrderWanted = z.infer<typeof orderWantedSchema>

/** The same worked out: `heightsMm` rising, each once; `each` bars of every height, `bars` in all. */
export type Order = Pick<OrderWanted, 'thicknessMm' | 'pairs' | 'vises' | 'use' | 'hrc' | 'dueDay'> & {
  readonly heightsMm: readonly number[]
  readonly lengthMm: number
  readonly each: number
  readonly bars: number
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}
