import type { TextItem } from '#drafting/scene.ts'

export type Box = { readonly x0Mm: number; readonly y0Mm: number; readonly x1Mm: number; readonly y1Mm: number }

/**
 * Width of a text, a little on the wide side: from the advance widths of the bundled face by classes of letters, read off in
 * a browser (digits 0.41 to 0.66 of the size, capitals to 0.76, the widest 0.97). An unknown sign counts as a full square.
 */
export function textWidthMm(text: string, sizeMm: number, bold = false): number {
  let squares = 0
  for (const letter of text) squares += advance(letter)
  return squares * sizeMm * (bold ? 1.06 : 1)
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

/** Lines of at most `widthMm`, broken at spaces; a word that is wider than a line is broken anywhere. Keeps every letter. */
export function wrapped(text: string, widthMm: number, sizeMm: number, bold = false): readonly string[] {
  const lines: string[] = []
  let line = ''
  const fits = (words: string) => textWidthMm(words, sizeMm, bold) <= widthMm
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
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

function advance(letter: string): number {
  if (/[0-9]/.test(letter)) return 0.63
  if (/[ijl.,:;'|!·]/.test(letter)) return 0.28
  if (/[\s\-–()[\]{}/\\ftr"°`]/.test(letter)) return 0.4
  if (/[MWmw@%&½¼¾⅛⅜⅝⅞…#]/.test(letter)) return 0.95
  if (/[A-ZÀ-ÞØ]/.test(letter)) return 0.71
  if (/[a-zß-ÿ×±−+=<>~^*?$µ_]/.test(letter)) return 0.6
  return 1
}
