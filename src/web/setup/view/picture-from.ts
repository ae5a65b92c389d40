import type { PictureBar, SetupPicture } from '#drafting/setup/picture.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { placesOf } from '#engine/setup/places.ts'
import { type LengthUnit, mmPerInch } from '#model/length.ts'
import type { Bar } from '#model/bar.ts'
import type { Cut } from '#model/cut.ts'
import type { Choice, Place, Rejection, SetupQuestion } from '#model/setup.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { Bench } from '#web/setup/view/bench.ts'
import { standingOf } from '#engine/setup/standing.ts'
import { type Answered, isRefused, type SetupView } from '#web/setup/view/view-from.ts'

type LabelOf = (bar: Bar) => string
type Rest = Pick<Choice, 'bars' | 'stand' | 'stacked' | 'seatMm' | 'gripMm' | 'airMm'> & { readonly places: readonly Place[]; readonly fouledHoles: readonly number[] }

/**
 * What the drawing shows: the vise, the part as far as it is known, and the bars of the choice looked at.
 *
 * @returns null while something typed is refused: there is no part to draw
 */
export function pictureFrom(form: SetupForm, { waits, answered, counted }: SetupView, bench: Bench, labelOf: LabelOf, lengths: LengthUnit): SetupPicture | null {
  if (answered === null && !waits) return null
  const { jaws, vise } = bench, question = answered?.question ?? null, rest = answered && restOf(answered, bench)
  return {
    fixedJawHeightMm: jaws.fixedHeightMm, movingJawHeightMm: jaws.movingHeightMm, jawWidthMm: vise.jawWidthMm, openingMm: vise.openingMm,
    shape: form.shape,
    betweenJawsMm: question?.part.betweenJawsMm ?? null, alongJawsMm: question?.part.alongJawsMm ?? null, heightMm: question?.part.heightMm ?? null,
    hollows: question?.part.hollows ?? [],
    cuts: [...form.cuts.map((_cut, line) => cutOnLine(question, counted.lines.indexOf(line))), ...(question?.cuts.filter(({ kind }) => kind === 'face') ?? [])],
    seatMm: rest?.seatMm ?? null, gripMm: rounded(rest?.gripMm, lengths), airMm: rounded(rest?.airMm, lengths),
    bars: rest ? barsOf(rest, bench, labelOf) : [],
  }
}

/** The same vise and part with nothing that an answer gave: what stays on the sheet while there is none. */
export function withoutAnswer(picture: SetupPicture): SetupPicture {
  return { ...picture, gripMm: null, airMm: null, bars: [] }
}

/** What follows from measured heights, as it is said on the drawing: to a hundredth of a mm, a thousandth of an inch. */
function rounded(mm: number | null | undefined, lengths: LengthUnit): number | null {
  const step = lengths === 'mm' ? 0.01 : 0.001 * mmPerInch
  return mm === null || mm === undefined ? null : Math.round(mm / step) * step
}

const cutOnLine = (question: SetupQuestion | null, at: number): Cut | null => (at < 0 ? null : question?.cuts[at] ?? null)

function restOf({ shown, question }: Answered, bench: Bench): Rest | null {
  if (shown === null) return null
  return isRefused(shown) ? refusedRest(shown.rejection, question, bench) : shown
}

/** A candidate that was refused has no places of its own: it is drawn where it would have to stand. */
function refusedRest(rejection: Rejection, question: SetupQuestion, { bars }: Bench): Rest {
  const inPlan = standingOf({ ...rejection, places: [] }, bars).filter(({ fromMm }) => fromMm === 0).map(({ bar, acrossMm }) => ({ acrossMm, lengthMm: bar.lengthMm }))
  const { places, fouledHoles } = placesOf(obstaclesOf(question.part, question.cuts, question.wishes), inPlan)
  return { ...rejection, places, fouledHoles }
}

function barsOf(rest: Rest, bench: Bench, labelOf: LabelOf): readonly PictureBar[] {
  return standingOf(rest, bench.bars).map(({ bar, acrossMm, upMm, fromMm, place }) => ({
    label: labelOf(bar), acrossMm, upMm, lengthMm: bar.lengthMm, place, fromMm, fouled: rest.fouledHoles.length > 0,
  }))
}
