import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import type { Choice } from '#model/setup.ts'
import type { Situation } from '#model/situation.ts'

/** What is no choice out of the rack: its caution is asked for by name. The rest is the making of bars and the surface plate. */
type Elsewhere = 'step jaw' | 'rod' | 'straps' | 'magnetic chuck' | 'sawing' | 'milling bars' | 'rubbing' | 'sharp edges' | 'furnace' | 'quench' | 'untempered'
  | 'straightening' | 'hard milling' | 'grinding wheel' | 'grinding thin bars' | 'stoning' | 'at the plate'

/** Which cautions a choice and its cuts call for. Common practice, no source. */
export function situationsOf(
  choice: Pick<Choice, 'stand' | 'status' | 'bars' | 'trust' | 'findings'>, part: Pick<Part, 'shape'>, cuts: readonly Cut[],
): ReadonlySet<Situation> {
  const onBars = choice.bars.length > 0
  const calls: { readonly [situation in Exclude<Situation, Elsewhere>]: boolean } = {
    'look first': choice.trust === 'look first',
    'seating': true,
    'stack': choice.stand === 'stack',
    'single bar': choice.stand === 'single',
    'round part': part.shape === 'round',
    'thin grip': choice.findings.some((finding) => finding.code === 'thin-nip'),
    'loose bar': onBars,
    'handle off the vise': true,
    'milling over bars': onBars && cuts.some((cut) => cut.kind !== 'hole'),
    'drilling through': cuts.some((cut) => cut.kind === 'hole' && cut.through),
    'drill bar': choice.status === 'fouled',
  }
  return new Set((Object.keys(calls) as (keyof typeof calls)[]).filter((situation) => calls[situation]))
}
