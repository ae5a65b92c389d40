import { dimensionLinesOf } from '#drafting/dimension.ts'
import { Raster } from '#drafting/raster.ts'
import type { Fill, Item, LineKind, Point, Scene, TextItem } from '#drafting/scene.ts'

/** How many of how many dots of a line are set. */
const dashes: { readonly [kind in LineKind]: readonly [on: number, of: number] } = {
  outline: [1, 1], bar: [1, 1], danger: [1, 1], thin: [1, 1], centre: [2, 4], hidden: [1, 3], removal: [2, 4], rule: [1, 2],
}

/**
 * A scene as text of this many columns: lines in braille dots, lettering over them, upright lettering letter under letter.
 *
 * A cell counts as twice as high as wide. Lines end without spaces; every line ends with a newline. Control characters
 * of lettering are dropped.
 */
export function terminalFrom(scene: Scene, columns: number): string {
  const perMm = columns / scene.widthMm, rows = Math.max(1, Math.ceil((scene.heightMm * perMm) / 2))
  const raster = new Raster(columns, rows)
  const dot = ([x, y]: Point): Point => [x * perMm * 2, y * perMm * 2]
  for (const item of scene.items) draw(item, raster, dot)
  const letters = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => raster.letter(column, row)))
  for (const item of scene.items) if (item.kind === 'text') write(item, letters, perMm)
  return letters.map((line) => `${line.join('').trimEnd()}\n`).join('')
}

function draw(item: Item, raster: Raster, dot: (point: Point) => Point): void {
  switch (item.kind) {
    case 'line': raster.line(dot(item.from), dot(item.to), ...dashes[item.line]); break
    case 'shape': outline(item.points.map(dot), item.closed, item.line, item.fill, raster); break
    case 'circle': {
      const points = Array.from({ length: 48 }, (_, i): Point => {
        const turn = (i / 48) * 2 * Math.PI
        return dot([item.centre[0] + item.radiusMm * Math.cos(turn), item.centre[1] + item.radiusMm * Math.sin(turn)])
      })
      outline(points, true, item.line, item.fill, raster)
      break
    }
    case 'dimension':
      for (const [from, to] of dimensionLinesOf(item)) raster.line(dot(from!), dot(to!), 1, 2)
      break
    case 'text': break
  }
}

function outline(points: readonly Point[], closed: boolean, line: LineKind | 'none', fill: Fill, raster: Raster): void {
  const pattern = patternOf(fill)
  if (pattern) raster.fill(points, pattern)
  if (line === 'none') return
  points.forEach((to, index) => {
    const from = index > 0 ? points[index - 1]! : closed ? points.at(-1)! : null
    if (from) raster.line(from, to, ...dashes[line])
  })
}

function patternOf(fill: Fill): ((x: number, y: number) => boolean) | null {
  switch (fill) {
    case 'none': return null
    case 'ink': return () => true
    case 'sheet': case 'bar': case 'removal': return () => false
    case 'cut-face': return (x, y) => (x + y) % 8 === 0
    case 'cut-face-back': return (x, y) => (x - y + 8000) % 8 === 0
    case 'danger': return (x, y) => (x + y) % 3 === 0
  }
}

function write({ at: [x, y], text, anchor, turnDeg }: TextItem, letters: string[][], perMm: number): void {
  const signs = Array.from(text.replace(/\p{Cc}|\p{Cf}/gu, '')), row = Math.floor((y * perMm) / 2)
  const before = anchor === 'start' ? 0 : anchor === 'middle' ? signs.length / 2 : signs.length
  signs.forEach((sign, index) => {
    const line = letters[turnDeg === 90 ? Math.round(row - (signs.length - 1) / 2) + index : row]
    const column = turnDeg === 90 ? Math.floor(x * perMm) : Math.round(x * perMm - before) + index
    if (line && column >= 0 && column < line.length) line[column] = sign
  })
}
