/** How a gauge talks, and what of a line is the reading. */
export type GaugeLine = {
  readonly baudRate: number
  readonly dataBits: 7 | 8
  readonly parity: 'none' | 'even' | 'odd'
  readonly stopBits: 1 | 2
  readonly lineEnd: 'CR LF' | 'CR' | 'LF'
  /** Which of the numbers in a line counts, from 1; 0: the last. */
  readonly which: number
  /** What the gauge sends in; empty: in what a number without a unit means. */
  readonly unit: '' | 'mm' | 'in' | 'µm'
}

/** What most gauges are set to when they come. Common practice, no source. */
export const usualLine: GaugeLine = { baudRate: 9600, dataBits: 8, parity: 'none', stopBits: 1, lineEnd: 'CR LF', which: 0, unit: '' }

const ends: { readonly [end in GaugeLine['lineEnd']]: string } = { 'CR LF': '\r\n', 'CR': '\r', 'LF': '\n' }

/** The whole lines in what has arrived, and the begin of the next. */
export function linesIn(arrived: string, { lineEnd }: Pick<GaugeLine, 'lineEnd'>): { readonly lines: readonly string[]; readonly rest: string } {
  const parts = arrived.split(ends[lineEnd])
  return { lines: parts.slice(0, -1), rest: parts.at(-1)! }
}

/**
 * The reading in a line, as text with its unit: of `01A+00003.5` the second number is `+3.5`. Null where there is no such
 * number. Zeros in front are the gauge's way of filling its field and are left out.
 */
export function readingIn(line: string, { which, unit }: Pick<GaugeLine, 'which' | 'unit'>): string | null {
  const numbers = [...line.matchAll(/([+\-−]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)/g)].map(([, sign, digits]) => `${sign}${digits!.replace(/^0+(?=\d)/, '')}`)
  const number = which === 0 ? numbers.at(-1) : numbers[which - 1]
  return number === undefined ? null : unit === '' ? number : `${number} ${unit}`
}
