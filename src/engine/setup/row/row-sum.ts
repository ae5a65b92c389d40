import type { Sum } from '#model/sum.ts'
import type { Row } from '#engine/setup/row/row.ts'
import type { RowQuestion } from '#engine/setup/row/row-question.ts'
import { rulesSources } from '#engine/setup/sum-sources.ts'

/** The top in each vise, what separates them, and what each vise is told to add. */
export function sumOfRow({ vises, pairs, longBar: asked }: RowQuestion, { assignment, spreadUm, zOffsetsUm, worstMatchUm, longBar }: Row): readonly Sum[] {
  const meanOf = new Map(pairs.map((pair) => [pair.id, pair.meanMm]))
  const tops = assignment.map((id, k) => ({ bedUm: vises[k]!.bedUm, meanMm: meanOf.get(id)! })).map((inputs) => ({ inputs, topMm: inputs.meanMm + inputs.bedUm / 1000 }))
  const topsMm = tops.map(({ topMm }) => topMm)
  return [
    ...tops.flatMap(({ inputs, topMm }, k) => [
      sum('row-top', `tops[${k}].topMm`, topMm, inputs),
      sum('row-offset', `zOffsetsUm[${k}].zOffsetUm`, zOffsetsUm[k]!, { topMm, firstTopMm: topsMm[0]! }),
    ]),
    sum('row-spread', 'spreadUm', spreadUm, { highestTopMm: Math.max(...topsMm), lowestTopMm: Math.min(...topsMm) }),
    ...(asked === null || longBar === undefined ? [] : [sum('row-long-bar', 'longBar.endToEndUm', longBar.endToEndUm,
      { fromBedUm: vises[asked.from]!.bedUm, toBedUm: vises[asked.to]!.bedUm, apartMm: asked.apartMm, longMm: asked.lengthMm })]),
    ...(worstMatchUm === undefined ? [] : [sum('row-worst-match', 'worstMatchUm', worstMatchUm, { worstMatchUm })]),
  ]
}

const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs']): Sum => ({ formula, result: { name, value }, inputs, sources: rulesSources })
