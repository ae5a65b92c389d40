import { readSizeMm, wordLength } from '#model/length.ts'
import type { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { JawSet, ViseFields } from '#model/vise-record.ts'
import { readFields, readName } from '#web/parts/read-fields.ts'

export type JawTexts = { readonly id: string; readonly name: string; readonly fixed: string; readonly moving: string; readonly step: string; readonly face: JawSet['face'] }

/** A vise as typed. Of a jaw set an empty `moving` is as high as the fixed jaw, an empty `step` is none. */
export type ViseTexts = { readonly name: string; readonly jawWidth: string; readonly opening: string; readonly note: string; readonly jawSets: readonly JawTexts[]; readonly fitted: string }

/** Refusals by the field they belong to; those of a jaw set as `jawSets[0].fixedHeightMm`. */
export type ViseWrong = { readonly [field: string]: Refusal | undefined }

export function newJawTexts(id: string, name: string): JawTexts {
  return { id, name, fixed: '', moving: '', step: '', face: 'smooth' }
}

export function viseTexts(vise: ViseFields, units: Units): ViseTexts {
  return {
    name: vise.name, jawWidth: wordLength(vise.jawWidthMm, units), opening: wordLength(vise.openingMm, units), note: vise.note, fitted: vise.fittedJawSetId,
    jawSets: vise.jawSets.map(({ id, name, fixedHeightMm, movingHeightMm, stepHeightMm, face }) => ({
      id, name, face, fixed: wordLength(fixedHeightMm, units), moving: wordLength(movingHeightMm, units), step: stepHeightMm === null ? '' : wordLength(stepHeightMm, units),
    })),
  }
}

/** The vise that was typed, or every refusal. A size whose text is as it was before keeps its full digits. */
export function readVise(texts: ViseTexts, before: ViseFields | null, units: Units): { readonly values: Omit<ViseFields, 'retired' | 'measured'> } | { readonly refused: ViseWrong } {
  const old = before && viseTexts(before, units)
  const size = (text: string, field: string, oldText: string | undefined, oldMm: number | undefined) => () =>
    text === oldText && oldMm !== undefined ? oldMm : readSizeMm(text, units.length, field)
  const own = readFields<Pick<ViseFields, 'name' | 'jawWidthMm' | 'openingMm'>>({
    name: () => readName(texts.name, 'name'),
    jawWidthMm: size(texts.jawWidth, 'jawWidthMm', old?.jawWidth, before?.jawWidthMm),
    openingMm: size(texts.opening, 'openingMm', old?.opening, before?.openingMm),
  })
  const sets = texts.jawSets.map((jaw, at) => {
    const was = old?.jawSets.find(({ id }) => id === jaw.id), wasSet = before?.jawSets.find(({ id }) => id === jaw.id), path = `jawSets[${at}]`
    const moving = jaw.moving.trim() === '' ? { text: jaw.fixed, was: was?.fixed, mm: wasSet?.fixedHeightMm } : { text: jaw.moving, was: was?.moving, mm: wasSet?.movingHeightMm }
    return readFields<JawSet>({
      id: () => jaw.id,
      name: () => readName(jaw.name, `${path}.name`),
      fixedHeightMm: size(jaw.fixed, `${path}.fixedHeightMm`, was?.fixed, wasSet?.fixedHeightMm),
      movingHeightMm: jaw.moving.trim() === '' && jaw.fixed.trim() === '' ? () => 0 : size(moving.text, `${path}.movingHeightMm`, moving.was, moving.mm),
      stepHeightMm: () => (jaw.step.trim() === '' ? null : size(jaw.step, `${path}.stepHeightMm`, was?.step, wasSet?.stepHeightMm ?? undefined)()),
      face: () => jaw.face,
    })
  })
  const wrong: { [field: string]: Refusal } = {}
  for (const read of [own, ...sets]) {
    if ('refused' in read) for (const refusal of Object.values(read.refused)) wrong[fieldOf(refusal)] = refusal
  }
  if (!('values' in own) || Object.keys(wrong).length > 0) return { refused: wrong }
  const jawSets = sets.flatMap((read) => ('values' in read ? [read.values] : []))
  return { values: { ...own.values, jawSets, fittedJawSetId: texts.fitted, note: texts.note } }
}

function fieldOf({ facts: { field } }: Refusal): string {
  return typeof field === 'string' ? field : ''
}
