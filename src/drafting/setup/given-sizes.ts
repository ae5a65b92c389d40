import { type Said, fieldFor, lettered, sizeText } from '#drafting/setup/said.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import type { Shown } from '#drafting/setup/shown.ts'

/** Boxes of the sizes that a person gives; null where the drawing has no use for one. */
export type GivenSizes = { readonly jaw: Said; readonly height: Said; readonly offTop: Said | null; readonly between: Said | null; readonly along: Said }

/** A round part has one size across, its diameter, which is said as its height. */
export function givenSizes({ picture, faceMm }: Shown, { units, fields }: SheetOptions): GivenSizes {
  const round = picture.shape === 'round'
  if (fields !== 'none') {
    return { jaw: fieldFor('jaw'), height: fieldFor('height'), offTop: fieldFor('offTop'), between: round ? null : fieldFor('between'), along: fieldFor('along') }
  }
  const height = sizeText(picture.heightMm, units)
  return {
    jaw: lettered('jaw', [sizeText(picture.fixedJawHeightMm, units)]),
    height: lettered('height', [round ? `Ø${height}` : height]),
    offTop: faceMm > 0 ? lettered('offTop', [sizeText(faceMm, units)]) : null,
    between: round ? null : lettered('between', [sizeText(picture.betweenJawsMm, units)]),
    along: lettered('along', [sizeText(picture.alongJawsMm, units)]),
  }
}
