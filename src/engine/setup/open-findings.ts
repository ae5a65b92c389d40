import type { Finding } from '#model/finding.ts'
import type { SetupQuestion } from '#model/setup.ts'
import { isMilled, isThroughCut } from '#engine/setup/reach.ts'

/** What an answer leaves open, because it was not given or is not computed here. */
export function openFindingsOf({ part, cuts }: SetupQuestion): readonly Finding[] {
  const which = (isSo: (cut: (typeof cuts)[number]) => boolean) => cuts.flatMap((cut, k) => (isSo(cut) ? [k] : []))
  const holes = which((cut) => cut.kind === 'hole' && cut.through && cut.xMm === null)
  const notPlaced = which((cut) => isMilled(cut) && !cut.rect && isThroughCut(cut, part.heightMm))
  return [
    ...(part.betweenJawsMm === null ? [{ code: 'between-not-given', facts: {} }] : []),
    ...(part.alongJawsMm === null ? [{ code: 'along-not-given', facts: {} }] : []),
    ...(holes.length > 0 ? [{ code: 'hole-along-not-given', facts: { holes } }] : []),
    ...(notPlaced.length > 0 ? [{ code: 'through-cut-not-placed', facts: { cuts: notPlaced } }] : []),
    { code: 'not-computed', facts: { what: notComputed } },
  ]
}

/** What bears on the hold of a part and is not looked at by choosing bars. */
const notComputed = ['holding force', 'overhang', 'bending', 'castings', 'thin walls']
