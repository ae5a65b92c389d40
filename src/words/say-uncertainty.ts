import { wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'

/** Twice the standard uncertainty, which about 95 of 100 errors keep within: `± 0.8 µm`, rounded up to a tenth. @source GUM */
export const plusMinus = (uUm: number, { decimalMark }: Pick<Units, 'decimalMark'>): string => `± ${wordNumber(Math.ceil(uUm * 20 - 1e-9) / 10, decimalMark, null, 1)} µm`
