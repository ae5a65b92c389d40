import { mmPerInch, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { boxOf, letteringMm, lineOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** Heights that serve a setup in a vise, and how many setups ask for just these. */
export type StripWindow = { readonly lowMm: number; readonly highMm: number; readonly setups: number; readonly served: boolean }

export type StripVise = {
  readonly name: string
  readonly jawHeightMm: number
  /** What comes out, in words: `18 of 20 setups served`. */
  readonly says: string
  readonly windows: readonly StripWindow[]
  /** Where bars are missing, and how many setups one there would serve. */
  readonly gaps: readonly { readonly lowMm: number; readonly highMm: number; readonly setups: number }[]
  /** Heights of the rack. */
  readonly ownedMm: readonly number[]
}

export type CoverageStripData = {
  readonly title: string
  readonly description: string
  readonly vises: readonly StripVise[]
  /** What the lines mean: `served`, `not served`, `in the rack`, `missing`. */
  readonly words: { readonly served: string; readonly unserved: string; readonly owned: string; readonly missing: string; readonly more: (count: number) => string }
}

const leftMm = 3
const rightEdgeMm = 5
const laneMm = 2.6
const mostLanes = 7
const stripMm = 6
const headMm = 7
const nameRowMm = 4.8
const mostNameRows = 2

/**
 * For each vise a strip along its jaw height, from the bed at the left: above it the heights that work of each setup, in it the
 * bars of the rack, and where none stands that is asked for.
 */
export function coverageStrip(data: CoverageStripData, { widthMm, units }: { readonly widthMm: number; readonly units: Units }): Scene {
  const items: Item[] = [...legend(data, widthMm)]
  let y = legendRows(data, widthMm) * 5.5 + 2
  for (const vise of data.vises) {
    const topMm = Math.max(vise.jawHeightMm, ...vise.windows.map(({ highMm }) => highMm)), scale = (widthMm - leftMm - rightEdgeMm) / topMm
    const xOf = (mm: number): number => leftMm + mm * scale, lanes = lanesOf(vise.windows, 1.2 / scale), shown = lanes.slice(0, mostLanes), hidden = lanes.slice(mostLanes).flat().length
    items.push(
      textOf([leftMm, y + 3], shortened(vise.name, widthMm * 0.5, 4.4, true), { sizeMm: 4.4, bold: true }),
      textOf([widthMm - rightEdgeMm, y + 3], shortened(hidden === 0 ? vise.says : `${vise.says}; ${data.words.more(hidden)}`, widthMm * 0.46, letteringMm), { anchor: 'end', tone: 'thin' }),
    )
    const stripY = y + headMm + shown.length * laneMm + 1
    shown.forEach((lane, i) => items.push(...lane.map((window) => windowItem(window, xOf, stripY - 1 - (i + 1) * laneMm))))
    items.push(
      boxOf([leftMm, stripY], [xOf(vise.jawHeightMm), stripY + stripMm], 'outline', 'sheet'),
      ...vise.gaps.map(({ lowMm, highMm }) => boxOf([xOf(lowMm) - 0.3, stripY], [xOf(highMm) + 0.3, stripY + stripMm], 'danger', 'danger')),
      ...vise.ownedMm.filter((mm) => mm <= topMm).map((mm) => lineOf([xOf(mm), stripY - 0.6], [xOf(mm), stripY + stripMm + 0.6], 'bar')),
      ...ruler(topMm, xOf, stripY + stripMm + 0.6, units),
    )
    const named = gapNames(vise, xOf, stripY + stripMm + 10, widthMm, units)
    items.push(...named.items)
    y = stripY + stripMm + 10 + named.rows * nameRowMm
  }
  return { title: data.title, description: data.description, widthMm, heightMm: Math.max(1, y - 1), items, fields: [] }
}

const windowItem = ({ lowMm, highMm, served }: StripWindow, xOf: (mm: number) => number, y: number): Item =>
  boxOf([xOf(lowMm), y + 0.4], [Math.max(xOf(highMm), xOf(lowMm) + 0.8), y + laneMm - 0.5], served ? 'thin' : 'danger', served ? 'bar' : 'danger')

/** Windows one over the other in as few lanes as they need, the lowest first. */
function lanesOf(windows: readonly StripWindow[], apartMm: number): readonly (readonly StripWindow[])[] {
  const lanes: StripWindow[][] = []
  for (const window of windows.toSorted((a, b) => Number(a.served) - Number(b.served) || a.lowMm - b.lowMm)) {
    const lane = lanes.find((one) => one.every(({ lowMm, highMm }) => highMm + apartMm <= window.lowMm || window.highMm + apartMm <= lowMm))
    if (lane) lane.push(window)
    else lanes.push([window])
  }
  return lanes
}

/** Under the numbers each gap with how many setups it would serve, the most first, as far as two rows have room for them. */
function gapNames({ gaps }: StripVise, xOf: (mm: number) => number, y: number, widthMm: number, units: Units): { readonly items: readonly Item[]; readonly rows: number } {
  const rows: { readonly from: number; readonly to: number }[][] = []
  const items = gaps.toSorted((a, b) => b.setups - a.setups).flatMap(({ lowMm, highMm, setups }): readonly Item[] => {
    const range = lowMm === highMm ? wordLength(lowMm, units) : `${wordLength(lowMm, units)} to ${wordLength(highMm, units)}`, label = `${range}: ${setups}`, half = textWidthMm(label, letteringMm, true) / 2
    const middle = Math.max(leftMm + half, Math.min(widthMm - 2 - half, (xOf(lowMm) + xOf(highMm)) / 2)), own = { from: middle - half - 1.5, to: middle + half + 1.5 }
    let row = rows.findIndex((placed) => placed.every(({ from, to }) => own.to <= from || own.from >= to))
    if (row < 0) row = rows.length
    if (row >= mostNameRows) return []
    if (row === rows.length) rows.push([])
    rows[row]!.push(own)
    return [textOf([middle, y + row * nameRowMm], label, { anchor: 'middle', bold: true, tone: 'danger' })]
  })
  return { items, rows: rows.length }
}

/** Numbers from the bed up, 10 mm or half an inch apart, or as many times that as there is room for. */
function ruler(topMm: number, xOf: (mm: number) => number, y: number, units: Units): readonly Item[] {
  const least = units.length === 'mm' ? 10 : mmPerInch / 2, perMm = xOf(1) - xOf(0)
  const stepMm = [1, 2, 5, 10, 20].map((times) => times * least).find((mm) => mm * perMm >= 12) ?? 50 * least
  return Array.from({ length: Math.floor(topMm / stepMm + 1e-9) + 1 }, (_, i) => i * stepMm).flatMap((mm): readonly Item[] => [
    lineOf([xOf(mm), y], [xOf(mm), y + 1.6], 'thin'), textOf([xOf(mm), y + 4.4], wordLength(mm, units), { anchor: mm === 0 ? 'start' : 'middle', tone: 'thin' }),
  ])
}

function entriesOf({ words }: CoverageStripData, widthMm: number) {
  let x = leftMm, row = 0
  return (['served', 'unserved', 'owned', 'missing'] as const).map((kind) => {
    const wideMm = textWidthMm(words[kind], letteringMm) + 12
    if (x > leftMm && x + wideMm > widthMm) { x = leftMm; row += 1 }
    x += wideMm
    return { kind, x: x - wideMm, y: row * 5.5 + 2.8, row }
  })
}

const legendRows = (data: CoverageStripData, widthMm: number): number => Math.max(...entriesOf(data, widthMm).map(({ row }) => row)) + 1

function legend(data: CoverageStripData, widthMm: number): readonly Item[] {
  return entriesOf(data, widthMm).flatMap(({ kind, x, y }): readonly Item[] => [sampleOf(kind, x, y), textOf([x + 7.5, y], data.words[kind], { tone: 'thin' })])
}

function sampleOf(kind: 'served' | 'unserved' | 'owned' | 'missing', x: number, y: number): Item {
  switch (kind) {
    case 'served': return boxOf([x, y - 0.9], [x + 6, y + 0.9], 'thin', 'bar')
    case 'unserved': return boxOf([x, y - 0.9], [x + 6, y + 0.9], 'danger', 'danger')
    case 'owned': return lineOf([x + 3, y - 2.2], [x + 3, y + 2.2], 'bar')
    case 'missing': return boxOf([x, y - 2.2], [x + 6, y + 2.2], 'danger', 'danger')
  }
}
