import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { standingApart } from '#drafting/apart.ts'
import { arrowhead } from '#drafting/dimension.ts'
import { boxOf, letteringMm, lineOf, pathOf, shapeOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import { barSide } from '#drafting/inspect/bar-side.ts'
import { type ProfileData, profileItems, profileLeftMm } from '#drafting/inspect/profile.ts'
import { type RowPlaces, rowPlaces } from '#drafting/inspect/row-places.ts'
import type { FieldSpot, Item, Scene } from '#drafting/scene.ts'

/** One reading at each station, in their order; `keys` name the fields. Its label is shown where a bar has more than one row. */
export type PlateRow = { readonly label: string; readonly keys: readonly string[] }

/** A bar as it lies, marked end to the left; stations in mm from there. */
export type PlateBar = {
  readonly label: string
  readonly heightMm: number | null
  readonly thicknessMm: number | null
  readonly lengthMm: number
  /** Nobody has said how long it is: it is drawn as long as that, and not said to be. */
  readonly lengthGuessed?: boolean
  readonly stationsMm: readonly number[]
  readonly rows: readonly PlateRow[]
}

export type BarOnPlateData = {
  readonly title: string
  readonly description: string
  readonly bars: readonly PlateBar[]
  /** Null: it is drawn apart. */
  readonly profile: ProfileData | null
  /** Texts as typed, by key. Lettered where there are no fields. */
  readonly texts: { readonly [key: string]: string }
  /** Key of the reading that comes next; null: none. */
  readonly current: string | null
  /** Where the zero was set: at a place of one of the bars, or on a block, drawn beside the first. */
  readonly zero: { readonly bar: number; readonly xMm: number } | 'block' | null
  readonly markedEnd: string
}

export type BarOnPlateOptions = {
  readonly widthMm: number
  readonly units: Units
  /** `none`: texts stand where the fields would be, close together, as on prints and beside a list of fields. */
  readonly fields: 'spots' | 'none'
  /** Height of the profile without what is said above it; left out: 30 mm. */
  readonly profileMm?: number
}

const edgeMm = 2
const headMm = 6.5
const rowLabelMm = 5
const stemMm = 4
const plateMm = 3.6
const underMm = 10
const blockMm = 9

/**
 * The bars on the surface plate one under the other, each reading over its station, and above them the profile to the
 * same lengths. As high as it needs; made for paper from 95 mm wide.
 */
export function barOnPlate(data: BarOnPlateData, { widthMm, units, fields, profileMm = 30 }: BarOnPlateOptions): Scene & { readonly times: number | null } {
  const block = data.zero === 'block'
  const leftMm = profileLeftMm, rightMm = widthMm - edgeMm - (block ? blockMm + 4 : 2)
  const scale = (rightMm - leftMm) / Math.max(1, ...data.bars.map(({ lengthMm }) => lengthMm))
  const profile = data.profile && profileItems(data.profile, { leftMm, rightMm, topMm: 1, heightMm: profileMm, scale }, units)
  const items: Item[] = [...profile?.items ?? []], spots: FieldSpot[] = []
  let y = profile ? profile.endMm + 2 : 1
  for (const [index, bar] of data.bars.entries()) {
    const xs = bar.stationsMm.map((xMm) => leftMm + xMm * scale)
    items.push(...heading(bar, y, widthMm, units))
    y += headMm
    for (const row of bar.rows) {
      if (bar.rows.length > 1) { items.push(textOf([edgeMm, y + rowLabelMm / 2], row.label, { tone: 'thin' })); y += rowLabelMm }
      const places = rowPlaces(xs, { fromMm: edgeMm, toMm: widthMm - edgeMm }, fields, row.keys.map((key) => data.texts[key] ?? ''))
      items.push(...(fields === 'none' ? lettered(row, places, data, y) : []))
      if (fields === 'spots') spots.push(...row.keys.map((name, i): FieldSpot => ({ name, at: [places.at[i]![0], y + places.at[i]![1]], widthMm: places.widthMm, heightMm: places.rowMm })))
      const last = row === bar.rows.at(-1)
      if (last) items.push(...stems(row, xs, places, data.current, y))
      y += places.heightMm
    }
    y += stemMm
    const side = barSide(bar, { leftMm, topMm: y, scale, markedEnd: data.markedEnd })
    const plateY = y + side.upMm
    items.push(
      ...side.items, ...zeroMark(data.zero, index, leftMm, scale, y, side.upMm),
      ...(block && index === 0 ? blockItems(rightMm + 3, y, plateY) : []),
      boxOf([edgeMm, plateY], [widthMm - edgeMm, plateY + plateMm], 'none', 'cut-face'), lineOf([edgeMm, plateY], [widthMm - edgeMm, plateY], 'outline'),
      ...stationNames(bar, xs, data.current, plateY + plateMm, widthMm, units),
    )
    y = plateY + plateMm + underMm + (side.nameBelow ? rowLabelMm : 0)
    if (side.nameBelow) items.push(textOf([leftMm, y - rowLabelMm / 2 - 0.5], data.markedEnd, { tone: 'thin' }))
  }
  return { title: data.title, description: data.description, widthMm, heightMm: y, items, fields: spots, times: profile?.times ?? null }
}

function heading({ label, heightMm, thicknessMm, lengthMm, lengthGuessed }: PlateBar, y: number, widthMm: number, units: Units): readonly Item[] {
  const sizes = [heightMm, thicknessMm, lengthGuessed ? null : lengthMm].map((mm) => (mm === null ? '?' : wordLength(mm, units))).join(' × ')
  const room = widthMm - 2 * edgeMm - textWidthMm(sizes, letteringMm) - 4
  return [
    textOf([edgeMm, y + headMm / 2], shortened(label, room, 4.4, true), { sizeMm: 4.4, bold: true, tone: 'bar' }),
    textOf([widthMm - edgeMm, y + headMm / 2], sizes, { anchor: 'end', tone: 'thin' }),
  ]
}

const lettered = (row: PlateRow, { at }: RowPlaces, { texts, current }: BarOnPlateData, y: number): readonly Item[] =>
  row.keys.map((key, i) => textOf([at[i]![0], y + at[i]![1]], texts[key] || (key === current ? '?' : '–'), { anchor: 'middle', bold: key === current }))

/** From the reading down to the bar, as the stylus stands on it; the one that comes next is drawn as an arrow. */
function stems(row: PlateRow, xs: readonly number[], places: RowPlaces, current: string | null, y: number): readonly Item[] {
  const foot = y + places.heightMm, end = foot + stemMm
  return xs.flatMap((x, i): readonly Item[] => {
    const next = row.keys[i] === current, from = places.inOrder ? y + places.at[i]![1] + places.rowMm / 2 : foot + 0.4
    return [lineOf([x, from], [x, end], next ? 'bar' : 'thin'), ...(next ? [pathOf(arrowhead([x, end], [x, end - 3]), 'bar')] : [])]
  })
}

/** A solid triangle under the place, its point at the face. */
function zeroMark(zero: BarOnPlateData['zero'], index: number, leftMm: number, scale: number, y: number, upMm: number): readonly Item[] {
  if (zero === null || zero === 'block' || zero.bar !== index) return []
  const x = leftMm + zero.xMm * scale, deepMm = Math.min(3, upMm)
  return [shapeOf([[x - 1.6, y + deepMm], [x + 1.6, y + deepMm], [x, y]], 'outline', 'ink'), ...(upMm < 5.2 ? [] : [textOf([x + 2.6, y + 2.9], '0', { bold: true })])]
}

const blockItems = (x: number, topY: number, plateY: number): readonly Item[] => [
  boxOf([x, topY], [x + blockMm, plateY], 'outline', 'sheet'), textOf([x + blockMm / 2, (topY + plateY) / 2], '0', { anchor: 'middle', bold: true }),
]

/** Number of each station and under it how far it is from the marked end, as far as they stand apart; the next one always. */
function stationNames({ stationsMm, rows }: PlateBar, xs: readonly number[], current: string | null, y: number, widthMm: number, units: Units): readonly Item[] {
  const next = rows.flatMap(({ keys }) => keys.flatMap((key, i) => (key === current ? [i] : []))).slice(0, 1)
  const stopsOf = (texts: readonly string[]) => texts.map((text, i) => { const sizeMm = textWidthMm(text, letteringMm, true); return { text, sizeMm, preferMm: Math.min(xs[i]!, widthMm - edgeMm - sizeMm / 2) } })
  const numbers = stopsOf(xs.map((_, i) => String(i + 1))), places = stopsOf(stationsMm.map((mm) => wordLength(mm, units)))
  const numbered = standingApart(numbers, next), placed = standingApart(places, next)
  return xs.flatMap((_, i): readonly Item[] => [
    ...(numbered.has(i) ? [textOf([numbers[i]!.preferMm, y + 2.8], numbers[i]!.text, { anchor: 'middle', bold: next.includes(i) })] : []),
    ...(placed.has(i) ? [textOf([places[i]!.preferMm, y + 7.2], places[i]!.text, { anchor: 'middle', tone: 'thin' })] : []),
  ])
}
