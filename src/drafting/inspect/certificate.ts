import type { Units } from '#model/shop-record.ts'
import { lineOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import { pairMatch, type PairMatchData } from '#drafting/inspect/pair-match.ts'
import { profileDrawing, type ProfileData } from '#drafting/inspect/profile.ts'
import { turnOverDrawing, type TurnOverData } from '#drafting/inspect/turn-over.ts'
import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, type Laid, spaced } from '#drafting/paragraph.ts'
import { beside, drawingPiece, type Named, namedPiece, sheetTextMm, tablePiece, together } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { type SheetFrame, sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'

/** Heads and rows of as many cells. */
export type Table = { readonly heads: readonly string[]; readonly rows: readonly (readonly string[])[] }

export type CertificateBar = {
  readonly label: string
  /** `25 × 10 × 150` */
  readonly sizes: string
  readonly figures: readonly Named[]
  /** Use, limit, verdict; null: nothing was judged. */
  readonly uses: Table | null
  /** Null where there is none to draw. */
  readonly profile: (ProfileData & { readonly lengthMm: number }) | null
  readonly turnOver: Omit<TurnOverData, 'title' | 'description'> | null
  /** As typed: first what sets a row apart, then station by station. */
  readonly readings: Table
}

/** Everything the certificate of one check says, worded; plain data, so that what was told can be kept. */
export type CertificateData = SheetFrame & {
  readonly units: Units
  /** Instrument, plate, blocks, zero, temperature … */
  readonly taken: readonly Named[]
  /** What it replaces or was replaced by. */
  readonly corrections: Block | null
  readonly bars: readonly CertificateBar[]
  readonly pair: { readonly heading: string; readonly figures: readonly Named[]; readonly uses: Table | null; readonly match: Omit<PairMatchData, 'title' | 'description'> | null } | null
  readonly uncertainty: { readonly heading: string; readonly table: Table; readonly notes: readonly string[] } | null
  readonly rule: Block
  readonly findings: Block
  readonly notComputed: Block
  /** Names of the lines to sign on. */
  readonly sign: readonly string[]
}

const profileMm = 26
const figuresMm = 80
const gapMm = 5
const stationsAcross = 9
/** Readings of so many stations find room beside the uses. */
const besideAcross = 5

/** As many pages as the bars need, black only. */
export function certificatePages(data: CertificateData, paper: Paper): readonly Scene[] {
  const roomMm = sheetRoomMm(paper), block = (one: Block | null): readonly Laid[] => (one === null ? [] : [together(blockPieces(one, roomMm, sheetTextMm))])
  return sheetPages(data, [
    spaced(namedPiece(data.taken, roomMm, 2), 1),
    ...block(data.corrections), ...block(data.findings),
    ...data.bars.flatMap((bar) => barPieces(bar, data.units, roomMm)),
    ...pairPieces(data, roomMm),
    ...(data.uncertainty === null ? [] : [
      spaced(together([name(data.uncertainty.heading, '', roomMm), tableOf(data.uncertainty.table, roomMm)]), 3),
      ...blockPieces({ heading: '', lines: data.uncertainty.notes }, roomMm, sheetTextMm).slice(1),
    ]),
    ...block(data.rule), ...block(data.notComputed), signature(data.sign, roomMm),
  ], paper)
}

function barPieces(bar: CertificateBar, units: Units, roomMm: number): readonly Laid[] {
  const awayMm = figuresMm + gapMm, rightMm = roomMm - awayMm, left = namedPiece(bar.figures, figuresMm, 1)
  const shown = bar.profile === null ? left : beside(left, drawingPiece(profileDrawing({ ...bar.profile, title: '', description: '' }, { widthMm: rightMm, heightMm: profileMm, units })), awayMm)
  const turned = bar.turnOver === null ? [] : [spaced(drawingPiece(turnOverDrawing({ ...bar.turnOver, title: '', description: '' }, { widthMm: roomMm, units, profileMm })), 2)]
  const tight = bar.uses !== null && bar.readings.heads.length - 1 <= besideAcross
  const tables = tight ? [spaced(beside(tableOf(bar.uses!, figuresMm), tableOf(bar.readings, rightMm), awayMm), 2)] : [...(bar.uses === null ? [] : [spaced(tableOf(bar.uses, figuresMm), 2)]), ...readings(bar.readings, roomMm)]
  const [first, ...rest] = tables
  return [spaced(together([name(bar.label, bar.sizes, roomMm), shown, ...turned, ...(first ? [first] : [])]), 3), ...rest]
}

function pairPieces({ pair, units }: CertificateData, roomMm: number): readonly Laid[] {
  if (pair === null) return []
  const match = pair.match === null ? [] : [spaced(drawingPiece(pairMatch({ ...pair.match, title: '', description: '' }, { widthMm: roomMm, units, profileMm })), 2)]
  const left = namedPiece(pair.figures, figuresMm, 1)
  const said = pair.uses === null ? left : beside(left, tableOf(pair.uses, roomMm - figuresMm - gapMm), figuresMm + gapMm)
  return [spaced(together([name(pair.heading, '', roomMm), said, ...match]), 3)]
}

/** The first column takes what the names of its rows need. */
function tableOf({ heads, rows }: Table, widthMm: number): Laid {
  const first = Math.max(...[heads, ...rows].map(([text]) => textWidthMm(text ?? '', sheetTextMm, true))) + 4, others = heads.length - 1
  const firstMm = Math.min(first, widthMm * 0.5)
  return tablePiece(heads, rows, heads.map((_, i) => (i === 0 ? firstMm : (widthMm - firstMm) / others)), widthMm, true)
}

/** Some stations at a time, so that a long bar stays on the paper. */
function readings({ heads, rows }: Table, roomMm: number): readonly Laid[] {
  const parts = Math.max(1, Math.ceil((heads.length - 1) / stationsAcross))
  return Array.from({ length: parts }, (_, part) => {
    const cut = (row: readonly string[]): readonly string[] => [row[0]!, ...row.slice(1 + part * stationsAcross, 1 + (part + 1) * stationsAcross)]
    return spaced(tableOf({ heads: cut(heads), rows: rows.map(cut) }, roomMm), 2)
  })
}

function name(label: string, right: string, roomMm: number): Laid {
  return {
    heightMm: 7.5,
    draw: (x, y) => [
      lineOf([x, y], [x + roomMm, y], 'outline'),
      textOf([x, y + 4], shortened(label, roomMm - textWidthMm(right, sheetTextMm) - 4, 4.6, true), { sizeMm: 4.6, bold: true }),
      ...(right === '' ? [] : [textOf([x + roomMm, y + 4], right, { sizeMm: sheetTextMm, anchor: 'end' })]),
    ],
  }
}

function signature(lines: readonly string[], roomMm: number): Laid {
  const eachMm = (roomMm - gapMm * (lines.length - 1)) / Math.max(1, lines.length)
  return {
    heightMm: 20,
    draw: (x, y) => lines.flatMap((line, i) => {
      const left = x + i * (eachMm + gapMm)
      return [lineOf([left, y + 13], [left + eachMm, y + 13], 'thin'), textOf([left, y + 16], line, { sizeMm: 3 })]
    }),
  }
}
