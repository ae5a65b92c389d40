import { answerBlanks } from '#engine/make/blanks/answer-blanks.ts'
import { answerPlan } from '#engine/make/plan/answer-plan.ts'
import { answerRoute } from '#engine/make/route/answer-route.ts'
import { makingBooks as books } from '#reference/making-books.ts'

/** The calculation `route` with the books at hand: stock names a steel of theirs or one that the case brings. @throws Refusal as `answerRoute` */
export const routeByTheBooks = (raw: unknown): ReturnType<typeof answerRoute> => answerRoute(raw, books)

/** The same for `blanks`. @throws Refusal as `answerBlanks` */
export const blanksByTheBooks = (raw: unknown): ReturnType<typeof answerBlanks> => answerBlanks(raw, books)

/** The same for `plan`. @throws Refusal as `answerPlan` */
export const planByTheBooks = (raw: unknown): ReturnType<typeof answerPlan> => answerPlan(raw, books)
