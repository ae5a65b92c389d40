/**
 * Texts that a spreadsheet would take for a formula, after blanks too, get an apostrophe in front, and so do texts that begin with one, so
 * that taking it away again always gives back the text (docs/rack-csv.md).
 */
const risky = /^\s*[=+\-@]|^['\t\r]/

export const guarded = (text: string): string => (risky.test(text) ? `'${text}` : text)

export const unguarded = (cell: string): string => (cell.startsWith("'") && risky.test(cell.slice(1)) ? cell.slice(1) : cell)

/** How a file goes out. A lone line break is none between records there, so the writer has to be told that it wants quotes. */
export const csvStyle = { bom: true, record_delimiter: 'windows', quoted_match: /[\r\n]/ } as const
