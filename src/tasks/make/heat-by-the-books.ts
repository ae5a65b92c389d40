import { answerHeat } from '#engine/make/heat/answer-heat.ts'
import { heatBooks } from '#reference/steels/heat-books.ts'

/** The calculation `heat` with the books at hand: a case names a steel, brings the shop's own table, or both. @throws Refusal as `answerHeat` */
export const heatByTheBooks = (raw: unknown): ReturnType<typeof answerHeat> => answerHeat(raw, heatBooks)
