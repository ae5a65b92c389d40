import type { Cut } from '#model/cut.ts'
import type { Units } from '#model/shop-record.ts'
import { letteringMm } from '#drafting/items.ts'
import { wrapped } from '#drafting/lettering.ts'
import type { Point } from '#drafting/scene.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { fieldFor, lettered, type Said, sizeText } from '#drafting/setup/said.ts'
import type { SheetWords } from '#drafting/setup/sheet-words.ts'
import type { Shown } from '#drafting/setup/shown.ts'

/** A cut with the box that speaks of it; null: its numbers are still being typed. */
export type CallOut = { readonly said: Said; readonly cut: Cut | null }

/** Lettering of a hole is broken into lines of this length, not to push the views aside. */
const lineMm = 19

type Listed = { readonly cut: Cut | null; readonly index: number; readonly alike: number }

/** A field for every cut but faces, named `cuts[i]` as counted without the faces: the first of each kind of hole before its likes. */
export function cutFields(shown: Shown): readonly CallOut[] {
  const listed = listedCuts(shown)
  return [...listed.filter(({ alike }) => alike > 0), ...listed.filter(({ alike }) => alike === 0)].map(({ cut, index }) => ({ cut, said: fieldFor(`cuts[${index}]`) }))
}

/** The same as lettering: `2 × Ø8.5`, `6 from fixed jaw` once for the holes that are alike but for their place along the jaws. */
export function cutLettering(shown: Shown, units: Units, words: SheetWords): readonly CallOut[] {
  return listedCuts(shown).flatMap(({ cut, index, alike }) =>
    cut !== null && alike > 0 ? [{ cut, said: lettered(`cuts[${index}]`, linesFor(cut, alike, units, words)) }] : [])
}

/** The point in the plan that a call-out speaks of; null where nobody said where the cut is. */
export function targetOf(cut: Cut | null, { alongMm, betweenMm }: Shown, { inPlan, scale }: Frame): Point | null {
  if (cut === null) return null
  switch (cut.kind) {
    case 'hole': {
      const [x, y] = inPlan(cut.xMm ?? alongMm / 2, cut.yMm)
      return [x - (cut.diameterMm / 2) * scale, y]
    }
    case 'end': return inPlan(cut.side === 'left' ? cut.stockMm / 2 : alongMm - cut.stockMm / 2, betweenMm * 0.1)
    case 'face': case 'step': case 'slot': return cut.rect ? inPlan((within(cut.rect.x0Mm, alongMm) + within(cut.rect.x1Mm, alongMm)) / 2, within(cut.rect.y0Mm, betweenMm)) : null
  }
}

const within = (mm: number, mostMm: number): number => Math.min(mostMm, Math.max(0, mm))

/** `alike`: how many holes the first of them stands for, itself counted; 0 for the others. */
function listedCuts({ picture }: Shown): readonly Listed[] {
  const cuts = picture.cuts.filter((cut) => cut?.kind !== 'face')
  const keys = cuts.map((cut, index) => (cut?.kind === 'hole' ? JSON.stringify({ ...cut, xMm: null }) : String(index)))
  return cuts.map((cut, index) => ({ cut, index, alike: keys.indexOf(keys[index]!) === index ? keys.filter((key) => key === keys[index]).length : 0 }))
}

function linesFor(cut: Cut, alike: number, units: Units, words: SheetWords): readonly string[] {
  switch (cut.kind) {
    case 'hole': return [`${alike > 1 ? `${alike} × ` : ''}Ø${sizeText(cut.diameterMm, units)}`, ...wrapped(`${sizeText(cut.yMm, units)} ${words.fromJaw}`, lineMm, letteringMm)]
    case 'end': return [sizeText(cut.stockMm, units), words.end]
    case 'face': case 'step': case 'slot': return [sizeText(cut.depthMm, units), words[cut.kind]]
  }
}
