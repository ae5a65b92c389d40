import { z } from 'zod'

const money = z.number().min(0).max(1e9).nullable()

/** What making costs the shop, in its own money, which has no name here; null: nobody has said. */
export const ratesSchema = z.strictObject({
  handPerHour: z.number().min(0).max(1e6).nullable(),
  /** Null: as is common. */
  hoursPerDay: z.number().positive().max(24).nullable(),
  /** Whoever hardens for the shop: for one lot, and how many days it is away; null: nobody. */
  hardening: z.strictObject({ cost: money, days: z.number().min(0).max(1000) }).nullable(),
  cutterCost: money,
})
export type Rates = z.infer<typeof ratesSchema>

export const noRates: Rates = { handPerHour: null, hoursPerDay: null, hardening: null, cutterCost: null }
