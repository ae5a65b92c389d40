import { CsvError, parse } from 'csv-parse/sync'

/** One record: the line it begins on, counted from 1, and its cells as they stand in the file. */
export type CsvRecord = { readonly line: number; readonly cells: readonly string[] }

export type CsvRecords = {
  readonly records: readonly CsvRecord[]
  /** Lines whose quotes do not close, or stand where none may. */
  readonly brokenLines: readonly number[]
}

/** With more broken lines than this the file is not looked at further. */
const mostBroken = 100

/**
 * The records of a CSV text, blank ones left out. The separator is the one that a first line `sep=;` names, else whichever of
 * tab, semicolon and comma the first line has most of.
 *
 * In a file that puts no cell in quotes a `"` is an inch mark.
 */
export function csvRecordsFrom(text: string): CsvRecords {
  const lines = text.split(/\r\n|\n|\r/)
  const named = /^"?sep=([\t;,])"?$/i.exec(lines[0]!)?.[1]
  if (named !== undefined) lines[0] = ''
  const delimiter = named ?? separatorOf(lines.find((line) => line.trim() !== '') ?? '')
  const quote = new RegExp(`(^|${delimiter})\\s*"`).test(lines.join(delimiter)) ? '"' : null
  const records: CsvRecord[] = []
  const brokenLines: number[] = []
  for (let from = 0; from < lines.length && brokenLines.length < mostBroken;) {
    const rest = recordsOf(lines.slice(from).join('\n'), delimiter, quote)
    records.push(...rest.records.map(({ line, cells }) => ({ line: from + line, cells })))
    if (rest.broken === null) break
    brokenLines.push(from + rest.broken)
    from += rest.broken
  }
  return { records: records.filter(({ cells }) => cells.some((cell) => cell.trim() !== '')), brokenLines }
}

/** All records up to the first broken one, and the line that one begins on. */
function recordsOf(text: string, delimiter: string, quote: '"' | null): { readonly records: CsvRecord[]; readonly broken: number | null } {
  const records: CsvRecord[] = []
  let nextLine = 1
  try {
    parse(text, {
      delimiter, quote, record_delimiter: '\n', relax_column_count: true,
      on_record: (cells: string[]) => {
        records.push({ line: nextLine, cells })
        nextLine += 1 + cells.reduce((breaks, cell) => breaks + cell.split('\n').length - 1, 0)
        return null
      },
    })
    return { records, broken: null }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return { records, broken: nextLine }
  }
}

function separatorOf(line: string): string {
  const bare = line.replaceAll(/"[^"]*"/g, '')
  const counted = ['\t', ';', ','].map((mark) => ({ mark, count: bare.split(mark).length }))
  return counted.reduce((best, one) => (one.count > best.count ? one : best)).mark
}
