import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** One part after the cut: measured less foretold, and the 95 % that was foretold to either side. */
export type OutcomeMark = { readonly apartUm: number; readonly withinUm: number }

export type OutcomesPictureData = {
  readonly title: string
  readonly description: string
  /** Oldest first. */
  readonly marks: readonly OutcomeMark[]
  readonly words: { readonly thicker: string; readonly thinner: string; readonly scale: (um: number) => string }
}

const rowMm = 6, topMm = 8, edgeMm = 3

/** How well predictions have held: each part a row, what was foretold a band about the middle, what was measured a mark; outside its band a cross. */
export function outcomesPicture({ title, description, marks, words }: OutcomesPictureData, { widthMm }: { readonly widthMm: number }): Scene {
  const mostUm = Math.max(1e-3, ...marks.flatMap(({ apartUm, withinUm }) => [Math.abs(apartUm), withinUm]))
  const middle = widthMm / 2, endMm = topMm + marks.length * rowMm, paper = (um: number) => (um / mostUm) * (middle - edgeMm - 3)
  const rows = marks.flatMap(({ apartUm, withinUm }, at): readonly Item[] => {
    const y = topMm + (at + 0.5) * rowMm, x = middle + paper(apartUm)
    return [
      boxOf([middle - paper(withinUm), y - 1.6], [middle + paper(withinUm), y + 1.6], 'thin', 'bar'),
      ...(Math.abs(apartUm) <= withinUm ? [{ kind: 'circle', centre: [x, y], radiusMm: 1.1, line: 'bar', fill: 'ink' } satisfies Item]
        : [lineOf([x - 1.6, y - 1.6], [x + 1.6, y + 1.6], 'danger'), lineOf([x - 1.6, y + 1.6], [x + 1.6, y - 1.6], 'danger')]),
    ]
  })
  return {
    title, description, widthMm, heightMm: endMm + 7, fields: [],
    items: [
      textOf([edgeMm, 3], words.thinner, { tone: 'thin' }), textOf([widthMm - edgeMm, 3], words.thicker, { tone: 'thin', anchor: 'end' }),
      ...rows, lineOf([middle, topMm - 1.5], [middle, endMm + 0.5], 'centre'),
      lineOf([middle, endMm + 1], [middle + paper(mostUm), endMm + 1], 'thin'), textOf([widthMm - edgeMm, endMm + 4], words.scale(mostUm), { tone: 'thin', anchor: 'end' }),
    ],
  }
}
