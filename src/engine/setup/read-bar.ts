import { standings, trusts, whereabouts, type Bar } from '#model/bar.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'

/** A bar of the rack. What is left out: trusted, its height measured, its thickness only marked, in its slot. */
export function readBar(raw: RawObject): Bar {
  const heightsUm = raw.pairsOr('heightsUm', null, 1000 * longestMm)
  return {
    id: raw.text('id'),
    heightMm: raw.number('heightMm'), thicknessMm: raw.number('thicknessMm'), lengthMm: raw.number('lengthMm'),
    ...(raw.has('mates') ? { mates: raw.text('mates') } : {}),
    trust: raw.wordOr('trust', trusts, 'trusted'),
    standing: raw.wordOr('standing', standings, 'measured'),
    thicknessStanding: raw.wordOr('thicknessStanding', standings, 'marked'),
    where: raw.wordOr('where', whereabouts, 'slot'),
    ...(heightsUm === null ? {} : { heightsUm }),
  }
}

/** A bar of `places`, as it stands: its thickness lies across. */
export const readBarInPlan = (raw: RawObject): BarInPlan => ({ acrossMm: raw.number('thicknessMm'), lengthMm: raw.number('lengthMm') })
