import { z } from 'zod'
import type { Kept } from '#model/change.ts'
import { ratesSchema } from '#model/rates.ts'

export const unitsSchema = z.strictObject({
  length: z.enum(['mm', 'in']),
  decimalMark: z.enum(['.', ',']),
  /** `US`: vise, movable jaw, indicator, gage; `UK`: vice, moving jaw, clock, gauge. */
  words: z.enum(['US', 'UK']),
})
/** What numbers are shown and read in when nothing else is typed. */
export type Units = z.infer<typeof unitsSchema>

/** The shop's own settings; one record with the id `shop`. */
export const shopFieldsSchema = z.strictObject({
  name: z.string().max(80),
  units: unitsSchema,
  paper: z.enum(['A4', 'Letter']),
  /** Largest parallelism and difference of mates for each use, in µm. Common practice, no source; the shop's to change. */
  limitsUm: z.strictObject({
    drilling: z.number().positive(),
    milling: z.number().positive(),
    fineMilling: z.number().positive(),
    grinding: z.number().positive(),
  }),
  /** After how many days or setups a bar is to be looked at again; null: off, until the shop turns it on. */
  due: z.strictObject({ days: z.number().int().positive().max(10_000).nullable(), setups: z.number().int().positive().max(100_000).nullable() }).nullable(),
  /** What making costs; null: nobody has said anything. */
  making: ratesSchema.nullable(),
  /** Invented demo data was loaded. */
  demo: z.boolean(),
})
export type ShopFields = z.infer<typeof shopFieldsSchema>
export type ShopRecord = Kept<ShopFields>

/** A shop before anybody has set anything. The limits are common practice, no source. */
export const newShop: ShopFields = {
  name: '', units: { length: 'mm', decimalMark: '.', words: 'US' }, paper: 'A4',
  limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 }, due: null, making: null, demo: false,
}

/** A person; the id is made on a device, the initials are what is tapped. `units` null: the shop's. */
export const personFieldsSchema = z.strictObject({ initials: z.string().min(1).max(8), units: unitsSchema.nullable() })
export type PersonFields = z.infer<typeof personFieldsSchema>
export type PersonRecord = Kept<PersonFields>
