import type { SetupAnswer } from '#model/setup.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { type Ignored } from '#engine/read/read-case.ts'
import { readSetupCase } from '#engine/setup/read-question.ts'

/** The calculation `setup`: one raw case in, its answer out. @throws Refusal as `readSetupCase` and `indexRack` */
export function answerSetup(raw: unknown): SetupAnswer & Ignored {
  const { question, bars, ignored } = readSetupCase(raw)
  return { ...chooseBars(question, indexRack(bars)), ignored }
}
