import type { Sum } from '#model/sum.ts'
import type { TurnOverAnswer, TurnOverQuestion } from '#engine/inspect/turn-over.ts'

/** What the middle stands above the chord by, on either face: half their sum is the height's crown over two, half their difference the bend. */
export function sumOfTurnOver({ zeroMm }: Pick<TurnOverQuestion, 'zeroMm'>, { bowUm, heightCrownUm, heightAtMiddleMm, parallelismUm, heightsUm }: TurnOverAnswer): readonly Sum[] {
  const faceADepartureUm = heightCrownUm / 2 + bowUm, faceBDepartureUm = heightCrownUm / 2 - bowUm, sources = ['REVERSAL']
  return [
    { formula: 'bow', result: { name: 'bowUm', value: bowUm }, inputs: { faceADepartureUm, faceBDepartureUm }, sources },
    { formula: 'height-crown', result: { name: 'heightCrownUm', value: heightCrownUm }, inputs: { faceADepartureUm, faceBDepartureUm }, sources },
    ...(heightsUm === null ? [] : [{ formula: 'parallelism', result: { name: 'parallelismUm', value: parallelismUm }, inputs: { highestUm: Math.max(...heightsUm), lowestUm: Math.min(...heightsUm) }, sources: ['TURN-OVER-MODEL'] }]),
    { formula: 'mean-height', result: { name: 'heightAtMiddleMm', value: heightAtMiddleMm }, inputs: { zeroMm, meanReadingUm: (heightAtMiddleMm - zeroMm) * 1000 }, sources: ['TURN-OVER-MODEL'] },
  ]
}
