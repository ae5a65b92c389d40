import { z } from 'zod'

/** What bars are made with. `ground plate`: a flat plate with abrasive cloth on it. */
export const machineKinds = ['saw', 'mill', 'furnace', 'press', 'grinder', 'ground plate'] as const
export type MachineKind = (typeof machineKinds)[number]

/** A machine of the shop, as far as making bars needs to know it. What does not concern its kind is null. */
export const machineFieldsSchema = z.strictObject({
  name: z.string().min(1).max(40),
  kind: z.enum(machineKinds),
  /** In the shop's money; null: nobody has said. */
  perHour: z.number().min(0).max(1e6).nullable(),
  /** The longest bar it takes: table travel, chuck, hearth. */
  longestMm: z.number().positive().max(1e6).nullable(),
  /** Of a saw: what a cut takes, and what has to come off a sawn face afterwards. */
  kerfMm: z.number().positive().max(20).nullable(),
  sawnFaceMm: z.number().min(0).max(20).nullable(),
  /** Of a mill: stiff and enclosed enough for hardened steel. */
  hardMilling: z.boolean(),
})
export type MachineFields = z.infer<typeof machineFieldsSchema>
export type Machine = MachineFields & { readonly id: string }
