export type Medium = 'screen' | 'print'

/** Widths of lines in mm. On screen 2.2 px and 1 px of 96 to the inch. @source ISO-128 (thick to thin 2 : 1) */
const widths = { screen: { thick: 0.582, thin: 0.265, bar: 0.582, removal: 0.4 }, print: { thick: 0.5, thin: 0.25, bar: 0.9, removal: 0.35 } }

const dashes = 'stroke-dasharray:2.4 1.2', chain = 'stroke-dasharray:5 1 .8 1'

/** Colours of the page where it has them, the light ones where the drawing stands alone. */
const inks = {
  screen: {
    ink: 'var(--ink,#1d2326)', thin: 'var(--thin,#5d676d)', rule: 'var(--rule,#c9c5b8)', sheet: 'var(--sheet,#fdfcf8)',
    blue: 'var(--blue,#1f4aa8)', blueWash: 'var(--blue-wash,#e3eaf8)', red: 'var(--red,#a3341a)', redWash: 'var(--red-wash,#f7e4de)',
  },
  print: { ink: '#000', thin: '#000', rule: '#000', sheet: '#fff', blue: '#000', blueWash: '#fff', red: '#000', redWash: 'none' },
}

/** The style block of a drawing; its rules reach only into drawings of the same medium. */
export function styleFor(medium: Medium): string {
  const { ink, thin, rule, sheet, blue, blueWash, red, redWash } = inks[medium], width = widths[medium]
  const rules: { readonly [name: string]: string } = {
    'line': 'fill:none;stroke-linecap:round;stroke-linejoin:round',
    'outline': `stroke:${ink};stroke-width:${width.thick}`,
    'thin': `stroke:${thin};stroke-width:${width.thin}`,
    'centre': `stroke:${thin};stroke-width:${width.thin};stroke-linecap:butt;${chain}`,
    'hidden': `stroke:${thin};stroke-width:${width.thin * 1.2};stroke-linecap:butt;${dashes}`,
    'removal': `stroke:${red};stroke-width:${width.removal};stroke-linecap:butt;${dashes}`,
    'bar': `stroke:${blue};stroke-width:${width.bar}`,
    'danger': `stroke:${red};stroke-width:${width.bar}`,
    'rule': `stroke:${rule};stroke-width:${width.thin}`,
    'hatch': `stroke:${medium === 'print' ? ink : rule};stroke-width:${medium === 'print' ? 0.18 : 0.3}`,
    'cross': `stroke:${red};stroke-width:${medium === 'print' ? 0.25 : 0.2}`,
    'thin-danger': `stroke:${red};stroke-width:${width.thin}`,
    'fill-none': 'fill:none', 'fill-sheet': `fill:${sheet}`, 'fill-bar': `fill:${blueWash}`, 'fill-removal': `fill:${redWash}`,
    'fill-wash': `fill:${redWash}`,
    'text': 'font-variant-numeric:tabular-nums;stroke:none',
    'bold': 'font-weight:700',
    'tone-ink': `fill:${ink}`, 'tone-thin': `fill:${thin}`, 'tone-bar': `fill:${blue}`, 'tone-danger': `fill:${red}`,
  }
  return Object.entries(rules).map(([name, css]) => `.drawing-${medium} .d-${name}{${css}}`).join('')
}
