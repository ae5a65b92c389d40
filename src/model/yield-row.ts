import type { Cited } from '#model/cited.ts'

/** Stress at 0.2 % set in compression, of a steel hardened and tempered to a hardness; for bending an indication only. */
export type YieldRow = Cited & { readonly steel: string; readonly hrc: number; readonly yieldMPa: number }
