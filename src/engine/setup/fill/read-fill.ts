import { Refusal } from '#model/refusal.ts'
import type { FillQuestion, Size } from '#engine/setup/fill/fill.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** mm. A fill this near serves where nobody says otherwise. Common practice, no source. @source SETUP-RULES */
const commonToleranceMm = 0.05
/** Answers where nobody asks for more. */
const commonMost = 10
/** Sizes that are gone through, and answers, at most. */
const mostSizes = 3000, mostAnswers = 1000

/** A raw `fill` case. @throws Refusal with a malformed code, then `size-not-positive`, `wish-negative` */
export function readFillCase(raw: unknown): { readonly question: FillQuestion } & Ignored {
  const { value: question, ignored } = readCase(raw, (object): FillQuestion => ({
    targetMm: object.number('targetMm'), toleranceMm: object.numberOr('toleranceMm', commonToleranceMm),
    sizes: object.list('sizes', readSize, mostSizes), most: object.countOr('most', commonMost),
  }))
  const { targetMm, toleranceMm, sizes, most } = question
  if (most > mostAnswers) throw new Refusal('too-many', { field: 'most', given: most, needed: mostAnswers })
  for (const [field, given] of [['targetMm', targetMm] as const, ...sizes.map(({ sizeMm }, k) => [`sizes[${k}].sizeMm`, sizeMm] as const)]) {
    if (given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: { aboveMm: 0 } })
  }
  if (toleranceMm < 0) throw new Refusal('wish-negative', { field: 'toleranceMm', given: toleranceMm, needed: 0 })
  return { question, ignored }
}

const readSize = (raw: RawObject): Size => ({ id: raw.text('id'), sizeMm: raw.number('sizeMm') })
