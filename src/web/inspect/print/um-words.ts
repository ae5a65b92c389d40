import type { Named } from '#drafting/pieces.ts'
import type { Table } from '#drafting/inspect/certificate.ts'
import type { UseVerdict } from '#engine/inspect/uses-proved.ts'
import { wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { verdictWords } from '#words/verdict-words.ts'

/** `2.5 µm`; figures of an uncertainty get two decimals. */
export const um = (value: number, { decimalMark }: Units, mostDecimals = 1): string => `${wordNumber(value, decimalMark, null, mostDecimals)} µm`

/** A figure that may not be there. */
export const named = (label: string, value: string | null): readonly Named[] => (value === null ? [] : [{ label, value }])

/** What a figure is good for, use by use; null where nothing was judged. */
export const usesTable = (uses: readonly UseVerdict[], units: Units): Table | null =>
  (uses.length === 0 ? null : { heads: ['use', 'limit', 'verdict'], rows: uses.map(({ use, limitUm, verdict }) => [use, um(limitUm, units), verdictWords[verdict].word]) })
