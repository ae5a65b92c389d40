import { blockStep } from '#drafting/setup/block-step.ts'
import { type ChuckBar, chuckPicture, type ChuckPictureData, type ChuckSide } from '#drafting/setup/chuck-picture.ts'
import { chuckSheetPages } from '#drafting/setup/chuck-sheet.ts'
import { fourStripsDrawing, type FourStripsData } from '#drafting/setup/four-strips.ts'
import { rowPicture, type RowPictureVise } from '#drafting/setup/row-picture.ts'
import { type RowSheetData, rowSheetPages } from '#drafting/setup/row-sheet.ts'
import { tablePicture } from '#drafting/setup/table-picture.ts'
import { tableSheetPages } from '#drafting/setup/table-sheet.ts'
import type { Paper } from '#drafting/paper.ts'
import type { Scene } from '#drafting/scene.ts'

const said = { title: 'Invented', description: 'Invented for the gallery' }

const strips: FourStripsData = {
  ...said, betweenJawsMm: 60, alongJawsMm: 80, found: { 'fixed-left': 'tight', 'fixed-right': 'drags', 'moving-left': 'free', 'moving-right': null }, marked: ['moving-left'],
  fixedJaw: 'fixed jaw', movingJaw: 'movable jaw', leftEnd: 'left end', rightEnd: 'right end',
}

const vise = (name: string, pair: string, bedUm: number, offsetUm: number): RowPictureVise => ({ name, pair, bedUm, bed: [`bed ${bedUm} µm`, `${bedUm} µm`], offsetUm, offset: [`Z ${offsetUm / 1000}`, String(offsetUm / 1000)] })
const vises = [vise('V1', '30 A', 0, 0), vise('V2', '30 B', 18, 15), vise('V3', '30 C', -9, -6.5)]
const row = { ...said, vises, drawnLarger: (times: number) => `differences drawn × ${times}` }

const sheet: RowSheetData = {
  ...said, heading: 'Clamp plate', under: '3 vises, one Z for all', vises, drawnLarger: 'differences drawn ×', heads: ['Vise', 'Pair', 'Slot', 'Seat, mm', 'Grip, mm', 'Above the jaws', 'Z, mm'],
  rows: [['V1', '30 A', 'B2', '30.0015', '15', '10', '0'], ['V2', '30 B', 'B3', '29.9985', '15.002', '9.999', '+0.015'], ['V3', '30 C', 'B4', '30.0040', '14.996', '10.004', '−0.0065']],
  blocks: [{ heading: 'One Z for all', lines: ['Tops within 21.5 µm.', 'Pair and vise stay together for the whole run.'] }, { heading: 'Is it down?', lines: ['A strip of paper at each corner.'] }],
  code: { label: 'Code', value: '7K2M9QXA' },
  foot: { shop: { label: 'Shop', value: 'Invented shop' }, part: { label: 'Part', value: 'Clamp plate' }, operation: { label: 'Operation', value: 'face' }, date: { label: 'Date', value: '4 Mar 2026' }, initials: { label: 'Initials', value: '' } },
}

const table = {
  ...said, acrossMm: 100, alongMm: 120, heightMm: 20, barHeightMm: 25, table: 'table',
  bars: [{ xMm: -15, yMm: 0, alongMm: 150, acrossMm: 9.5, fouled: false, called: ['bar 1, 25 K, slot B2', 'bar 1'] }, { xMm: -15, yMm: 88, alongMm: 150, acrossMm: 12, fouled: true, called: ['bar 2, 25 K, slot B2', 'bar 2'] }],
  holes: [{ xMm: 60, yMm: 15, diameterMm: 10, tipMm: 4.5 }, { xMm: 60, yMm: 85, diameterMm: 10, tipMm: 4.5 }, { xMm: 30, yMm: 50, diameterMm: 8, tipMm: null }],
  straps: [{ xMm: 100, yMm: 4.75, over: true }, { xMm: 20, yMm: 50, over: false }],
}
const flat = (side: ChuckSide, called: string): ChuckBar => ({ side, longMm: 60, wideMm: 25, upMm: 10, called })
const chuck: ChuckPictureData = { ...said, acrossMm: 40, alongMm: 80, heightMm: 20, bars: [flat('left', '25 Q'), flat('right', '25 Q'), flat('front', '25 Q'), flat('back', '')], travel: 'along', travels: 'travel along', chuck: 'magnetic chuck' }
const step = { ...said, betweenMm: 32, heightMm: 52, seatMm: 19, jawMm: 45, offTopMm: 1, up: 'B', down: 'C', fixed: 'A', moving: 'D', rod: true }

/** What stands beside the setup, once each, on a tablet and a phone. */
export const besideSetup: readonly { readonly name: string; readonly scene: Scene }[] = [
  { name: 'four-strips', scene: fourStripsDrawing(strips, { widthMm: 148, heightMm: 127 }) },
  { name: 'four-strips-phone', scene: fourStripsDrawing({ ...strips, betweenJawsMm: null, alongJawsMm: null }, { widthMm: 99, heightMm: 85 }) },
  { name: 'four-strips-narrow', scene: fourStripsDrawing({ ...strips, betweenJawsMm: 12, alongJawsMm: 200 }, { widthMm: 99, heightMm: 85 }) },
  { name: 'row', scene: rowPicture(row, 148) },
  { name: 'row-phone', scene: rowPicture({ ...row, vises: [...vises, vise('Tool room mill', '30 D', 0, 2)] }, 99) },
  { name: 'table', scene: tablePicture(table, { widthMm: 148, heightMm: 148 }) },
  { name: 'table-phone', scene: tablePicture({ ...table, holes: table.holes.map((hole) => ({ ...hole, xMm: null })) }, { widthMm: 99, heightMm: 99 }) },
  { name: 'chuck', scene: chuckPicture(chuck, { widthMm: 148, heightMm: 141 }) },
  { name: 'chuck-across', scene: chuckPicture({ ...chuck, travel: 'across', travels: 'travel across', bars: chuck.bars.toReversed().map((bar) => ({ ...bar, longMm: 150 })) }, { widthMm: 99, heightMm: 94 }) },
  { name: 'block-step', scene: blockStep(step, { widthMm: 44, heightMm: 46 }) },
  { name: 'block-step-upright', scene: blockStep({ ...step, betweenMm: 30, heightMm: 82, rod: false, up: 'E', down: 'F' }, { widthMm: 44, heightMm: 46 }) },
]

const numbers = [{ label: 'Part, across × along × high', value: '100 × 120 × 20 mm' }, { label: 'Underside above the table', value: '25 mm' }], { vises: _vises, drawnLarger: _drawnLarger, ...plain } = sheet
export const tableSheet = (paper: Paper): readonly Scene[] => tableSheetPages({ ...plain, picture: table, scale: 'Scale', numbers, beside: [{ heading: 'Straps', lines: ['1: 4.75 from the near edge, 100 from the left end, above a bar.', '2: 50 from the near edge, 20 from the left end, beside the bars.'] }] }, paper)
export const chuckSheet = (paper: Paper): readonly Scene[] => chuckSheetPages({ ...plain, picture: chuck, scale: 'Scale', numbers }, paper)
export const rowSheet = (paper: Paper): readonly Scene[] => rowSheetPages(sheet, paper)
