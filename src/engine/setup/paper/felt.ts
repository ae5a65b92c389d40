import { corners, type Corner, type Strips } from '#engine/setup/paper/strips.ts'

/** How a strip answers a pull: it does not come, it comes with drag, it comes out. */
export const felts = ['tight', 'drags', 'free'] as const
export type Felt = (typeof felts)[number]
export type FeltStrips = { readonly [corner in Corner]: Felt }

/**
 * Strips as the paper test takes them. One that drags carries little: where none is free it counts as loose beside the tight
 * ones; beside a free one it counts as held. Four that drag alike are held alike.
 *
 * @source SETUP-RULES (held and loose); drag is common practice, no source
 */
export function stripsFelt(felt: FeltStrips): Strips {
  const loosest = loosestOf(felt)
  return Object.fromEntries(corners.map((corner) => [corner, felt[corner] === loosest ? 'loose' : 'held'] as const)) as { [corner in Corner]: Strips[Corner] }
}

/** Whether what counts as loose only drags: the gap there is then about the strip, not at least the strip. */
export const isAbout = (felt: FeltStrips): boolean => loosestOf(felt) === 'drags'

function loosestOf(felt: FeltStrips): Felt | null {
  const all = corners.map((corner) => felt[corner])
  return all.includes('free') ? 'free' : all.includes('drags') && all.includes('tight') ? 'drags' : null
}
