import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestUm, mostStations } from '#engine/inspect/reading-limits.ts'
import { turnOverOf, type TurnOverAnswer, type TurnOverQuestion } from '#engine/inspect/turn-over.ts'
import { longestMm } from '#engine/read/raw-object.ts'

/** The calculation `turn-over`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `turnOverOf` */
export function answerTurnOver(raw: unknown): TurnOverAnswer & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): TurnOverQuestion => ({
    zeroMm: object.number('zeroMm'), lengthMm: object.number('lengthMm'), stationsMm: object.numbers('stationsMm', longestMm, mostStations),
    faceAUpUm: object.numbers('faceAUpUm', longestUm, mostStations), faceBUpUm: object.numbers('faceBUpUm', longestUm, mostStations),
  }))
  const answer = turnOverOf(question)
  return { ...answer, ignored, sum: sumOf(question, answer) }
}

/** What the middle stands above the chord by, on either face: half their sum is the height's crown over two, half their difference the bend. */
function sumOf({ zeroMm }: TurnOverQuestion, { bowUm, heightCrownUm, heightAtMiddleMm, parallelismUm, heightsUm }: TurnOverAnswer): readonly Sum[] {
  const faceADepartureUm = heightCrownUm / 2 + bowUm, faceBDepartureUm = heightCrownUm / 2 - bowUm, sources = ['REVERSAL']
  return [
    { formula: 'bow', result: { name: 'bowUm', value: bowUm }, inputs: { faceADepartureUm, faceBDepartureUm }, sources },
    { formula: 'height-crown', result: { name: 'heightCrownUm', value: heightCrownUm }, inputs: { faceADepartureUm, faceBDepartureUm }, sources },
    ...(heightsUm === null ? [] : [{ formula: 'parallelism', result: { name: 'parallelismUm', value: parallelismUm }, inputs: { highestUm: Math.max(...heightsUm), lowestUm: Math.min(...heightsUm) }, sources: ['TURN-OVER-MODEL'] }]),
    { formula: 'mean-height', result: { name: 'heightAtMiddleMm', value: heightAtMiddleMm }, inputs: { zeroMm, meanReadingUm: (heightAtMiddleMm - zeroMm) * 1000 }, sources: ['TURN-OVER-MODEL'] },
  ]
}
