import { answerBlanks } from '#engine/make/blanks/answer-blanks.ts'
import { answerPlan } from '#engine/make/plan/answer-plan.ts'
import { answerRoute } from '#engine/make/route/answer-route.ts'
import type { MakingBooks } from '#model/making.ts'
import { makingSteels } from '#reference/steels/making-steels.ts'
import { blackBars } from '#reference/stock/black-bar.ts'
import { deliveredLimits } from '#reference/stock/delivered-limits.ts'
import { grindingAllowances } from '#reference/stock/grinding-allowances.ts'

const books: MakingBooks = { steels: makingSteels, stockLimits: deliveredLimits, allowances: grindingAllowances, blackBars }

/** The calculation `route` with the books at hand: stock names a steel of theirs or one that the case brings. @throws Refusal as `answerRoute` */
export const routeByTheBooks = (raw: unknown): ReturnType<typeof answerRoute> => answerRoute(raw, books)

/** The same for `blanks`. @throws Refusal as `answerBlanks` */
export const blanksByTheBooks = (raw: unknown): ReturnType<typeof answerBlanks> => answerBlanks(raw, books)

/** The same for `plan`. @throws Refusal as `answerPlan` */
export const planByTheBooks = (raw: unknown): ReturnType<typeof answerPlan> => answerPlan(raw, books)
