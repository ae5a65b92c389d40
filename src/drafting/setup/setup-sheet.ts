import type { Units } from '#model/shop-record.ts'
import { boxOf, letteringMm, lineOf, moved, textOf } from '#drafting/items.ts'
import { fitted, shortened, textWidthMm, wrappedWithin } from '#drafting/lettering.ts'
import { type Paper, paperEdgeMm, papers } from '#drafting/paper.ts'
import { type Block, blockPieces, heightOf, type Laid, paragraph, spaced, stacked } from '#drafting/paragraph.ts'
import { beside } from '#drafting/pieces.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'
import { markAt } from '#drafting/setup/marked-ends.ts'
import type { SetupPicture } from '#drafting/setup/picture.ts'
import { setupSheetDrawing } from '#drafting/setup/sheet.ts'
import type { SheetWords } from '#drafting/setup/sheet-words.ts'
import { titleBlock, titleBlockMm, type TitleBlock } from '#drafting/setup/title-block.ts'

export type Labelled = { readonly label: string; readonly value: string }

/** Everything the printed sheet of a first setup says, worded; plain data, so that what was told can be kept. */
export type SetupSheetData = {
  readonly picture: SetupPicture
  readonly units: Units
  readonly words: SheetWords
  /** What the scale is called: `Scale`. */
  readonly scale: string
  readonly block: TitleBlock
  /** The way of standing, in words: `two bars on edge`. */
  readonly stand: string
  /** Seat, grip, stick-out, clear of the jaws, clear of the bed, match … */
  readonly numbers: readonly Labelled[]
  /** Which bar at the fixed jaw, where the marked ends lie. */
  readonly bars: Block
  /** What keeps the bars apart or off the jaw; null where nothing has to. */
  readonly spacer: Block | null
  /** Its lines are labels of lines to fill in by hand. */
  readonly workStop: Block
  readonly test: Block
  readonly cautions: Block
  readonly notComputed: Block
}

/** Sizes of lettering; 3 mm is 8.5 point. */
const sizesMm = [3.6, 3.4, 3.2, 3]
const headMm = 21, smallHeadMm = 3.2
const padMm = 4
/** Widths of the column beside the drawing: the wider one where the text fits no page else. */
const sidesMm = [66, 80]
/** The drawing is not made lower than this for the sake of the text. */
const leastDrawingMm = 100

/**
 * The first setup sheet: one page, black only, drawing to a named scale of the standard series.
 *
 * Text that fits no page even in the smallest lettering goes on on a further one; nothing is left out.
 */
export function setupSheetPages(data: SetupSheetData, paper: Paper): readonly Scene[] {
  const { widthMm, heightMm } = papers[paper], innerMm = widthMm - 2 * paperEdgeMm
  const top = paperEdgeMm + headMm, bottom = heightMm - paperEdgeMm - titleBlockMm
  const layouts = sidesMm.flatMap((sideMm) => sizesMm.map((size) => {
    const below = [...blockPieces(data.cautions, innerMm - 2 * padMm, size), ...blockPieces(data.notComputed, innerMm - 2 * padMm, size)]
    const side = sidePieces(data, sideMm - 2 * padMm, size)
    const splitY = Math.max(top + leastDrawingMm, bottom - heightOf(below) - padMm)
    return { below, side, sideMm, splitY, fits: splitY + heightOf(below) + padMm <= bottom + 1e-6 && top + heightOf(side) + padMm <= splitY }
  }))
  const drawn = (fits(layouts).length > 0 ? fits(layouts) : layouts.slice(-1)).map((layout) => ({
    ...layout,
    drawing: setupSheetDrawing(data.picture, {
      widthMm: innerMm - layout.sideMm - 2, heightMm: layout.splitY - top - 2,
      units: data.units, words: data.words, fields: 'none', scales: 'standard', markedEnds: true,
    }),
  }))
  const { below, side: pieces, sideMm, splitY, drawing } = drawn.reduce((best, other) => (other.drawing.scale > best.drawing.scale + 1e-9 ? other : best))
  const side = stacked(pieces, widthMm - paperEdgeMm - sideMm + padMm, top + 1, splitY)
  const under = stacked(below, paperEdgeMm + padMm, splitY, bottom)
  const scale = `${data.scale} ${drawing.scaleName}`
  const first = page(data, paper, [
    ...head(data, innerMm),
    ...drawing.items.map((item) => moved(item, paperEdgeMm + 1, top + 1)),
    textOf([paperEdgeMm + 3, splitY - 4], scale, { tone: 'thin' }),
    ...(data.picture.bars.length === 0 ? [] : markedEndSaid([paperEdgeMm + 3 + textWidthMm(scale, letteringMm) + 6, splitY - 4], data.words.markedEnd)),
    lineOf([widthMm - paperEdgeMm - sideMm, top], [widthMm - paperEdgeMm - sideMm, splitY], 'thin'),
    lineOf([paperEdgeMm, splitY], [widthMm - paperEdgeMm, splitY], 'thin'),
    ...side.items, ...under.items,
  ])
  return [first, ...further(data, paper, [...side.rest, ...under.rest])]
}

/** What the sign on the bars means. */
const markedEndSaid = ([x, y]: Point, said: string): readonly Item[] => [markAt([x, y + 1.4]), textOf([x + 3, y], said, { tone: 'thin' })]

/** Layouts that hold everything: of these the one with the largest drawing is taken, and of like ones that with the largest lettering. */
const fits = <Layout extends { readonly fits: boolean }>(layouts: readonly Layout[]): readonly Layout[] => layouts.filter((layout) => layout.fits)

/** Sheets for what found no room on the first. */
function further(data: SetupSheetData, paper: Paper, pieces: readonly Laid[]): readonly Scene[] {
  if (pieces.length === 0) return []
  const { heightMm } = papers[paper], top = paperEdgeMm + padMm, end = heightMm - paperEdgeMm - titleBlockMm
  const { items, rest } = stacked(pieces, paperEdgeMm + padMm, top, end)
  // A piece higher than a whole page cannot be broken: it is drawn and runs on over the edge rather than be dropped.
  const stuck = items.length === 0
  return [page(data, paper, stuck ? pieces[0]!.draw(paperEdgeMm + padMm, top) : items), ...further(data, paper, stuck ? pieces.slice(1) : rest)]
}

function page(data: SetupSheetData, paper: Paper, items: readonly Item[]): Scene {
  const { widthMm, heightMm } = papers[paper]
  return {
    title: data.words.title, description: data.words.description, widthMm, heightMm, fields: [],
    items: [boxOf([paperEdgeMm, paperEdgeMm], [widthMm - paperEdgeMm, heightMm - paperEdgeMm], 'outline', 'none'), ...items, ...titleBlock(data.block, paper)],
  }
}

/** The pair large, how it stands and what for, and the slot in a box. */
function head({ block, stand }: SetupSheetData, innerMm: number): readonly Item[] {
  const slot = shortened(block.slot.value, 60, 9, true), boxMm = Math.max(26, textWidthMm(slot, 9, true) + 6), x = paperEdgeMm, right = x + innerMm
  const pair = fitted(block.pair.value, innerMm - boxMm - 66, [13, 10, 8, 6.5], true), pairMm = textWidthMm(pair.text, pair.sizeMm, true)
  const middle = paperEdgeMm + headMm / 2, restMm = innerMm - boxMm - pairMm - 16
  const nextX = x + padMm + pairMm + 5, work = [block.part.value, block.operation.value].filter((words) => words !== '').join(' · ')
  const next = (text: string, y: number): Item => {
    const said = fitted(text, restMm, [4.4, 3.8, smallHeadMm])
    return textOf([nextX, y], said.text, { sizeMm: said.sizeMm })
  }
  const lines = wrappedWithin(work, 3, restMm, smallHeadMm), lineY = (at: number) => middle + 4.2 * (at - lines.length / 2 + 1)
  const below = lines.length < 2 ? [next(work, middle + 3.4)] : lines.map((line, at) => textOf([nextX, lineY(at)], line, { sizeMm: smallHeadMm }))
  return [
    textOf([x + padMm, middle], pair.text, { sizeMm: pair.sizeMm, bold: true }),
    next(stand, lines.length < 2 ? middle - 3 : middle - 2.1 * lines.length),
    ...below,
    ...(slot === '' ? [] : [
      boxOf([right - boxMm - 3, paperEdgeMm + 2.5], [right - 3, paperEdgeMm + headMm - 2.5], 'outline', 'none'),
      textOf([right - 3 - boxMm / 2, middle - 2], slot, { sizeMm: 9, bold: true, anchor: 'middle' }),
      textOf([right - 3 - boxMm / 2, middle + 5.2], block.slot.label, { sizeMm: 3.4, anchor: 'middle' }),
    ]),
    lineOf([x, paperEdgeMm + headMm], [right, paperEdgeMm + headMm], 'outline'),
  ]
}

function sidePieces(data: SetupSheetData, widthMm: number, sizeMm: number): readonly Laid[] {
  return [
    ...data.numbers.map((number) => figure(number, widthMm, sizeMm)),
    ...blockPieces(data.bars, widthMm, sizeMm),
    ...(data.spacer ? blockPieces(data.spacer, widthMm, sizeMm) : []),
    spaced(paragraph(data.workStop.heading, widthMm, sizeMm, { bold: true }), sizeMm * 0.7),
    ...fillInRows(data.workStop.lines, widthMm, sizeMm),
    ...blockPieces(data.test, widthMm, sizeMm),
    strips(widthMm),
  ]
}

/** A number with its name, a line under both. */
function figure({ label, value }: Labelled, widthMm: number, sizeMm: number): Laid {
  const rowMm = sizeMm * 2.1, valueMm = sizeMm * 1.25
  return {
    heightMm: rowMm,
    draw: (x, y) => [
      textOf([x, y + rowMm / 2], shortened(label, widthMm - textWidthMm(value, valueMm, true) - 2, sizeMm), { sizeMm }),
      textOf([x + widthMm, y + rowMm / 2], value, { sizeMm: valueMm, bold: true, anchor: 'end' }),
      lineOf([x, y + rowMm], [x + widthMm, y + rowMm], 'thin'),
    ],
  }
}

/** The first line for itself, the others two in a row. */
function fillInRows([first, ...others]: readonly string[], widthMm: number, sizeMm: number): readonly Laid[] {
  const gapMm = 3, halfMm = (widthMm - gapMm) / 2
  return [
    ...(first === undefined ? [] : [fillIn(first, widthMm, sizeMm)]),
    ...others.flatMap((label, at) => {
      const next = others[at + 1]
      if (at % 2 === 1) return []
      return next === undefined ? [fillIn(label, widthMm, sizeMm)] : [beside(fillIn(label, halfMm, sizeMm), fillIn(next, halfMm, sizeMm), halfMm + gapMm)]
    }),
  ]
}

/** A label and a line to write on. */
function fillIn(label: string, widthMm: number, sizeMm: number): Laid {
  const rowMm = 7.2, fromMm = Math.min(textWidthMm(label, sizeMm) + 2, widthMm - 10)
  return {
    heightMm: rowMm,
    draw: (x, y) => [textOf([x, y + rowMm - sizeMm * 0.6], label, { sizeMm }), lineOf([x + fromMm, y + rowMm - 0.8], [x + widthMm, y + rowMm - 0.8], 'thin')],
  }
}

/** The part from above with a box to tick at each strip of paper. */
function strips(widthMm: number): Laid {
  const partMm = 30, upMm = 13, tickMm = 4.5
  return {
    heightMm: upMm + 6,
    draw: (x, y) => {
      const left = x + (widthMm - partMm) / 2, top = y + 3, rowsY = [top + 1, top + upMm - 1 - tickMm], columnsX = [left - tickMm / 2, left + partMm - tickMm / 2]
      const ticks = rowsY.flatMap((tickY) => columnsX.map((tickX) => boxOf([tickX, tickY], [tickX + tickMm, tickY + tickMm], 'outline', 'sheet')))
      return [boxOf([left, top], [left + partMm, top + upMm], 'outline', 'none'), ...ticks]
    },
  }
}
