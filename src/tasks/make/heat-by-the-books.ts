import { answerHeat } from '#engine/make/heat/answer-heat.ts'
import { hardnessRows } from '#reference/steels/hardness.ts'
import { heatTables } from '#reference/steels/heat-tables.ts'

/** The calculation `heat` with the books at hand: a case names a steel, brings the shop's own table, or both. @throws Refusal as `answerHeat` */
export const heatByTheBooks = (raw: unknown): ReturnType<typeof answerHeat> => answerHeat(raw, { tables: heatTables, hardness: hardnessRows })
