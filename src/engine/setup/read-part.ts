import { shapes, type Part } from '#model/part.ts'
import type { Vise } from '#model/vise.ts'
import type { PartInPlan } from '#engine/setup/obstacles.ts'
import { readRect } from '#engine/setup/read-cut.ts'
import type { RawObject } from '#engine/read/raw-object.ts'

export function readVise(raw: RawObject): Vise {
  const jawWidthMm = raw.numberOr('jawWidthMm', null), lowerJawHeightMm = raw.numberOr('lowerJawHeightMm', null)
  return {
    jawHeightMm: raw.number('jawHeightMm'),
    openingMm: raw.number('openingMm'),
    ...(jawWidthMm === null ? {} : { jawWidthMm }),
    ...(lowerJawHeightMm === null ? {} : { lowerJawHeightMm }),
  }
}

/** A part whose sizes all have to be given; a round one gives its diameter in place of height and between jaws. */
export const readPart = (raw: RawObject): Part => readSizes(raw, () => raw.number('heightMm'))

/** A part seen from above, whose height may be left out. */
export const readPartInPlan = (raw: RawObject): PartInPlan => readSizes(raw, () => raw.numberOr('heightMm', null))

function readSizes<Height extends number | null>(raw: RawObject, readHeight: () => Height): Omit<Part, 'heightMm'> & { readonly heightMm: Height | number } {
  const shape = raw.wordOr('shape', shapes, 'block')
  const alongJawsMm = raw.number('alongJawsMm'), hollows = raw.listOrEmpty('hollows', readRect)
  if (shape === 'block') return { shape, betweenJawsMm: raw.number('betweenJawsMm'), alongJawsMm, heightMm: readHeight(), hollows }
  const diameterMm = raw.number('diameterMm')
  return { shape, betweenJawsMm: diameterMm, alongJawsMm, heightMm: diameterMm, hollows }
}
