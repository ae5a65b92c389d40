import type { Sum } from '#model/sum.ts'
import type { Ignored } from '#engine/read/read-case.ts'
import { readRowCase } from '#engine/setup/row/read-row.ts'
import { rowOf, type Row } from '#engine/setup/row/row.ts'
import { sumOfRow } from '#engine/setup/row/row-sum.ts'

/** The calculation `row`: one raw case in, its answer out. @throws Refusal as `readRowCase` */
export function answerRow(raw: unknown): Row & Ignored & { readonly sum: readonly Sum[] } {
  const { question, ignored } = readRowCase(raw), row = rowOf(question)
  return { ...row, ignored, sum: sumOfRow(question, row) }
}
