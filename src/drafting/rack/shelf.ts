import { mmPerInch, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { boxOf, letteringMm, lineOf, moved, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import type { FieldSpot, Item, Scene } from '#drafting/scene.ts'

/** Bars that stand together: mates, or one odd bar. */
export type ShelfGroup = {
  readonly id: string
  readonly heightMm: number
  /** Of each bar, as they stand on edge side by side. */
  readonly thicknessesMm: readonly number[]
  /** Name of the slot; empty: none. */
  readonly slot: string
  /** Not in the slot now: drawn as an empty outline. */
  readonly away: boolean
}

export type ShelfData = {
  readonly title: string
  readonly description: string
  readonly groups: readonly ShelfGroup[]
  /** Heights that the rack should have and has not; each is a gap among the others. */
  readonly missingMm: readonly number[]
}

type Stand = { readonly group: ShelfGroup | null; readonly heightMm: number; readonly widthMm: number }

/** From the edge of the paper to the end of a ruler's numbers, and on to the first bar. */
const ticksMm = 4.2
const apartMm = 2
const headMm = 6
const footMm = 6.5
const betweenMm = 3
/** The highest bar is drawn about so high, and never larger than life. */
const highestMm = 55
const columnMostMm = 24

/**
 * All bars on edge to one scale, lowest first, on as many shelves as the paper is wide for, each with a ruler at its side and
 * its lines across. Above a bar its height, below it its slot; a missing height is a gap in dashes. Every group has a field
 * with its id.
 */
export function shelfDrawing(data: ShelfData, { widthMm, units }: { readonly widthMm: number; readonly units: Units }): Scene & { readonly scale: number } {
  const tallest = Math.max(1, ...data.groups.map(({ heightMm }) => heightMm), ...data.missingMm)
  const scale = Math.min(1, highestMm / tallest)
  const stands = [
    ...data.groups.map((group) => ({ group, heightMm: group.heightMm })),
    ...data.missingMm.map((heightMm) => ({ group: null, heightMm })),
  ].toSorted((a, b) => a.heightMm - b.heightMm).map((stand): Stand => ({ ...stand, widthMm: columnMm(stand, scale, units) }))
  const rulerMm = textWidthMm(longestNumber(tallest, scale, units), letteringMm) + ticksMm
  const items: Item[] = [], fields: FieldSpot[] = []
  let y = 0
  for (const shelf of shelvesOf(stands, widthMm - rulerMm)) {
    const drawn = shelfItems(shelf, rulerMm, widthMm, scale, units)
    items.push(...drawn.items.map((item) => moved(item, 0, y)))
    fields.push(...drawn.fields.map((field) => ({ ...field, at: [field.at[0], field.at[1] + y] as const })))
    y += drawn.heightMm + betweenMm
  }
  return { title: data.title, description: data.description, widthMm, heightMm: Math.max(1, y - betweenMm), items, fields, scale }
}

function columnMm({ group, heightMm }: Pick<Stand, 'group' | 'heightMm'>, scale: number, units: Units): number {
  const bars = (group?.thicknessesMm.reduce((sum, mm) => sum + mm, 0) ?? 0) * scale
  const lettering = Math.max(textWidthMm(wordLength(heightMm, units), letteringMm, true), textWidthMm(group?.slot ?? '', letteringMm))
  return Math.max(bars, Math.min(columnMostMm, lettering)) + apartMm
}

function shelvesOf(stands: readonly Stand[], roomMm: number): readonly (readonly Stand[])[] {
  const shelves: Stand[][] = []
  let used = Infinity
  for (const stand of stands) {
    if (used + stand.widthMm > roomMm) { shelves.push([]); used = 0 }
    shelves.at(-1)!.push(stand)
    used += stand.widthMm
  }
  return shelves
}

function shelfItems(shelf: readonly Stand[], rulerMm: number, widthMm: number, scale: number, units: Units): { readonly items: readonly Item[]; readonly fields: readonly FieldSpot[]; readonly heightMm: number } {
  const upMm = Math.max(...shelf.map(({ heightMm }) => heightMm)) * scale, boardY = headMm + upMm, heightMm = boardY + footMm
  let x = rulerMm
  const columns = shelf.map((stand) => { x += stand.widthMm; return { stand, left: x - stand.widthMm } })
  return {
    heightMm,
    items: [
      ...ruler(upMm, boardY, rulerMm, widthMm, scale, units),
      ...columns.flatMap(({ stand, left }) => standItems(stand, left, boardY, scale, units)),
      lineOf([0, boardY], [widthMm, boardY], 'outline'),
    ],
    fields: columns.flatMap(({ stand: { group, widthMm: wide }, left }): readonly FieldSpot[] =>
      (group ? [{ name: group.id, at: [left + wide / 2, heightMm / 2], widthMm: wide, heightMm }] : [])),
  }
}

/** 10 mm or half an inch, or as many times that as puts the lines 3 mm apart. */
function stepOf({ length }: Units, scale: number): number {
  const least = length === 'mm' ? 10 : mmPerInch / 2
  let times = 1
  while (least * times * scale < 3) times *= times.toString().startsWith('2') ? 2.5 : 2
  return least * times
}

function longestNumber(tallestMm: number, scale: number, units: Units): string {
  const stepMm = stepOf(units, scale)
  const steps = Array.from({ length: Math.floor(tallestMm / stepMm) + 1 }, (_, i) => wordLength(i * stepMm, units))
  return steps.toSorted((a, b) => b.length - a.length)[0]!
}

/** Ticks with a line across the shelf, numbered as far as the numbers stand apart. */
function ruler(upMm: number, boardY: number, rulerMm: number, widthMm: number, scale: number, units: Units): readonly Item[] {
  const stepMm = stepOf(units, scale)
  const each = Math.max(1, Math.ceil(5 / (stepMm * scale)))
  return Array.from({ length: Math.floor(upMm / (stepMm * scale) + 1e-6) }, (_, i) => i + 1).flatMap((step): readonly Item[] => {
    const y = boardY - step * stepMm * scale
    return [
      lineOf([rulerMm - 2, y], [widthMm, y], 'rule'), lineOf([rulerMm - 3.5, y], [rulerMm - 1, y], 'thin'),
      ...(step % each === 0 ? [textOf([rulerMm - ticksMm, y], wordLength(step * stepMm, units), { anchor: 'end', tone: 'thin' })] : []),
    ]
  })
}

function standItems({ group, heightMm, widthMm }: Stand, left: number, boardY: number, scale: number, units: Units): readonly Item[] {
  const middle = left + widthMm / 2, topY = boardY - heightMm * scale, room = widthMm - apartMm / 2
  const height = (tone: 'ink' | 'thin') => textOf([middle, topY - 3], shortened(wordLength(heightMm, units), room, letteringMm, true), { anchor: 'middle', bold: true, tone })
  if (group === null) return [height('thin'), boxOf([middle - 2, topY], [middle + 2, boardY], 'hidden', 'none')]
  const wide = group.thicknessesMm.reduce((sum, mm) => sum + mm, 0) * scale
  let x = middle - wide / 2
  return [
    height('ink'),
    ...group.thicknessesMm.map((mm) => {
      x += mm * scale
      return boxOf([x - mm * scale, topY], [x, boardY], group.away ? 'thin' : 'bar', group.away ? 'sheet' : 'bar')
    }),
    ...(group.slot === '' ? [] : [textOf([middle, boardY + 3.4], shortened(group.slot, room, letteringMm), { anchor: 'middle' })]),
  ]
}
