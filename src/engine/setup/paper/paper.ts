import { causesOf, type Cause, type Meaning } from '#engine/setup/paper/causes.ts'
import { acrossFrom, alongFrom, corners, type Corner, type Strips } from '#engine/setup/paper/strips.ts'

/** What was found with a strip of paper under each corner; the part's sizes are those of its underside. Sizes nobody gave are null: no wedge is told then. */
export type PaperQuestion = {
  readonly part: { readonly betweenJawsMm: number | null; readonly alongJawsMm: number | null }
  readonly stripMm: number
  /** Between the middles of the strips. */
  readonly acrossMm: number | null
  readonly alongMm: number | null
  readonly strips: Strips
  /** Whether the jaws are closed: they then hold the slope across. */
  readonly clamped: boolean
  /** Whether an indicator on the part's top says that it is out all the same. */
  readonly topOut: boolean
}

/** What the pattern may mean; corners and causes most likely first. Sizes are lower bounds, null where there is none. */
export type Paper = {
  readonly meaning: Meaning
  readonly lookAt: readonly Corner[]
  readonly causes: readonly Cause[]
  readonly gapAtLeastMm: number | null
  readonly wedgeAcrossAtLeastMm: number | null
  readonly wedgeAlongAtLeastMm: number | null
  /** With all strips held: a gap up to this is not seen. */
  readonly unseenUpToMm: number | null
}

/**
 * Is it down? What strips that pull out say about how the part lies.
 *
 * One corner loose while the jaws are closed: dirt straight across from it lifts the whole end, because the jaws hold the
 * slope across. The same on a part that is free: it rocks over the diagonal through the dirt, so a neighbour is dirty.
 *
 * @source PAPER-STATICS SETUP-RULES
 */
export function paperOf(question: PaperQuestion): Paper {
  const { part, stripMm, acrossMm, alongMm, strips, topOut } = question
  const loose = corners.filter((corner) => strips[corner] === 'loose'), meaning = meaningOf(loose, topOut)
  const acrossLoose = meaning === 'moving-side-up' || meaning === 'fixed-side-up'
  return {
    meaning,
    lookAt: lookAtOf(meaning, loose, question.clamped),
    causes: causesOf(meaning),
    gapAtLeastMm: loose.length === 0 ? null : stripMm,
    wedgeAcrossAtLeastMm: acrossLoose ? wedgeOf(stripMm, part.betweenJawsMm, acrossMm) : null,
    wedgeAlongAtLeastMm: meaning === 'end-up' ? wedgeOf(stripMm, part.alongJawsMm, alongMm) : null,
    unseenUpToMm: loose.length === 0 ? stripMm : null,
  }
}

const wedgeOf = (stripMm: number, partMm: number | null, apartMm: number | null): number | null => (partMm === null || apartMm === null ? null : (stripMm * partMm) / apartMm)

function meaningOf(loose: readonly Corner[], topOut: boolean): Meaning {
  const [first, second] = loose
  if (loose.length === 0) return topOut ? 'look-at-bars' : 'seated'
  if (loose.length === 1) return 'corner'
  if (loose.length === 3) return 'one-corner'
  if (loose.length === 4) return 'hung-up'
  if (second === alongFrom(first!)) return first === 'fixed-left' ? 'fixed-side-up' : 'moving-side-up'
  return second === acrossFrom(first!) ? 'end-up' : 'twisted'
}

function lookAtOf(meaning: Meaning, loose: readonly Corner[], clamped: boolean): readonly Corner[] {
  switch (meaning) {
    case 'seated': case 'look-at-bars': case 'hung-up':
      return []
    case 'corner': {
      const [corner] = loose
      return clamped ? [acrossFrom(corner!), corner!] : corners.filter((one) => one === alongFrom(corner!) || one === acrossFrom(corner!))
    }
    case 'twisted': case 'one-corner':
      return corners.filter((corner) => !loose.includes(corner))
    case 'moving-side-up': case 'fixed-side-up': case 'end-up':
      return loose
  }
}
