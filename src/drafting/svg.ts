import { arrowheadsOf, dimensionLinesOf } from '#drafting/dimension.ts'
import type { Fill, Item, LineKind, Point, Scene } from '#drafting/scene.ts'
import { type Medium, styleFor } from '#drafting/svg-style.ts'

/** From the middle of the figures down to their base line, as a share of the size: half the height of a capital. */
const toBaseline = 0.345

/**
 * A scene as SVG text, its sizes in millimetres.
 *
 * On screen the colours are the page's (`--ink --thin --rule --blue --blue-wash --red --red-wash --sheet`) and so is the face
 * of the letters; in print everything is black on white. Every text is escaped and loses its control characters.
 *
 * @param idPrefix  letters, digits, `-`, `_`; must differ between two drawings on one page
 * @throws RangeError for any other prefix
 */
export function svgFrom(scene: Scene, { medium, idPrefix = 'drawing' }: { readonly medium: Medium; readonly idPrefix?: string }): string {
  if (!/^[A-Za-z][\w-]*$/.test(idPrefix)) throw new RangeError(`a prefix of letters, digits, - and _, not ${idPrefix}`)
  const width = rounded(scene.widthMm), height = rounded(scene.heightMm)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="drawing drawing-${medium}" role="img" aria-labelledby="${idPrefix}-title ${idPrefix}-desc"`,
    ` width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title id="${idPrefix}-title">${escaped(scene.title)}</title><desc id="${idPrefix}-desc">${escaped(scene.description)}</desc>`,
    `<style>${styleFor(medium)}</style>`,
    `<defs>${hatch(`${idPrefix}-face`, 45, 'hatch')}${hatch(`${idPrefix}-face-back`, -45, 'hatch')}${hatch(`${idPrefix}-danger`, 45, 'cross')}</defs>\n`,
    ...scene.items.map((item) => `${painted(item, idPrefix)}\n`),
    '</svg>\n',
  ].join('')
}

/** A drawing to keep as a file of its own: on its own sheet, in a plain face; as on a light screen, or black only as in print. */
export function svgFile(scene: Scene, medium: Medium = 'screen'): string {
  const svg = svgFrom(scene, { medium })
  const sheet = `<rect class="d-fill-sheet" width="${rounded(scene.widthMm)}" height="${rounded(scene.heightMm)}"/>\n`
  const face = '<style>svg{font-family:"Atkinson Hyperlegible Next","Liberation Sans",Arial,"DejaVu Sans Condensed",sans-serif}</style>'
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg.replace('<defs>', () => `${face}<defs>`).replace('</defs>\n', () => `</defs>\n${sheet}`)}`
}

/** Text for between tags and in attributes: marks of the language escaped, control and direction characters dropped. */
export function escaped(text: string): string {
  return text
    // oxlint-disable-next-line no-control-regex -- they are what is dropped
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/g, '')
    .replace(/[\t\n\r]/g, ' ')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '')
    .replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;').replace(/'/g, '&#39;')
}

function painted(item: Item, prefix: string): string {
  switch (item.kind) {
    case 'line': return path([item.from, item.to], false, `d-line d-${item.line}`)
    case 'shape': {
      const under = item.fill === 'danger' ? path(item.points, item.closed, 'd-fill-wash') : ''
      return under + `<path ${drawn(item.line, item.fill, prefix)} d="${pathData(item.points, item.closed)}"/>`
    }
    case 'circle': {
      const [x, y] = item.centre
      return `<circle ${drawn(item.line, item.fill, prefix)} cx="${rounded(x)}" cy="${rounded(y)}" r="${rounded(item.radiusMm)}"/>`
    }
    case 'dimension': {
      const lines = [...dimensionLinesOf(item), ...arrowheadsOf(item)].map((points) => pathData(points, false)).join('')
      return `<path class="d-line d-${item.tone === 'danger' ? 'thin-danger' : 'thin'}" d="${lines}"/>`
    }
    case 'text': return text(item.at, item.text, item.sizeMm, item.anchor, `d-text${item.bold ? ' d-bold' : ''} d-tone-${item.tone}`, item.turnDeg)
  }
}

function text(at: Point, words: string, sizeMm: number, anchor: string, style: string, turnDeg: number): string {
  const [x, y] = at, down = sizeMm * toBaseline
  const place = turnDeg === 0 ? `x="${rounded(x)}" y="${rounded(y + down)}"` : `transform="translate(${rounded(x + down)} ${rounded(y)}) rotate(${-turnDeg})"`
  return `<text class="${style}" ${place} font-size="${rounded(sizeMm)}" text-anchor="${anchor}">${escaped(words)}</text>`
}

/** Class of the line, and the fill as a class or, for hatching, as this drawing's own pattern. */
function drawn(line: LineKind | 'none', fill: Fill, prefix: string): string {
  const outline = line === 'none' ? '' : `d-line d-${line}`
  switch (fill) {
    case 'cut-face': return `class="${outline}" style="fill:url(#${prefix}-face)"`
    case 'cut-face-back': return `class="${outline}" style="fill:url(#${prefix}-face-back)"`
    case 'danger': return `class="${outline}" style="fill:url(#${prefix}-danger)"`
    case 'ink': return `class="${`${outline} d-tone-ink`.trim()}"`
    case 'none': case 'sheet': case 'bar': case 'removal': return `class="${`${outline} d-fill-${fill}`.trim()}"`
  }
}

const path = (points: readonly Point[], closed: boolean, style: string): string => `<path class="${style}" d="${pathData(points, closed)}"/>`

const pathData = (points: readonly Point[], closed: boolean): string =>
  `M${points.map(([x, y]) => `${rounded(x)} ${rounded(y)}`).join('L')}${closed ? 'Z' : ''}`

const hatch = (id: string, turnDeg: number, style: string): string =>
  `<pattern id="${id}" width="2.2" height="2.2" patternUnits="userSpaceOnUse" patternTransform="rotate(${turnDeg})">` +
  `${style === 'hatch' ? '<rect class="d-fill-sheet" width="2.2" height="2.2"/>' : ''}<path class="d-${style}" d="M1.1 0V2.2"/></pattern>`

const rounded = (value: number): string => String(Math.round(value * 1000) / 1000 + 0)
