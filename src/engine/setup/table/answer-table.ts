import { situations, type Situation } from '#model/situation.ts'
import type { Sum } from '#model/sum.ts'
import type { Ignored } from '#engine/read/read-case.ts'
import { geometrySources, rulesSources } from '#engine/setup/sum-sources.ts'
import { readTableCase } from '#engine/setup/table/read-table.ts'
import { tableOf, type Table, type TableQuestion } from '#engine/setup/table/table.ts'
import { sumsFromBelow } from '#engine/setup/window-sum.ts'

/** `situations`: which cautions belong beside the answer. */
export type TableAnswer = Table & Ignored & { readonly situations: readonly Situation[]; readonly sum: readonly Sum[] }

/** The calculation `table`: one raw case in, its answer out. @throws Refusal as `readTableCase` */
export function answerTable(raw: unknown): TableAnswer {
  const { question, ignored } = readTableCase(raw), table = tableOf(question)
  return { ...table, situations: situationsFor(question), ignored, sum: sumOf(question, table) }
}

function situationsFor({ cuts }: TableQuestion): readonly Situation[] {
  const mills = cuts.some((cut) => cut.kind !== 'hole'), drills = cuts.some((cut) => cut.kind === 'hole' && cut.through)
  return situations.filter((one) => one === 'straps' || (one === 'milling over bars' && mills) || (one === 'drilling through' && drills))
}

function sumOf(question: TableQuestion, { lowMm, lowBecause }: Table): readonly Sum[] {
  const { cuts, wishes: { holeAirMm } } = question
  return [
    ...sumsFromBelow(question, lowBecause),
    ...(lowBecause === 'table' ? [{ formula: 'low-table', result: { name: 'lowMm', value: lowMm }, inputs: { tableMm: 0 }, sources: rulesSources }] : []),
    ...cuts.flatMap((cut, k) => (cut.kind === 'hole' && cut.through ? [{
      formula: 'keep-out-hole', result: { name: `cuts[${k}].keepOutMm`, value: cut.diameterMm / 2 + holeAirMm }, inputs: { diameterMm: cut.diameterMm, holeAirMm }, sources: geometrySources,
    }] : [])),
  ]
}
