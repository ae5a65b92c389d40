import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestUm, mostStations } from '#engine/inspect/reading-limits.ts'
import { turnOverOf, type TurnOverAnswer, type TurnOverQuestion } from '#engine/inspect/turn-over.ts'
import { sumOfTurnOver } from '#engine/inspect/turn-over-sum.ts'
import { longestMm } from '#engine/read/raw-object.ts'

/** The calculation `turn-over`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `turnOverOf` */
export function answerTurnOver(raw: unknown): TurnOverAnswer & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): TurnOverQuestion => ({
    zeroMm: object.number('zeroMm'), lengthMm: object.number('lengthMm'), stationsMm: object.numbers('stationsMm', longestMm, mostStations),
    faceAUpUm: object.numbers('faceAUpUm', longestUm, mostStations), faceBUpUm: object.numbers('faceBUpUm', longestUm, mostStations),
  }))
  const answer = turnOverOf(question)
  return { ...answer, ignored, sum: sumOfTurnOver(question, answer) }
}
