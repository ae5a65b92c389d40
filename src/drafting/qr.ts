import { encode } from 'uqr'
import { boxOf } from '#drafting/items.ts'
import type { Item, Scene } from '#drafting/scene.ts'

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
  const { data, size } = encode(text, { ecc: 'M', border: quietModules })
  const moduleMm = widthMm / size
  return {
    title, description: `QR code: ${text}`, widthMm, heightMm: widthMm, fields: [],
    items: [boxOf([0, 0], [widthMm, widthMm], 'none', 'sheet'), ...data.flatMap((row, y) => darkRuns(row, y, moduleMm))],
  }
}

/** The dark modules of a row, side by side ones as one box. */
function darkRuns(row: readonly boolean[], y: number, moduleMm: number): Item[] {
  const runs: Item[] = []
  for (let from = row.indexOf(true); from >= 0;) {
    const light = row.indexOf(false, from), to = light < 0 ? row.length : light
    runs.push(boxOf([from * moduleMm, y * moduleMm], [to * moduleMm, (y + 1) * moduleMm], 'none', 'ink'))
    from = row.indexOf(true, to)
  }
  return runs
}
