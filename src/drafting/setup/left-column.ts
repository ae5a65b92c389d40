import { arrowhead } from '#drafting/dimension.ts'
import { pathOf, textOf } from '#drafting/items.ts'
import type { FieldSpot, Item, Point } from '#drafting/scene.ts'
import { stackedUp } from '#drafting/stack-up.ts'
import { type CallOut, cutFields, cutLettering, targetOf } from '#drafting/setup/call-outs.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import type { GivenSizes } from '#drafting/setup/given-sizes.ts'
import { type Columns, edgeMm, titleMm } from '#drafting/setup/margins.ts'
import { extension, fieldBox, fieldFor, fitsInLine, lettering, seenMm, spotFor, upright } from '#drafting/setup/said.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import type { Shown } from '#drafting/setup/shown.ts'

type Drawn = { readonly items: readonly Item[]; readonly fields: readonly FieldSpot[] }

/** Between what fingers touch. */
const gapMm = 2

/** Down the left edge: the jaw, the name of the plan, the cuts with their leaders, and a place to add one. */
export function leftColumn(shown: Shown, frame: Frame, options: SheetOptions, given: GivenSizes, columns: Columns): Drawn {
  const section = columns.views !== 'plan', plan = columns.views !== 'section', x = columns.leftXMm
  const [faceX, jawTop] = frame.inSection(0, shown.picture.fixedJawHeightMm), outerX = faceX - frame.jawMm, bed = frame.inSection(0, 0)[1]
  const jawHalf = given.jaw.heightMm / 2
  // Below its line where it does not fit in it, but never so low that the plan's own column has no room.
  const lowest = options.heightMm - edgeMm - (plan ? titleMm + (options.fields === 'none' ? 0 : fieldBox.heightMm) : 0) - jawHalf
  const jawY = fitsInLine(bed - jawTop, seenMm(given.jaw)) ? (jawTop + bed) / 2 : Math.min(bed + 2.5 + jawHalf, lowest)
  const jaw: Drawn = section
    ? {
      items: [
        extension([outerX, jawTop], [x - 1.5, jawTop]), extension([outerX, bed], [x - 1.5, bed]),
        ...upright(x, jawTop, bed, given.jaw, [x, jawY]),
      ],
      fields: spotFor(given.jaw, [x, jawY]),
    }
    : { items: [], fields: [] }
  if (!plan) return jaw
  const titleY = section ? Math.max(frame.sectionEndMm + 2.8, jawY + jawHalf + titleMm / 2) : edgeMm + 2
  const title = section ? [textOf([edgeMm, titleY], options.words.plan, { tone: 'thin' })] : []
  const cuts = cutBoxes(shown, frame, options, columns, titleY + titleMm / 2)
  return { items: [...jaw.items, ...title, ...cuts.items], fields: [...jaw.fields, ...cuts.fields] }
}

/** As many cuts as there is room for, in the order in which they stand down the plan. */
function cutBoxes(shown: Shown, frame: Frame, options: SheetOptions, columns: Columns, startMm: number): Drawn {
  const spots = options.fields !== 'none', endMm = options.heightMm - edgeMm, x = columns.leftXMm
  const add = spots ? [{ said: fieldFor('addCut'), target: null, preferMm: frame.inPlan(shown.alongMm, 0)[1] }] : []
  const all = spots ? cutFields(shown) : cutLettering(shown, options.units, options.words)
  const cuts = firstThatFit(all, endMm - startMm - add.reduce((sum, { said }) => sum + said.heightMm + gapMm, 0))
    .map(({ said, cut }) => {
      const target = targetOf(cut, shown, frame)
      return { said, target, preferMm: target ? target[1] : options.heightMm }
    })
    .toSorted((a, b) => a.preferMm - b.preferMm || (a.target?.[0] ?? 0) - (b.target?.[0] ?? 0))
  const boxes = [...cuts, ...add]
  const middles = stackedUp(boxes.map(({ said, preferMm }) => ({ preferMm, sizeMm: said.heightMm })), startMm, endMm, gapMm)
  return {
    items: boxes.flatMap(({ said, target }, index): readonly Item[] => [
      ...(target ? leader([x + said.widthMm / 2, middles[index]!], target) : []),
      ...lettering(said, [x, middles[index]!]),
    ]),
    fields: boxes.flatMap(({ said }, index) => spotFor(said, [x, middles[index]!])),
  }
}

/** From the box to what it speaks of, with an arrow there. */
const leader = (from: Point, to: Point): readonly Item[] => [extension(from, to), pathOf(arrowhead(to, from), 'thin')]

function firstThatFit(callOuts: readonly CallOut[], freeMm: number): readonly CallOut[] {
  let used = -gapMm
  return callOuts.filter(({ said }) => (used += said.heightMm + gapMm) <= freeMm)
}
