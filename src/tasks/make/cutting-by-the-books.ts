import { answerCutting } from '#engine/make/cutting/answer-cutting.ts'
import { cuttingBooks } from '#reference/cutting/cutting-books.ts'

/** The calculation `cutting` with the books at hand: a case names a steel or a group, or brings its own force. @throws Refusal as `answerCutting` */
export const cuttingByTheBooks = (raw: unknown): ReturnType<typeof answerCutting> => answerCutting(raw, cuttingBooks)
