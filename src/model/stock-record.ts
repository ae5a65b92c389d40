import { z } from 'zod'
import type { Kept } from '#model/change.ts'
import { stockFields } from '#model/stock-length.ts'

export const stockForms = ['length', 'plate'] as const
/** A stock length is only cut to length; out of a stock plate strips are cut, across its width. */
export type StockForm = (typeof stockForms)[number]

export const stockRecordSchema = z.strictObject({ ...stockFields, form: z.enum(stockForms), retired: z.boolean(), note: z.string().max(2000) })
export type StockRecordFields = z.infer<typeof stockRecordSchema>
export type StockRecord = Kept<StockRecordFields>
