import { Refusal, type Facts } from '#model/refusal.ts'
import { depthsOf, holesOf, sizeField, sizesOf, stocksAndLeadsOf, wishesOf, type Named, type Refusable } from '#engine/setup/named-sizes.ts'
import { tipLengthMm } from '#engine/setup/reach.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * Refuses what cannot be: the first code of the order that applies anywhere. Sizes that are null are left out.
 *
 * @throws Refusal `size-not-positive`, `lower-jaw-above-higher`, `depth-negative`, `wish-negative`,
 * `angle-out-of-range`, `spot-through`, `part-wider-than-opening`, `cut-deeper-than-part`, `hole-off-part`,
 * `blind-hole-breaks-through`, `bar-id-twice`, each with field, given and needed
 *
 * @param fieldOf  where a size of the question stands on a form; the facts then name that field, and in `of` the size
 */
export function refuseImpossible(question: Refusable, fieldOf?: (path: string) => string): void {
  for (const [code, find] of inOrder) {
    const [facts] = find(question)
    if (facts) throw new Refusal(code, fieldOf ? { ...facts, field: fieldOf(facts.field), of: facts.field } : facts)
  }
}

type Find = (question: Refusable) => readonly (Facts & { readonly field: string })[]

/** In the order in which they are named. */
const inOrder: readonly (readonly [code: string, find: Find])[] = [
  ['size-not-positive', (question) => sizesOf(question).filter(([, given, above]) => given - above <= touchMm)
    .map(([field, given, above]) => ({ field, given, needed: field.endsWith('Mm') ? { aboveMm: above } : { above } }))],
  ['lower-jaw-above-higher', ({ vise }) => {
    const given = vise?.lowerJawHeightMm
    return vise && given !== undefined && given > vise.jawHeightMm + touchMm ? [{ field: 'vise.lowerJawHeightMm', given, needed: vise.jawHeightMm }] : []
  }],
  ['depth-negative', (question) => negative([...depthsOf(question), ...stocksAndLeadsOf(question)])],
  ['wish-negative', (question) => negative(wishesOf(question))],
  ['angle-out-of-range', (question) => holesOf(question).filter(({ hole: { tool, pointAngleDeg: deg } }) => tool === 'drill' && !(deg > leastPointDeg && deg <= 180))
    .map(({ hole, path }) => ({ field: `${path}.pointAngleDeg`, given: hole.pointAngleDeg, needed: 180 }))],
  ['spot-through', (question) => holesOf(question).filter(({ hole }) => hole.through && (hole.tool === 'spot' || hole.tool === 'countersink'))
    .map(({ path }) => ({ field: `${path}.through`, given: true, needed: false }))],
  ['part-wider-than-opening', ({ vise, part }) => {
    const given = part.betweenJawsMm
    return vise && given !== null && given > vise.openingMm + touchMm ? [{ field: sizeField(part, 'betweenJawsMm'), given, needed: vise.openingMm }] : []
  }],
  ['cut-deeper-than-part', (question) => depthsOf(question).filter(([, given]) => question.part.heightMm !== null && given > question.part.heightMm + touchMm)
    .map(([field, given]) => ({ field, given, needed: question.part.heightMm }))],
  ['hole-off-part', (question) => holesOf(question).flatMap(({ hole, path }) => [
    ...offPart(`${path}.xMm`, hole.xMm, question.part.alongJawsMm), ...offPart(`${path}.yMm`, hole.yMm, question.part.betweenJawsMm),
  ])],
  ['blind-hole-breaks-through', ({ part, ...question }) => holesOf({ part, ...question }).flatMap(({ hole, path }) => {
    const tipMm = tipLengthMm(hole)
    if (hole.through || hole.depthMm === undefined || part.heightMm === null || hole.depthMm + tipMm <= part.heightMm + touchMm) return []
    return [{ field: `${path}.depthMm`, given: hole.depthMm, needed: { mostMm: part.heightMm - tipMm }, tipMm }]
  })],
  ['bar-id-twice', ({ bars = [] }) => {
    const seen = new Map<string, number>()
    return bars.flatMap((bar, k) => {
      if (!('id' in bar)) return []
      const first = seen.get(bar.id)
      if (first === undefined) seen.set(bar.id, k)
      return first === undefined ? [] : [{ field: `bars[${k}].id`, given: bar.id, needed: 'another id', first: `bars[${first}].id` }]
    })
  }],
]

/** Degrees. A point sharper than this is no angle but a slip, and its length no number. */
const leastPointDeg = 1e-6

const negative = (named: readonly Named[]): ReturnType<Find> =>
  named.filter(([, given]) => given < -touchMm).map(([field, given]) => ({ field, given, needed: 0 }))

const offPart = (field: string, given: number | null, sizeMm: number | null): ReturnType<Find> =>
  given !== null && sizeMm !== null && (given < -touchMm || given > sizeMm + touchMm) ? [{ field, given, needed: { leastMm: 0, mostMm: sizeMm } }] : []
