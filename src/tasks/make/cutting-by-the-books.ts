import { answerCutting } from '#engine/make/cutting/answer-cutting.ts'
import { cutterData } from '#reference/cutting/cutter-data.ts'
import { specificForces } from '#reference/cutting/specific-forces.ts'
import { steelGroups } from '#reference/cutting/steel-groups.ts'

/** The calculation `cutting` with the books at hand: a case names a steel or a group, or brings its own force. @throws Refusal as `answerCutting` */
export const cuttingByTheBooks = (raw: unknown): ReturnType<typeof answerCutting> => answerCutting(raw, { forces: specificForces, cutters: cutterData, steels: steelGroups })
