import type { Trust, Whereabouts } from '#model/bar.ts'
import type { PlaceStatus } from '#model/setup.ts'
import type { Way } from '#model/wishes.ts'
import type { Terms } from '#words/terms.ts'

/** Where the bars stand, as a phrase after the bars' name. */
export const statusWords: { readonly [status in PlaceStatus]: string } = {
  'at the jaws': 'at the jaws',
  'in the middle': 'in the middle',
  'on the bed': 'on the bed',
  'shifted': 'moved along',
  'inboard': 'inboard',
  'off the middle': 'off the middle',
  'fouled': 'cut into',
  'bar-in-cut': 'in the end cut',
  'too-thick': 'too thick',
}

export const wayWords: { readonly [way in Way]: string } = {
  'on edge': 'on edge', 'lying flat': 'lying flat', 'stack': 'two high', 'single': 'one bar in the middle', 'bed': 'on the bed',
}

/** Trust as it stands on a screen; a drill bar is a beater there. */
export const trustWords: { readonly [trust in Trust]: string } = {
  'trusted': 'trusted', 'look first': 'look first', 'drill bar': 'beater', 'in work': 'in work', 'gone': 'gone',
}

export function whereWords(where: Whereabouts, terms: Pick<Terms, 'vise'>): string {
  return { here: `in this ${terms.vise}`, slot: 'in its slot', out: 'out' }[where]
}
