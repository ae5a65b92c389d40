import { boxOf, letteringMm, lineOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { FieldSpot, Item, Point, Scene } from '#drafting/scene.ts'

export const stripPlaces = ['fixed-left', 'fixed-right', 'moving-left', 'moving-right'] as const
export type StripPlace = (typeof stripPlaces)[number]

/** How a strip was found; null: nobody has pulled it yet. */
export type StripFound = 'tight' | 'drags' | 'free' | null

/** The part from above with a strip of paper under each corner, worded. */
export type FourStripsData = {
  readonly title: string
  readonly description: string
  /** Sizes of the part; null where nobody gave them: it is drawn as large as the paper allows. */
  readonly betweenJawsMm: number | null
  readonly alongJawsMm: number | null
  readonly found: { readonly [place in StripPlace]: StripFound }
  /** Where to look first. */
  readonly marked: readonly StripPlace[]
  readonly fixedJaw: string
  readonly movingJaw: string
  readonly leftEnd: string
  readonly rightEnd: string
}

/** A box that a thumb finds: 72 px of a screen of 96 to the inch. */
const touchMm = 19.1
const spotMm = { widthMm: 25, heightMm: 21 }
const jawMm = 8
const stripWideMm = 11, stripOutMm = 13, stripInMm = 7
const apartMm = 2
/** The ends are named this far inside them, past the strips. */
const endWordMm = stripInMm + letteringMm

/**
 * As in the plan of the setup: fixed jaw to the left, the part's left end below. To scale as far as four thumbs have room;
 * the fields are the strips.
 */
export function fourStripsDrawing(data: FourStripsData, { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }): Scene {
  const roomWide = widthMm - 2 * jawMm - 4, roomHigh = heightMm - 2 * (stripOutMm + 1)
  const between = data.betweenJawsMm ?? roomWide, along = data.alongJawsMm ?? roomHigh, scale = Math.min(roomWide / between, roomHigh / along)
  const wide = Math.min(roomWide, Math.max(between * scale, 2 * spotMm.widthMm + apartMm)), high = Math.min(roomHigh, Math.max(along * scale, 2 * (touchMm - stripOutMm) + 16))
  const x0 = (widthMm - wide) / 2, x1 = x0 + wide, y0 = (heightMm - high) / 2, y1 = y0 + high
  const inset = spotMm.widthMm / 2
  const middleOf = (place: StripPlace): Point => [place.startsWith('fixed') ? x0 + inset : x1 - inset, place.endsWith('left') ? y1 : y0]
  const jaw = (from: number): Item => boxOf([from, y0 - 3], [from + jawMm, y1 + 3], 'outline', 'cut-face')
  const spots = stripPlaces.map((place): FieldSpot => {
    const [x, y] = middleOf(place), out = place.endsWith('left') ? 1 : -1
    return { name: place, at: [x, y + out * (stripOutMm - spotMm.heightMm / 2)], ...spotMm }
  })
  return {
    title: data.title, description: data.description, widthMm, heightMm, fields: spots,
    items: [
      jaw(x0 - jawMm), jaw(x1),
      boxOf([x0, y0], [x1, y1], 'outline', 'sheet'),
      lineOf([(x0 + x1) / 2, y0 - 3], [(x0 + x1) / 2, y1 + 3], 'centre'),
      ...stripPlaces.flatMap((place) => stripItems(middleOf(place), place.endsWith('left') ? 1 : -1, data.found[place], data.marked.includes(place))),
      ...words(data, { x0, x1, y0, y1 }),
    ],
  }
}

/** A strip sticking out past the end of the part: full line where it is held, danger where it comes out. */
function stripItems([x, y]: Point, out: 1 | -1, found: StripFound, marked: boolean): readonly Item[] {
  const half = stripWideMm / 2, end = y + out * stripOutMm, inside = y - out * stripInMm
  return [
    boxOf([x - half, y], [x + half, end], found === 'free' ? 'danger' : found === null ? 'thin' : 'outline', found === 'free' ? 'danger' : found === 'tight' ? 'bar' : 'sheet'),
    boxOf([x - half, inside], [x + half, y], 'hidden', 'none'),
    ...(found === 'free' ? [lineOf([x - half, inside], [x + half, end], 'danger')] : []),
    ...(marked ? [{ kind: 'circle', centre: [x, y - out * (stripInMm + 3.5)], radiusMm: 2.4, line: 'danger', fill: 'danger' } as const] : []),
  ]
}

type Corners = { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number }

function words({ fixedJaw, movingJaw, leftEnd, rightEnd }: FourStripsData, { x0, x1, y0, y1 }: Corners): readonly Item[] {
  const middle = (y0 + y1) / 2, x = (x0 + x1) / 2
  const onJaw = (at: number, text: string): readonly Item[] => {
    const half = textWidthMm(text, letteringMm, true) / 2 + 1
    return [boxOf([at - letteringMm * 0.8, middle - half], [at + letteringMm * 0.8, middle + half], 'none', 'sheet'), textOf([at, middle], text, { anchor: 'middle', turnDeg: 90, bold: true })]
  }
  const onSheet = (y: number, text: string): readonly Item[] => {
    const half = textWidthMm(text, letteringMm) / 2 + 1
    return [boxOf([x - half, y - letteringMm * 0.7], [x + half, y + letteringMm * 0.7], 'none', 'sheet'), textOf([x, y], text, { anchor: 'middle', tone: 'thin' })]
  }
  // between the ends, away from the strips
  return [...onJaw(x0 - jawMm / 2, fixedJaw), ...onJaw(x1 + jawMm / 2, movingJaw), ...onSheet(y1 - endWordMm, leftEnd), ...onSheet(y0 + endWordMm, rightEnd)]
}
