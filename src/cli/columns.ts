/** Rows in columns of even width, two spaces between; numbers are set to the right by `right`, the last column is left ragged. */
export function inColumns(rows: readonly (readonly string[])[], right: readonly number[] = []): string {
  const widths = rows[0]?.map((_, column) => rows.reduce((widest, row) => Math.max(widest, lettersOf(row[column] ?? '')), 0)) ?? []
  return rows.map((row) => row.map((cell, column) => padded(cell, widths[column]!, right.includes(column))).join('  ').trimEnd()).map((line) => `${line}\n`).join('')
}

function padded(cell: string, width: number, toTheRight: boolean): string {
  const room = ' '.repeat(Math.max(0, width - lettersOf(cell)))
  return toTheRight ? room + cell : cell + room
}

const letters = new Intl.Segmenter()

/** Columns a text takes; asking the segmenter is slow, and most texts are plain. */
const lettersOf = (text: string): number => (/^[ -~]*$/.test(text) ? text.length : Array.from(letters.segment(text)).length)

/** A name as it was typed, with what could move the cursor or hide letters taken out. */
export function plainText(text: string): string {
  return text.replaceAll(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ')
}
