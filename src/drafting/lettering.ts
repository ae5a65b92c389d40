import type { TextItem } from '#drafting/scene.ts'

export type Box = { readonly x0Mm: number; readonly y0Mm: number; readonly x1Mm: number; readonly y1Mm: number }

/**
 * Width of a text, a little on the wide side: from the advance widths of the bundled face by classes of letters, read off in
 * a browser (figures 0.64 of the size, most small letters 0.57, capitals 0.68). An unknown sign counts as a full square.
 */
export function textWidthMm(text: string, sizeMm: number, bold = false): number {
  let squares = 0
  for (const letter of text) squares += advance(letter)
  return squares * sizeMm * (bold ? 1.07 : 1)
}

/** The paper a text takes, turned or not: as wide as `textWidthMm`, as high as its figures and a little below them. */
export function textBoxOf(text: TextItem): Box {
  const width = textWidthMm(text.text, text.sizeMm, text.bold)
  const before = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? width / 2 : width
  const [x, y] = text.at, up = text.sizeMm * 0.4, down = text.sizeMm * 0.5
  return text.turnDeg === 0
    ? { x0Mm: x - before, x1Mm: x - before + width, y0Mm: y - up, y1Mm: y + down }
    : { x0Mm: x - up, x1Mm: x + down, y0Mm: y + before - width, y1Mm: y + before }
}

/** Lines of at most `widthMm`, broken at spaces; a word that is wider than a line is broken anywhere. Keeps every letter, and a unit with its number. */
export function wrapped(text: string, widthMm: number, sizeMm: number, bold = false): readonly string[] {
  const lines: string[] = []
  let line = ''
  const fits = (words: string) => textWidthMm(words, sizeMm, bold) <= widthMm
  for (const word of text.split(/(?<!\d(?= (?:mm|in|µm)\b))\s+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) { line = longer; continue }
    if (line !== '') lines.push(line)
    line = ''
    for (const letter of word) {
      if (line !== '' && !fits(line + letter)) { lines.push(line); line = '' }
      line += letter
    }
  }
  return line === '' ? lines : [...lines, line]
}

/** A text cut to `widthMm` with `…` at the end where something is left out. */
export function shortened(text: string, widthMm: number, sizeMm: number, bold = false): string {
  if (textWidthMm(text, sizeMm, bold) <= widthMm) return text
  const letters = Array.from(text)
  while (letters.length > 0 && textWidthMm(`${letters.join('')}…`, sizeMm, bold) > widthMm) letters.pop()
  return `${letters.join('').trimEnd()}…`
}

/** At most so many lines of at most `widthMm`, the last one cut with `…` where something is left out. */
export function wrappedWithin(text: string, lines: number, widthMm: number, sizeMm: number, bold = false): readonly string[] {
  const all = wrapped(text, widthMm, sizeMm, bold)
  return all.length <= lines ? all : [...all.slice(0, lines - 1), shortened(all.slice(lines - 1).join(' '), widthMm, sizeMm, bold)]
}

/** A text in the largest of some sizes (largest first) in which it fits `widthMm`; where it fits in none, cut in the smallest. */
export function fitted(text: string, widthMm: number, sizesMm: readonly [number, ...number[]], bold = false): { readonly text: string; readonly sizeMm: number } {
  const sizeMm = sizesMm.find((size) => textWidthMm(text, size, bold) <= widthMm) ?? sizesMm.at(-1)!
  return { text: shortened(text, widthMm, sizeMm, bold), sizeMm }
}

/** Classes of letters by their advance, each a little above its widest. */
const classes: readonly (readonly [RegExp, number])[] = [
  [/[0-9]/, 0.64], [/[ ijl.,:;'|!·]/, 0.29], [/[ftrI\-()[\]{}/\\"°`\s]/, 0.39], [/[cksvxyz–]/, 0.51], [/[abdeghnopqu]/, 0.57],
  [/[MWm@%&½¼¾⅛⅜⅝⅞…#]/, 0.93], [/[NOQwØ]/, 0.73], [/[A-ZÀ-ÞØ]/, 0.68], [/[ß-ÿ×±−+=<>~^*?$µ_]/, 0.64],
]

const advance = (letter: string): number => classes.find(([letters]) => letters.test(letter))?.[1] ?? 1
