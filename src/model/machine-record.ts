import { z } from 'zod'
import type { Kept } from '#model/change.ts'
import { machineFieldsSchema } from '#model/machine.ts'

const above0 = z.number().positive().max(1e6)

/** What the spindle of a mill can do; null: not known, and limits nothing. */
export const spindleSchema = z.strictObject({
  leastRpm: above0.nullable(),
  mostRpm: above0.nullable(),
  /** The steps of a gearbox, rising; null: any speed between. */
  speedsRpm: z.array(above0).min(1).max(100).nullable(),
  powerKw: above0.nullable(),
  /** Share of the motor's power that reaches the cutter; null: as is common. */
  efficiency: z.number().positive().max(1).nullable(),
  mostFeedMmPerMin: above0.nullable(),
})
export type Spindle = z.infer<typeof spindleSchema>

export const machineRecordSchema = machineFieldsSchema.extend({ spindle: spindleSchema.nullable(), retired: z.boolean(), note: z.string().max(2000) })
export type MachineRecordFields = z.infer<typeof machineRecordSchema>
export type MachineRecord = Kept<MachineRecordFields>
