import type { Check, Reading } from '#model/check.ts'

/** What a check without plate, instrument or look leaves empty. */
export const nothingTaken = { zero: null, closing: null, temperature: null, took: null, looks: [], asFound: false } satisfies Partial<Check>
/** Where a reading is when nothing else is told. */
export const onTheFirstLine = { line: 0, face: 'A' } as const satisfies Partial<Reading>
