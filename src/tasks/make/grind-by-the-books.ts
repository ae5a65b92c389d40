import { answerGrind } from '#engine/make/grind/answer-grind.ts'
import { surfaceGrinding } from '#reference/cutting/surface-grinding.ts'

/** The calculation `grind` with the handbook's infeeds and speeds at hand. @throws Refusal as `answerGrind` */
export const grindByTheBooks = (raw: unknown): ReturnType<typeof answerGrind> => answerGrind(raw, surfaceGrinding)
