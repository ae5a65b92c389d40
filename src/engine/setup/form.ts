import type { LengthUnit } from '#model/length.ts'
import { readLengthMm } from '#model/length.ts'
import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import type { CutForm, SetupForm } from '#model/setup-form.ts'
import type { SetupQuestion } from '#model/setup.ts'
import type { Vise } from '#model/vise.ts'
import { ways } from '#model/wishes.ts'
import { cutFrom, rectFrom } from '#engine/setup/form-cuts.ts'
import { formFieldOf } from '#engine/setup/form-fields.ts'
import { formDefaults, typedMm, wishesFrom } from '#engine/setup/form-wishes.ts'
import { deepestOverJawMm } from '#engine/setup/reach.ts'
import { refuseImpossible } from '#engine/setup/refuse.ts'

/** What the screen decides, not the form; `ways` left out: all. */
export type AskOptions = Partial<Pick<SetupQuestion, 'ways' | 'most' | 'rejectedMost' | 'only'>>

/**
 * The question that a form asks, with its texts read in the form's unit and that unit's defaults filled in.
 *
 * Only the height is needed (of a round part: its diameter). Sizes in the plan left empty are null; a line of cuts
 * or hollows, once there, has to be filled in, but for the place along of a hole. Cut k of the question is line k of
 * the form; what comes off the top, or the wish to stand proud, is a face that follows them.
 *
 * @throws Refusal of `readLengthMm`, `readNumber` and `refuseImpossible`; `field` is the path on the form
 * (`cuts[0].diameter`, `offTop`, `between`), and of a refusal by size `of` the path in the question
 */
export function questionFrom(form: SetupForm, vise: Vise, options: AskOptions = {}): SetupQuestion {
  const { unit } = form, part = partFrom(form)
  const lines = form.cuts.map((line, k) => cutFrom(line, `cuts[${k}]`, unit, part.betweenJawsMm))
  const offTopMm = typedMm(form.offTop, unit, 'offTop') ?? 0, proud = form.proud.trim() !== ''
  const cuts: readonly Cut[] = offTopMm === 0 && !proud ? lines
    : [...lines, { kind: 'face', depthMm: offTopMm, overJaw: true, runThroughMm: formDefaults[unit].milledRunThroughMm }]
  const overJaw = offTopMm > 0 || deepestOverJawMm(lines) !== null
  const question: SetupQuestion = {
    vise, part, cuts,
    wishes: wishesFrom(form, part.heightMm - (deepestOverJawMm(cuts) ?? 0), overJaw),
    ways: options.ways ?? ways,
    ...(options.most === undefined ? {} : { most: options.most }),
    ...(options.rejectedMost === undefined ? {} : { rejectedMost: options.rejectedMost }),
    ...(options.only === undefined ? {} : { only: options.only }),
  }
  refuseImpossible(question, (path) => formFieldOf(path, { lines: lines.length, proud: proud && !overJaw }))
  return question
}

/** The form as it opens. */
export const emptySetupForm = (unit: LengthUnit): SetupForm => ({
  unit, shape: 'block', height: '', offTop: '', proud: '', between: '', along: '', cuts: [], hollows: [], use: 'milling',
  wishes: { grip: '', air: '', holeAir: '', bedAir: '', gap: '', tolerance: '' },
})

/** A line of *cuts* as it opens: a drilled through hole from the fixed jaw, a cut that passes over a jaw, the left end. */
export function emptyCutForm(kind: CutForm['kind']): CutForm {
  if (kind === 'end') return { kind, side: 'left', stock: '' }
  if (kind !== 'hole') return { kind, depth: '', overJaw: true, runThrough: '', rect: null }
  return {
    kind, tool: 'drill', diameter: '', across: '', from: 'fixed', along: '', through: true, depth: '', runThrough: '', pointAngle: '', pitch: '', leadThreads: '',
  }
}

/** A round part is typed by one size, its height: that is its diameter, and what lies between the jaws. */
function partFrom(form: SetupForm): Part {
  const { unit, shape } = form, heightMm = readLengthMm(form.height, unit, 'height')
  return {
    shape, heightMm,
    betweenJawsMm: shape === 'round' ? heightMm : typedMm(form.between, unit, 'between'),
    alongJawsMm: typedMm(form.along, unit, 'along'),
    hollows: form.hollows.map((hollow, k) => rectFrom(hollow, `hollows[${k}]`, unit)),
  }
}
