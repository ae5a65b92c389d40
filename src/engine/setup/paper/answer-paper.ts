import type { Situation } from '#model/situation.ts'
import type { Sum } from '#model/sum.ts'
import { toldApart, type Told } from '#engine/setup/paper/causes.ts'
import { paperOf, type Paper, type PaperQuestion } from '#engine/setup/paper/paper.ts'
import { readPaperCase } from '#engine/setup/paper/read-paper.ts'
import type { Ignored } from '#engine/read/read-case.ts'
import { rulesSources } from '#engine/setup/sum-sources.ts'

/** `tellApart`: how to find out which of the causes it is. `situations`: which cautions belong beside the answer. */
export type PaperAnswer = Paper & Ignored & { readonly tellApart: readonly Told[]; readonly situations: readonly Situation[]; readonly sum: readonly Sum[] }

/** The calculation `paper`: one raw case in, its answer out. @throws Refusal as `readPaperCase` */
export function answerPaper(raw: unknown): PaperAnswer {
  const { question, ignored } = readPaperCase(raw)
  return { ...paperTold(question), ignored }
}

/** The answer to a question that was read. */
export function paperTold(question: PaperQuestion): Omit<PaperAnswer, 'ignored'> {
  const paper = paperOf(question)
  return { ...paper, tellApart: toldApart(paper.causes), situations: ['seating'], sum: sumOf(question, paper) }
}

function sumOf({ part, stripMm, acrossMm, alongMm }: PaperQuestion, paper: Paper): readonly Sum[] {
  const sum = (formula: string, name: keyof Paper, inputs: Sum['inputs']): readonly Sum[] => {
    const value = paper[name]
    return typeof value === 'number' ? [{ formula, result: { name, value }, inputs, sources: rulesSources }] : []
  }
  return [
    ...sum('paper-gap', 'gapAtLeastMm', { stripMm }),
    ...sum('paper-wedge-across', 'wedgeAcrossAtLeastMm', { stripMm, betweenJawsMm: part.betweenJawsMm, stripsAcrossMm: acrossMm }),
    ...sum('paper-wedge-along', 'wedgeAlongAtLeastMm', { stripMm, alongJawsMm: part.alongJawsMm, stripsAlongMm: alongMm }),
    ...sum('paper-unseen', 'unseenUpToMm', { stripMm }),
  ]
}
