import { boxOf, letteringMm, lineOf, textOf } from '#drafting/items.ts'
import { shortened } from '#drafting/lettering.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** One vise of a row with its pair, worded; heights in µm against any zero the row shares. */
export type RowPictureVise = {
  readonly name: string
  readonly pair: string
  readonly bedUm: number
  readonly bed: string
  /** Top less the first top. */
  readonly offsetUm: number
  readonly offset: string
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
  const offsets = vises.map(({ offsetUm }) => offsetUm), beds = vises.map(({ bedUm }) => bedUm), middleBedUm = (Math.max(...beds) + Math.min(...beds)) / 2
  const apartUm = Math.max(1, ...beds.map((um) => Math.abs(um - middleBedUm)), ...offsets.map(Math.abs))
  const times = timesOffered.find((many) => (apartUm / 1000) * many <= mostMm) ?? 1, larger = (um: number): number => (um / 1000) * times
  const bedY = heightMm - 12 - bedMm, topY = bedY - barMm
  return {
    title: data.title, description: data.description, widthMm, heightMm, fields: [],
    items: [
      lineOf([0, topY], [widthMm, topY], 'centre'),
      ...vises.flatMap((vise, k) => viseItems(vise, { x: k * eachMm, eachMm, bed: bedY - larger(vise.bedUm - middleBedUm), top: topY - larger(vise.offsetUm), foot: heightMm - 12 })),
      textOf([1, letteringMm], data.drawnLarger(times), { tone: 'thin' }),
    ],
  }
}

function viseItems(vise: RowPictureVise, { x, eachMm, bed, top, foot }: { readonly x: number; readonly eachMm: number; readonly bed: number; readonly top: number; readonly foot: number }): readonly Item[] {
  const gap = Math.min(4, eachMm * 0.06), left = x + gap, right = x + eachMm - gap, middle = x + eachMm / 2, wide = Math.min(11, (right - left) * 0.16)
  const bar = (from: number): Item => boxOf([from, top], [from + wide, bed], 'bar', 'bar'), room = right - left
  return [
    boxOf([left, bed], [right, foot], 'outline', 'cut-face'),
    bar(left + room * 0.1), bar(right - room * 0.1 - wide),
    lineOf([left, top], [right, top], 'thin'),
    textOf([middle, (top + bed) / 2], shortened(vise.pair, room * 0.8 - 2 * wide - 2, 5, true), { sizeMm: 5, bold: true, anchor: 'middle' }),
    textOf([middle, top - letteringMm], shortened(vise.offset, room, 4.4, true), { sizeMm: 4.4, bold: true, anchor: 'middle' }),
    boxOf([left + 2, bed + 3], [right - 2, bed + 9.4], 'none', 'sheet'),
    textOf([middle, bed + 6.2], shortened(vise.bed, room - 6, letteringMm), { anchor: 'middle' }),
    textOf([middle, foot + 6], shortened(vise.name, room, 4.4, true), { sizeMm: 4.4, bold: true, anchor: 'middle' }),
  ]
}
