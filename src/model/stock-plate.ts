import { z } from 'zod'
import { stockFields } from '#model/stock-length.ts'

/** Raw material wide enough to be cut into strips. Strips run across the width; their heights lie along the length. */
export const stockPlateFieldsSchema = z.strictObject(stockFields)
export type StockPlateFields = z.infer<typeof stockPlateFieldsSchema>
export type StockPlate = StockPlateFields & { readonly id: string }
