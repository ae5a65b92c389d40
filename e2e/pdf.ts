import { inflateSync } from 'node:zlib'

/** What a PDF out of the browser holds, page by page. */
export type PdfPage = { readonly text: string; readonly widthPt: number; readonly heightPt: number }
export type Pdf = { readonly pages: readonly PdfPage[]; readonly colours: readonly string[] }

/**
 * Reads a PDF as the browser of these stories writes it: compressed streams, one object after the other, fonts named by the
 * number of their object (`/F7`), each with its table of letters. Lettering is in the order in which it was painted.
 *
 * `colours` are the different colours set for lines and fills anywhere, each as `red green blue` from 0 to 1.
 */
export function readPdf(file: Buffer): Pdf {
  const objects = objectsOf(file), letters = new Map<string, ReadonlyMap<string, string>>()
  for (const [number, { head }] of objects) {
    const table = /\/ToUnicode (\d+) 0 R/.exec(head)?.[1]
    if (table) letters.set(`F${number}`, lettersOf(objects.get(table)?.stream ?? ''))
  }
  const pages = [...objects.values()].filter(({ head }) => /\/Type\s*\/Page\b/.test(head)).map(({ head }): PdfPage => {
    const [, , width, height] = (/\/MediaBox\s*\[([^\]]+)\]/.exec(head)?.[1] ?? '').trim().split(/\s+/).map(Number)
    const painted = (/\/Contents\s*\[?([^\]/]+)/.exec(head)?.[1] ?? '').match(/\d+(?= 0 R)/g) ?? []
    return { widthPt: width!, heightPt: height!, text: textOf(painted.map((number) => objects.get(number)?.stream ?? '').join('\n'), letters) }
  })
  const colours = new Set([...objects.values()].flatMap(({ stream }) => (stream.match(/(?:^|\s)[\d.]+ [\d.]+ [\d.]+ (?:rg|RG)\b/g) ?? []).map((set) => set.trim().replace(/ (rg|RG)$/, ''))))
  return { pages, colours: [...colours] }
}

type PdfObject = { readonly head: string; readonly stream: string }

function objectsOf(file: Buffer): ReadonlyMap<string, PdfObject> {
  const text = file.toString('latin1'), objects = new Map<string, PdfObject>()
  for (const found of text.matchAll(/(?:^|\n)(\d+) 0 obj\s/g)) {
    const start = found.index + found[0].length, end = text.indexOf('endobj', start), body = text.slice(start, end), at = body.search(/stream\r?\n/)
    if (at < 0) { objects.set(found[1]!, { head: body, stream: '' }); continue }
    const from = start + at + (/stream\r?\n/.exec(body)![0].length), length = Number(/\/Length (\d+)/.exec(body.slice(0, at))?.[1]), head = body.slice(0, at)
    const bytes = file.subarray(from, from + length)
    objects.set(found[1]!, { head, stream: /FlateDecode/.test(head) && !/\/Subtype\s*\/Image|\/Length1/.test(head) ? inflateSync(bytes).toString('latin1') : '' })
  }
  return objects
}

/** Codes of a font with the letters they stand for, from its `bfchar` and `bfrange` rows. */
function lettersOf(table: string): ReadonlyMap<string, string> {
  const letters = new Map<string, string>(), plain = (hex: string): string => String.fromCharCode(...hex.match(/.{4}/g)!.map((unit) => parseInt(unit, 16)))
  for (const [, rows] of table.matchAll(/beginbfchar([^]*?)endbfchar/g)) for (const [, code, to] of rows!.matchAll(/<(\w+)>\s*<(\w+)>/g)) letters.set(code!.toUpperCase(), plain(to!))
  for (const [, rows] of table.matchAll(/beginbfrange([^]*?)endbfrange/g)) {
    for (const [, from, to, first] of rows!.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g)) {
      for (let code = parseInt(from!, 16), i = 0; code <= parseInt(to!, 16); code += 1, i += 1) letters.set(code.toString(16).toUpperCase().padStart(from!.length, '0'), String.fromCharCode(parseInt(first!, 16) + i))
    }
  }
  return letters
}

/** Lettering of one page, each piece that was painted at a place of its own a line. */
function textOf(painted: string, letters: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  let font: ReadonlyMap<string, string> = new Map(), text = ''
  for (const [, name, hex, end] of painted.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]+)>|(\bET\b)/g)) {
    if (name) font = letters.get(name) ?? new Map()
    else if (hex) text += hex.toUpperCase().match(new RegExp(`.{${[...font.keys()][0]?.length ?? 4}}`, 'g'))?.map((code) => font.get(code) ?? '').join('') ?? ''
    else if (end) text += '\n'
  }
  // The font has one sign for micro and the Greek letter.
  return text.replaceAll('μ', 'µ')
}
