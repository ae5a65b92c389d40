import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import type { CutBarsData, CutPlateData } from '#drafting/make/cut-drawing.ts'
import type { BarCut, PlateCut } from '#model/blank.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { NameOf } from '#words/wording.ts'

/** Stock lengths as they are cut, one line for each way of cutting. */
export function barsDrawn(cut: BarCut, { plan }: CutBarsAnswer, units: Units): CutBarsData {
  const mm = (value: number) => wordLength(value, units)
  return {
    title: `Stock lengths ${mm(cut.widthMm)} × ${mm(cut.thicknessMm)}`, description: `${plan.length} ways of cutting, pieces from the left`, kerfMm: cut.kerf,
    lines: plan.map(({ stockLength, pieces, times }) => ({
      label: `${times} × ${mm(stockLength)}`, stockMm: stockLength,
      pieces: pieces.flatMap((count, kind) => Array.from({ length: count }, () => ({ label: `${mm(cut.of[kind]!.heightMm)}${cut.of[kind]!.blanks > 1 ? ' pair' : ''}`, lengthMm: cut.pieces[kind]![0] }))),
    })),
  }
}

/** A plate as it is cut, strip by strip. */
export function plateDrawn(cut: PlateCut, { plan }: CutPlateAnswer, units: Units, nameOf: NameOf): CutPlateData {
  return {
    title: `Plate ${nameOf(cut.stockId)}`, description: `${plan.length} strips across the plate, pieces in each`, kerfMm: cut.kerf, widthMm: cut.plateWidth, lengthMm: cut.plateLength,
    strips: plan.map(([heightMm, pieces]) => ({ heightMm, pieces: pieces.flatMap(([lengthMm, upMm, count]) => Array.from({ length: count }, () => ({ label: wordLength(upMm, units), lengthMm, upMm }))) })),
  }
}
