import { textOf } from '#drafting/items.ts'
import type { FieldSpot, Item, Scene } from '#drafting/scene.ts'
import { barLabels, labelRowMm } from '#drafting/setup/bar-labels.ts'
import { derivedSizes } from '#drafting/setup/derived-sizes.ts'
import { type Frame, frameFor, scaleName } from '#drafting/setup/frame.ts'
import { type GivenSizes, givenSizes } from '#drafting/setup/given-sizes.ts'
import { jawNames } from '#drafting/setup/jaw-names.ts'
import { leftColumn } from '#drafting/setup/left-column.ts'
import { type Columns, columnsFor, edgeMm, type Extras } from '#drafting/setup/margins.ts'
import { markedEnds } from '#drafting/setup/marked-ends.ts'
import type { SetupPicture } from '#drafting/setup/picture.ts'
import { planItems } from '#drafting/setup/plan.ts'
import { rightColumn } from '#drafting/setup/right-column.ts'
import { extension, fitsInLine, level, spotFor } from '#drafting/setup/said.ts'
import { sectionItems } from '#drafting/setup/section.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import { type Shown, shownOf } from '#drafting/setup/shown.ts'

/** The drawing with the scale it came out at, paper over part, and what that is called: `1 : 2`. */
export type SetupDrawing = Scene & { readonly scale: number; readonly scaleName: string }

/**
 * Section over plan in projection, as large as the paper allows, with its dimensions.
 *
 * Fields keep 21.7 × 19 mm (82 × 72 px) to themselves and stand in columns at the edges of the sheet, so that they move
 * little while sizes are typed. A cut for which there is no room has no spot. Made for sheets from 95 × 60 mm.
 */
export function setupSheetDrawing(picture: SetupPicture, options: SheetOptions): SetupDrawing {
  const shown = shownOf(picture), given = givenSizes(shown, options)
  const full = { labelRow: false, derived: true }, bare = { labelRow: false, derived: false }
  const extras = placed(shown, options, given, bare).frame.scale > placed(shown, options, given, full).frame.scale * worthIt && options.scales === 'standard' ? bare : full
  const plain = drawn(shown, options, given, extras)
  const { items, fields, frame } = plain.rowNeeded ? drawn(shown, options, given, { ...extras, labelRow: true }) : plain
  const { title, description } = options.words
  return { title, description, widthMm: options.widthMm, heightMm: options.heightMm, items, fields, scale: frame.scale, scaleName: scaleName(frame.scale) }
}

/** On prints, whose scales lie far apart, the sizes that follow give way to a drawing so much larger: the print says them in figures, too. */
const worthIt = 1.2

type Drawn = { readonly items: readonly Item[]; readonly fields: readonly FieldSpot[] }

function placed(shown: Shown, options: SheetOptions, given: GivenSizes, extras: Extras): { readonly columns: Columns; readonly frame: Frame } {
  const columns = columnsFor(shown, options, given, extras)
  return { columns, frame: frameFor(shown, options.widthMm, options.heightMm, columns, columns.views, options.scales ?? 'fitted') }
}

/** `rowNeeded`: labels of bars found no room at their bars and stand in a row that should have paper of its own. */
function drawn(shown: Shown, options: SheetOptions, given: GivenSizes, extras: Extras): Drawn & { readonly frame: Frame; readonly rowNeeded: boolean } {
  const { columns, frame } = placed(shown, options, given, extras), words = options.words
  const section = columns.views !== 'plan', plan = columns.views !== 'section'
  const labels = section ? barLabels(shown, frame, columns.leftMm, options.widthMm - columns.rightMm) : { items: [], inRow: false }
  const left = leftColumn(shown, frame, options, given, columns), right = rightColumn(shown, frame, options, given, columns)
  const between = plan ? betweenJaws(shown, frame, given) : { items: [], fields: [] }
  return {
    items: [
      ...(plan ? planItems(shown, frame) : []),
      ...(plan && options.markedEnds ? markedEnds(shown, frame) : []),
      ...(section ? sectionItems(shown, frame) : []),
      ...left.items, ...right.items, ...between.items,
      ...(columns.derived ? derivedSizes(shown, frame, options) : []),
      ...labels.items,
      ...(section ? jawNames(shown, frame, options, extras.labelRow ? labelRowMm : 0, [columns.leftMm, columns.rightBoxesXMm - 1]) : []),
      textOf([edgeMm, edgeMm + 2], section ? words.section : words.plan, { tone: 'thin' }),
    ],
    fields: [...left.fields, ...right.fields, ...between.fields],
    frame, rowNeeded: labels.inRow,
  }
}

/** Under the plan: in its line where that is long enough, else below the line. */
function betweenJaws({ betweenMm, over }: Shown, { inPlan, overhangMm, scale }: Frame, { between }: GivenSizes): Drawn {
  if (!between) return { items: [], fields: [] }
  const [x0, endY] = inPlan(0, 0), [x1] = inPlan(0, betweenMm), topY = endY + over.leftMm * scale + overhangMm
  const inLine = fitsInLine(betweenMm * scale, between.widthMm)
  const y = inLine ? topY + between.heightMm / 2 : topY + 2.5
  const at = [(x0 + x1) / 2, inLine ? y : y + 0.4 + between.heightMm / 2] as const
  return {
    items: [...[x0, x1].map((x) => extension([x, endY], [x, y + 1.5])), ...level(y, x0, x1, between, at)],
    fields: spotFor(between, at),
  }
}
