import { lineOf, moved, textOf } from '#drafting/items.ts'
import { fitted, shortened, textWidthMm } from '#drafting/lettering.ts'
import { type Paper, paperEdgeMm, papers } from '#drafting/paper.ts'
import { qrScene } from '#drafting/qr.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** One strip for a bar or a slot. */
export type Label = {
  /** Text of its QR code. */
  readonly qr: string
  /** Read from an arm's length: the height, or the name of the slot. */
  readonly large: string
  /** Name, mates, slot; one line. */
  readonly under: string
  /** The code in letters, for those who type. */
  readonly code: string
}

export type LabelsData = { readonly title: string; readonly description: string; readonly labels: readonly Label[] }

export const labelMm = { widthMm: 62, heightMm: 11.5 }
const padMm = 1.6
const largestMm = [7.2, 6.2, 5.2, 4.4] as const
const smallMm = 3

/** Sheets of strips with lines to cut along, side by side and one under the other without waste; black only. */
export function labelPages({ title, description, labels }: LabelsData, paper: Paper): readonly Scene[] {
  const { widthMm, heightMm } = papers[paper], across = Math.floor((widthMm - 2 * paperEdgeMm) / labelMm.widthMm), down = Math.floor((heightMm - 2 * paperEdgeMm) / labelMm.heightMm)
  const left = (widthMm - across * labelMm.widthMm) / 2, each = across * down
  return Array.from({ length: Math.max(1, Math.ceil(labels.length / each)) }, (_, page): Scene => {
    const own = labels.slice(page * each, (page + 1) * each), rows = Math.ceil(own.length / across)
    return {
      title, description, widthMm, heightMm, fields: [],
      items: [
        ...own.flatMap((label, i) => labelScene(label).items.map((item) => moved(item, left + (i % across) * labelMm.widthMm, paperEdgeMm + Math.floor(i / across) * labelMm.heightMm))),
        ...(own.length === 0 ? [] : cutLines(left, across, rows)),
      ],
    }
  })
}

/** The strip alone: code at the left, the height large beside it, what else there is to say at the right. */
export function labelScene({ qr, large, under, code }: Label): Scene {
  const { widthMm, heightMm } = labelMm, x = heightMm + 1, room = widthMm - x - padMm
  const said = fitted(large, room * 0.55, largestMm, true), { sizeMm } = said
  const right = x + textWidthMm(said.text, sizeMm, true) + 2.5, rest = widthMm - padMm - right
  return {
    title: large, description: `${large} ${under} ${code}`, widthMm, heightMm, fields: [],
    items: [
      ...qrScene(qr, { title: large, widthMm: heightMm }).items,
      textOf([x, heightMm / 2], said.text, { sizeMm, bold: true }),
      textOf([right, heightMm / 2 - 2], shortened(under, rest, smallMm), { sizeMm: smallMm }), textOf([right, heightMm / 2 + 2.2], shortened(code, rest, smallMm), { sizeMm: smallMm }),
    ],
  }
}

/** Dashed lines between all strips and around them, run out a little for the knife. */
function cutLines(left: number, across: number, rows: number): readonly Item[] {
  const right = left + across * labelMm.widthMm, end = paperEdgeMm + rows * labelMm.heightMm, outMm = 1.5
  return [
    ...Array.from({ length: rows + 1 }, (_, i) => paperEdgeMm + i * labelMm.heightMm).map((y) => lineOf([left - outMm, y], [right + outMm, y], 'hidden')),
    ...Array.from({ length: across + 1 }, (_, i) => left + i * labelMm.widthMm).map((x) => lineOf([x, paperEdgeMm - outMm], [x, end + outMm], 'hidden')),
  ]
}
