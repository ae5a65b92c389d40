import type { MakingBooks } from '#model/making.ts'
import { makingSteels } from '#reference/steels/making-steels.ts'
import { blackBars } from '#reference/stock/black-bar.ts'
import { deliveredLimits } from '#reference/stock/delivered-limits.ts'
import { grindingAllowances } from '#reference/stock/grinding-allowances.ts'

/** What the calculations `route`, `blanks` and `plan` look into. */
export const makingBooks: MakingBooks = { steels: makingSteels, stockLimits: deliveredLimits, allowances: grindingAllowances, blackBars }
