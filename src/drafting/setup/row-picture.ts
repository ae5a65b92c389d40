import { boxOf, letteringMm, lineOf, textOf } from '#drafting/items.ts'
import { shortened, textBoxOf, textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point, Scene, TextItem } from '#drafting/scene.ts'

/** One vise of a row with its pair, worded; heights in µm against any zero the row shares. */
export type RowPictureVise = {
  readonly name: string
  readonly pair: string
  readonly bedUm: number
  /** Texts from the longest to the shortest: the first that has room is drawn. */
  readonly bed: readonly string[]
  /** Top less the first top. */
  readonly offsetUm: number
  readonly offset: readonly string[]
}

export type RowPictureData = {
  readonly title: string
  readonly description: string
  readonly vises: readonly RowPictureVise[]
  /** How many times larger differences of height are drawn: `heights × 200`. */
  readonly drawnLarger: (times: number) => string
}

const barMm = 26, bedMm = 16, mostMm = 7
const timesOffered = [1000, 500, 200, 100, 50, 20, 10, 5, 2, 1]

/** Vises side by side seen from the front: beds and tops apart, by as many times as is said; the chain line is the top of the first. */
export function rowPicture(data: RowPictureData, widthMm: number): Scene {
  const { vises } = data, heightMm = bedMm + barMm + 2 * mostMm + 22, eachMm = widthMm / Math.max(1, vises.length)
  const offsets = vises.map(({ offsetUm }) => offsetUm), beds = vises.map(({ bedUm }) => bedUm)
  const middleBedUm = (Math.max(...beds) + Math.min(...beds)) / 2
  const apartUm = Math.max(1, ...beds.map((um) => Math.abs(um - middleBedUm)), ...offsets.map(Math.abs))
  const times = timesOffered.find((many) => (apartUm / 1000) * many <= mostMm) ?? 1, larger = (um: number): number => (um / 1000) * times
  const bedY = heightMm - 12 - bedMm, topY = bedY - barMm
  return {
    title: data.title, description: data.description, widthMm, heightMm, fields: [],
    items: [
      lineOf([0, topY], [widthMm, topY], 'centre'),
      ...vises.flatMap((vise, k) => viseItems(vise, {
        x: k * eachMm, eachMm, bed: bedY - larger(vise.bedUm - middleBedUm), top: topY - larger(vise.offsetUm), foot: heightMm - 12,
      })),
      textOf([1, letteringMm], data.drawnLarger(times), { tone: 'thin' }),
    ],
  }
}

/** Where a vise stands on the paper: its left end and its room, and how high its bed, its top and its foot lie. */
type ViseRoom = { readonly x: number; readonly eachMm: number; readonly bed: number; readonly top: number; readonly foot: number }

function viseItems(vise: RowPictureVise, { x, eachMm, bed, top, foot }: ViseRoom): readonly Item[] {
  const gap = Math.min(4, eachMm * 0.06), left = x + gap, right = x + eachMm - gap, middle = x + eachMm / 2, wide = Math.min(11, (right - left) * 0.12)
  const bar = (from: number): Item => boxOf([from, top], [from + wide, bed], 'bar', 'bar'), room = right - left
  const bedSaid = vise.bed.find((text) => textWidthMm(text, letteringMm) <= room - 6) ?? vise.bed.at(-1) ?? ''
  return [
    boxOf([left, bed], [right, foot], 'outline', 'cut-face'),
    bar(left + room * 0.05), bar(right - room * 0.05 - wide),
    lineOf([left, top], [right, top], 'thin'),
    lettered([middle, (top + bed) / 2], [vise.pair], room * 0.9 - 2 * wide - 2, 5),
    ...onSheet(lettered([middle, top - letteringMm], vise.offset, eachMm - 1, 4.4)),
    boxOf([left + 2, bed + 3], [right - 2, bed + 9.4], 'none', 'sheet'),
    textOf([middle, bed + 6.2], shortened(bedSaid, room - 5, letteringMm), { anchor: 'middle' }),
    lettered([middle, foot + 6], [vise.name], eachMm - 1, 4.4),
  ]
}

/** Lettering that covers the lines it crosses. */
function onSheet(item: TextItem): readonly Item[] {
  const { x0Mm, x1Mm, y0Mm, y1Mm } = textBoxOf(item)
  return [boxOf([x0Mm - 0.5, y0Mm - 0.3], [x1Mm + 0.5, y1Mm - 0.2], 'none', 'sheet'), item]
}

/** The first text that has room at its own size or the smallest; else the last one cut. */
function lettered(at: Point, texts: readonly string[], roomMm: number, sizeMm: number): TextItem {
  const fits = texts.flatMap((text) => [sizeMm, letteringMm].map((size) => ({ text, size }))).find(({ text, size }) => textWidthMm(text, size, true) <= roomMm)
  const { text, size } = fits ?? { text: shortened(texts.at(-1) ?? '', roomMm, letteringMm, true), size: letteringMm }
  return textOf(at, text, { sizeMm: size, bold: true, anchor: 'middle' })
}
