import type { GrindingRow } from '#model/cutting-data.ts'
import type { Sum } from '#model/sum.ts'
import { grindOf } from '#engine/make/grind/grind.ts'
import type { Grind, GrindQuestion } from '#engine/make/grind/grinding-job.ts'
import { readGrind, refuseGrind } from '#engine/make/grind/read-grind.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

/** The calculation `grind`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `refuseGrind` */
export function answerGrind(raw: unknown, rows: readonly GrindingRow[]): Grind & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object) => readGrind(object, rows))
  refuseGrind(question)
  const grind = grindOf(question)
  return { ...grind, ignored, sum: sumOf(question, grind) }
}

function sumOf({ sparkOut, wheel, sides, bars, heightMm, thicknessMm, lengthMm }: GrindQuestion, { removal: { neededUm, ...parts }, allowanceUm, spareUm, passesPerSide, sweepsPerSide, stages, machineMin }: Grind): readonly Sum[] {
  const sources = ['GRIND-RULES'], acrossMm = bars * (sides === 'edges' ? thicknessMm : heightMm) + (bars - 1) * (wheel?.gapMm ?? 0)
  return [
    { formula: 'grind-needed', result: { name: 'neededUm', value: neededUm }, inputs: { ...parts }, sources },
    ...(allowanceUm === null ? [] : [{ formula: 'grind-spare', result: { name: 'spareUm', value: spareUm }, inputs: { allowanceUm, neededUm }, sources }]),
    ...stages.map(({ passes, takesUm, infeedUm }) => ({ formula: 'grind-stage-passes', result: { name: 'passes', value: passes }, inputs: { stageTakesUm: takesUm, infeedUm }, sources })),
    { formula: 'grind-sweeps', result: { name: 'sweepsPerSide', value: sweepsPerSide }, inputs: { cutting: passesPerSide, sparkOut }, sources },
    ...(wheel === null ? [] : [{ formula: 'grind-minutes', result: { name: 'machineMin', value: machineMin }, inputs: { sweeps: sweepsPerSide, acrossMm, wheelMm: wheel.widthMm, crossfeedMm: wheel.crossfeedMm, lengthMm, overrunMm: wheel.overrunMm, tableMPerMin: wheel.tableMPerMin }, sources: ['GEOMETRY'] }]),
  ]
}
