import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import { type Paper, papers } from '#drafting/paper.ts'
import { heightOf, paragraph, spaced } from '#drafting/paragraph.ts'
import type { Item, Scene } from '#drafting/scene.ts'

export type CareCardData = { readonly title: string; readonly description: string; readonly lines: readonly string[]; readonly shop: string }

/** The card itself, to cut out along its edge. */
export const careCardMm = { widthMm: 148, heightMm: 105 }
const padMm = 6
const numberMm = 9
const headMm = 17

/** A small card for the wall, in the middle of the upper half of the sheet; black only. */
export function careCard({ title, description, lines, shop }: CareCardData, paper: Paper): Scene {
  const { widthMm, heightMm } = papers[paper], left = (widthMm - careCardMm.widthMm) / 2, top = 20, right = left + careCardMm.widthMm, bottom = top + careCardMm.heightMm
  const { sizeMm, pieces } = fitted(lines)
  let y = top + headMm + (careCardMm.heightMm - headMm - padMm - heightOf(pieces)) / 2
  return {
    title, description, widthMm, heightMm, fields: [],
    items: [
      boxOf([left, top], [right, bottom], 'outline', 'none'),
      textOf([left + padMm, top + 9], title, { sizeMm: 8, bold: true }), textOf([right - padMm, top + 9], shop, { sizeMm: 3.4, anchor: 'end' }),
      lineOf([left, top + headMm], [right, top + headMm], 'outline'),
      ...pieces.flatMap((piece, at): readonly Item[] => {
        y += piece.heightMm
        const from = y - piece.heightMm
        return [textOf([left + padMm, from + sizeMm * 1.15], String(at + 1), { sizeMm: sizeMm * 1.1, bold: true }), ...piece.draw(left + padMm + numberMm, from)]
      }),
    ],
  }
}

/** Lettering as large as the card allows. */
function fitted(lines: readonly string[]) {
  const inside = careCardMm.heightMm - headMm - 2 * padMm
  const at = (sizeMm: number) => ({ sizeMm, pieces: lines.map((line) => spaced(paragraph(line, careCardMm.widthMm - 2 * padMm - numberMm, sizeMm), sizeMm * 0.5)) })
  return [5.4, 5, 4.6, 4.2].map(at).find(({ pieces }) => heightOf(pieces) <= inside) ?? at(3.8)
}
