import { z } from 'zod'
import { idSchema } from '#model/change.ts'
import type { BarSize } from '#model/bar-size.ts'
import type { Finding } from '#model/finding.ts'
import type { MachineKind } from '#model/machine.ts'
import type { Situation } from '#model/situation.ts'

/** What is done to new bars, in the order in which it comes where it comes at all. */
export const newBarSteps = [
  'order', 'check the delivery', 'saw', 'square the ends', 'mill the faces', 'rough the edges', 'let lie', 'finish the edges', 'spring pass',
  'deburr and mark', 'rub', 'clean for the furnace', 'harden', 'temper', 'read after hardening', 'straighten', 'temper again',
  'hard mill the edges', 'grind the faces', 'grind the edges', 'demagnetise and cool', 'stone and clean', 'inspect',
] as const
export type NewBarStep = (typeof newBarSteps)[number]

/** What only a regrind does; its last steps are those of new bars. */
export const regrindSteps = ['clean and demagnetise', 'stone burrs', 'read before grinding', 'grind the first face', 'grind the second face', 'mark anew'] as const

export const stepKinds = [...newBarSteps, ...regrindSteps] as const
export type StepKind = (typeof stepKinds)[number]

/** What is read of a bar in between. Bow in mm over its length: of the edges up and down, of the faces to the side. */
export const readingKinds = ['length', 'height', 'thickness', 'bow of the edges', 'bow of the faces', 'hardness', 'difference of mates'] as const
export type ReadingKind = (typeof readingKinds)[number]

/**
 * Something to be read after a step, at so many places of each bar, and the limits within which the work goes on; null: no limit on that
 * side. Lengths, heights and thicknesses count from the size after the step; the rest as read, in mm, hardness in HRC.
 */
export type ReadingAsked = {
  readonly what: ReadingKind
  readonly places: number
  readonly least: number | null
  readonly most: number | null
}

/** A step of a route. `calcs` names the calculations that fill its card. */
export type MakeStep = {
  readonly kind: StepKind
  /** Null: at the bench, or somebody else's. */
  readonly machine: MachineKind | null
  readonly outside: boolean
  /** A person is at it so long; the machine is taken so long. */
  readonly hours: number
  readonly machineHours: number
  readonly cost: number | null
  readonly calcs: readonly ('cut-bars' | 'cut-plate' | 'cutting' | 'heat' | 'straighten' | 'grind' | 'shape')[]
  /** What to do, as codes with facts. */
  readonly content: readonly Finding[]
  readonly sizes: readonly { readonly heightMm: number; readonly size: BarSize }[]
  readonly reads: readonly ReadingAsked[]
  readonly cautions: readonly Situation[]
}

/** What was read or ticked while making: facts, kept as typed by the person. `heightMm` is the height the bar is made for. */
export const madeBarSchema = z.strictObject({ id: idSchema, heightMm: z.number().positive().max(1e6), matesId: idSchema })
export type MadeBar = z.infer<typeof madeBarSchema>

export const stepReadingSchema = z.strictObject({
  step: z.enum(stepKinds), bar: idSchema, what: z.enum(readingKinds),
  /** In mm, hardness in HRC. Several of one kind after one step: places along the bar, from the marked end. */
  values: z.array(z.number().min(0).max(1e6)).min(1).max(100),
})

export const stepDoneSchema = z.strictObject({ step: z.enum(stepKinds), hours: z.number().min(0).max(10_000).nullable() })

export const actualsSchema = z.strictObject({
  bars: z.array(madeBarSchema).max(3000), readings: z.array(stepReadingSchema).max(30_000), done: z.array(stepDoneSchema).max(stepKinds.length),
})
export type Actuals = z.infer<typeof actualsSchema>
