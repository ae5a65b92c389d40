import type { Fill, Item, LineItem, LineKind, Point, ShapeItem, TextItem, Tone } from '#drafting/scene.ts'

/** Height of ordinary lettering: 13.6 px on a screen of 96 to the inch, the smallest the house allows. */
export const letteringMm = 3.6

export const lineOf = (from: Point, to: Point, line: LineKind): LineItem => ({ kind: 'line', from, to, line })

export const shapeOf = (points: readonly Point[], line: LineKind | 'none', fill: Fill): ShapeItem => ({ kind: 'shape', points, closed: true, line, fill })

export const pathOf = (points: readonly Point[], line: LineKind): ShapeItem => ({ kind: 'shape', points, closed: false, line, fill: 'none' })

/** An upright rectangle between two opposite corners. */
export const boxOf = ([x0, y0]: Point, [x1, y1]: Point, line: LineKind | 'none', fill: Fill): ShapeItem =>
  shapeOf([[x0, y0], [x1, y0], [x1, y1], [x0, y1]], line, fill)

export type TextStyle = { readonly sizeMm?: number; readonly anchor?: TextItem['anchor']; readonly bold?: boolean; readonly tone?: Tone; readonly turnDeg?: 0 | 90 }

export const textOf = (at: Point, text: string, style: TextStyle = {}): TextItem => ({
  kind: 'text', at, text,
  sizeMm: style.sizeMm ?? letteringMm, anchor: style.anchor ?? 'start', bold: style.bold ?? false, tone: style.tone ?? 'ink', turnDeg: style.turnDeg ?? 0,
})

/** The same item elsewhere on the paper. */
export function moved(item: Item, byXMm: number, byYMm: number): Item {
  const to = ([x, y]: Point): Point => [x + byXMm, y + byYMm]
  switch (item.kind) {
    case 'line': return { ...item, from: to(item.from), to: to(item.to) }
    case 'shape': return { ...item, points: item.points.map(to) }
    case 'circle': return { ...item, centre: to(item.centre) }
    case 'dimension': return { ...item, from: to(item.from), to: to(item.to), tail: item.tail && to(item.tail) }
    case 'text': return { ...item, at: to(item.at) }
  }
}
