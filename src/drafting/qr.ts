import { encode } from 'uqr'
import { boxOf } from '#drafting/items.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'

/** White around the code, in modules. @source ISO-18004 (6.3.8: four modules wide) */
const quietModules = 4

/**
 * A text as a QR code, to be painted in print, which is black on white also on a dark screen.
 *
 * Error correction at level M: with about a seventh of it smeared or scratched it still reads.
 *
 * @param text     what a reader gets back, letter for letter
 * @param widthMm  with the quiet zone around it
 */
export function qrScene(text: string, { title, widthMm }: { readonly title: string; readonly widthMm: number }): Scene {
  const { data, size } = encode(text, { ecc: 'M', border: quietModules }), moduleMm = widthMm / size
  const box = ([x0, y0]: Point, [x1, y1]: Point): Item => boxOf([x0 * moduleMm, y0 * moduleMm], [x1 * moduleMm, y1 * moduleMm], 'none', 'ink')
  // Dark ones side by side as one box, and those above each other too: else a painter leaves hair lines between the rows.
  const across = data.flatMap((row, y) => darkRuns(row, 1).map(([from, to]) => box([from, y], [to, y + 1])))
  const down = data.flatMap((_row, x) => darkRuns(data.map((row) => row[x]!), 2).map(([from, to]) => box([x, from], [x + 1, to])))
  return {
    title, description: `QR code: ${text}`, widthMm, heightMm: widthMm, fields: [],
    items: [boxOf([0, 0], [widthMm, widthMm], 'none', 'sheet'), ...across, ...down],
  }
}

/** Where dark modules follow each other, `fewest` or more of them: from which to before which. */
function darkRuns(line: readonly boolean[], fewest: number): (readonly [from: number, to: number])[] {
  const runs: (readonly [number, number])[] = []
  for (let from = line.indexOf(true); from >= 0;) {
    const light = line.indexOf(false, from), to = light < 0 ? line.length : light
    if (to - from >= fewest) runs.push([from, to])
    from = line.indexOf(true, to)
  }
  return runs
}
