import type { Sum } from '#model/sum.ts'
import { type Cutting, cuttingOf } from '#engine/make/cutting/cutting.ts'
import { type CuttingBooks, cuttingQuestionFrom, readCutting } from '#engine/make/cutting/read-cutting.ts'
import { type CuttingQuestion, leastChipMm } from '#engine/make/cutting/side-pass.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

/** The calculation `cutting`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `cuttingQuestionFrom` */
export function answerCutting(raw: unknown, books: CuttingBooks): Cutting & Pick<CuttingQuestion, 'force'> & Ignored & { readonly sum: readonly Sum[] } {
  const { value, ignored } = readCase(raw, (object) => readCutting(object, books)), question = cuttingQuestionFrom(value, books), cutting = cuttingOf(question)
  return { ...cutting, force: question.force, ignored, sum: sumOf(question, cutting) }
}

/** Of the finishing pass where a pass is meant. */
function sumOf({ force: { kc11MPa, mc, source }, data, cutter: { diameterMm, teeth, stickOutMm, eMPa }, depthMm, machine: { efficiency } }: CuttingQuestion, { rpm, speedMPerMin, feedPerToothMm, feedMmPerMin, passes }: Cutting): readonly Sum[] {
  const pass = passes.find(({ kind }) => kind === 'finish')!, { facesMm: takenMm, chip, kcMPa, removalCm3PerMin, cutterKw, toothN, bendingN } = pass, sources = ['CUTTING-FORCE'], forceSources = [source]
  return [
    { formula: 'cutting-speed', result: { name: 'speedMPerMin', value: speedMPerMin }, inputs: { rpm, diameterMm }, sources: [data?.source ?? 'SHOP'] },
    { formula: 'table-feed', result: { name: 'feedMmPerMin', value: feedMmPerMin }, inputs: { rpm, teeth, feedPerToothMm }, sources: ['GEOMETRY'] },
    { formula: 'chip-largest', result: { name: 'chipMm', value: chip.maxMm }, inputs: { feedPerToothMm, takenMm, diameterMm }, sources },
    { formula: 'removal-rate', result: { name: 'removalCm3PerMin', value: removalCm3PerMin }, inputs: { depthMm, takenMm, feedMmPerMin }, sources: ['GEOMETRY'] },
    { formula: 'specific-force', result: { name: 'kcMPa', value: kcMPa }, inputs: { kc11MPa, mc, meanChipMm: Math.max(chip.meanMm, leastChipMm) }, sources: forceSources },
    { formula: 'cutter-power', result: { name: 'cutterKw', value: cutterKw }, inputs: { removalCm3PerMin, kcMPa }, sources: forceSources },
    { formula: 'motor-power', result: { name: 'motorKw', value: pass.motorKw }, inputs: { cutterKw, efficiency }, sources: ['SHOP-PRACTICE'] },
    { formula: 'tooth-force', result: { name: 'toothN', value: toothN }, inputs: { kc11MPa, mc, depthMm, chipMm: chip.maxMm, thinnestMm: leastChipMm }, sources: forceSources },
    { formula: 'cutter-deflection', result: { name: 'tipUm', value: pass.deflection.tipUm }, inputs: { bendingN, overhangMm: stickOutMm, eMPa, diameterMm }, sources: ['CUTTER-BENDING'] },
  ]
}
