import { Refusal } from '#model/refusal.ts'

/** Sizes that a case of the table shares with one of the vise, and what the fields of the table are called. */
const fields: readonly (readonly [path: RegExp, named: string])[] = [
  [/^part\.betweenJawsMm$/, 'part.partAcrossMm'], [/^part\.alongJawsMm$/, 'part.partAlongMm'], [/^bars\[\d+\]\.yMm$/, 'inFromEdgeMm'],
  [/^(cuts|straps)(\[\d+\])\.yMm$/, '$1$2.nearEdgeMm'], [/^(cuts|straps)(\[\d+\])\.xMm$/, '$1$2.leftEndMm'],
]

/** A refusal of a case of the table, its field named as on the screen: there are no jaws here. */
export function onTable(refusal: Refusal): Refusal {
  const { field } = refusal.facts, known = typeof field === 'string' ? fields.find(([path]) => path.test(field)) : undefined
  return known === undefined ? refusal : new Refusal(refusal.code, { ...refusal.facts, field: (field as string).replace(known[0], known[1]) })
}
