import { z } from 'zod'

/** How steel comes: what was done to it last. `annealed`: soft and machined all over; `prehardened ground`: ground flat as well. */
export const conditions = ['drawn', 'rolled', 'annealed', 'ground flat', 'prehardened', 'prehardened ground'] as const
export type Condition = (typeof conditions)[number]

const lengthMm = z.number().positive().max(1e6)

export const stockNameLetters = 60

/** What a stock length and a stock plate have in common. */
export const stockFields = {
  name: z.string().min(1).max(stockNameLetters),
  /** The steel as the shop's list of steels names it. */
  steel: z.string().min(1).max(40),
  condition: z.enum(conditions),
  lengthMm,
  widthMm: lengthMm,
  thicknessMm: lengthMm,
  /** How many there are; null: as many as are bought. */
  count: z.number().int().min(0).max(10_000).nullable(),
  /** For one, in the shop's money; null: nobody has said. An offcut that is paid for costs 0. */
  price: z.number().min(0).max(1e9).nullable(),
  offcut: z.boolean(),
}

/** Bars of raw material, long and of one section; to be cut to length only, so the width stands for the height of what is made. */
export const stockLengthFieldsSchema = z.strictObject(stockFields)
export type StockLengthFields = z.infer<typeof stockLengthFieldsSchema>
export type StockLength = StockLengthFields & { readonly id: string }
