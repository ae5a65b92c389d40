import type { BarSize } from '#model/bar-size.ts'
import type { BlackBar } from '#model/black-bar.ts'
import type { Blank, CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { Making } from '#model/making.ts'
import type { MakingSteel } from '#model/making-steel.ts'
import type { Order } from '#model/order.ts'
import type { RouteKind } from '#model/route.ts'
import type { StockLength } from '#model/stock-length.ts'
import { blankOf } from '#engine/make/blanks/blank.ts'
import { cutListOf, type Wanted } from '#engine/make/blanks/cut-list.ts'
import { type Delivered, deliveredOf } from '#engine/make/blanks/delivered.ts'
import { rowFor, usualSaw } from '#engine/make/blanks/leave.ts'
import { conditionsFor } from '#engine/make/blanks/stock-fits.ts'

/** A stock length whose width becomes the height, and what it may be as delivered; null: no table says. */
export type Delivery = { readonly stock: StockLength; readonly delivered: Delivered | null }

/** `deliveries`: of what is only cut. */
export type Blanks = { readonly blanks: readonly Blank[]; readonly cuts: CutList; readonly steel: MakingSteel | null; readonly deliveries: readonly Delivery[]; readonly findings: readonly Finding[] }

export const isHardened = (route: RouteKind): boolean => route === 'hard milled' || route === 'ground'
export const isCutOnly = (route: RouteKind): boolean => route === 'as drawn' || route === 'as delivered'

/**
 * Blanks of an order by one route, and the stock they come out of. Bars that are hardened are all of one steel: of those there are the one
 * that leaves least undone, then the cheapest, then by name; null where there is none, sizes then as for oil and no change.
 */
export function blanksFor(order: Order, route: RouteKind, making: Making): Blanks {
  if (!isHardened(route)) return blanksOf(order, route, making, null)
  const canBe = making.steels.filter(({ name, hardening }) => hardening !== null && [...making.lengths, ...making.plates].some(({ steel, condition }) => steel === name && conditionsFor[route].includes(condition)))
  const tried = canBe.map((steel) => blanksOf(order, route, making, steel))
    .toSorted((a, b) => tooSoft(a, order) - tooSoft(b, order) || undone(a) - undone(b) || costly(a) - costly(b) || (a.steel!.name < b.steel!.name ? -1 : 1))
  return tried[0] ?? blanksOf(order, route, { ...making, lengths: [], plates: [] }, null)
}

const undone = ({ cuts }: Blanks): number => cuts.short.reduce((sum, { count }) => sum + count, 0)
/** Finite, so that two without a price are equal. */
const costly = ({ cuts }: Blanks): number => cuts.cost ?? Number.MAX_VALUE
const tooSoft = ({ steel }: Blanks, { hrc }: Order): number => Number(hrc !== null && hrc > steel!.hardening!.hrcTo)

/** Nothing known of the steel: it neither grows nor shrinks, and bends as in oil. */
const unknownHardening = { quench: 'oil', hrcFrom: 0, hrcTo: 0, growthFromPercent: 0, growthToPercent: 0 } as const

function blanksOf({ heightsMm, thicknessMm, lengthMm, each }: Order, route: RouteKind, making: Making, steel: MakingSteel | null): Blanks {
  const saw = making.machines.find(({ kind }) => kind === 'saw'), kerfMm = saw?.kerfMm ?? usualSaw.kerfMm, sawnFaceMm = saw?.sawnFaceMm ?? usualSaw.sawnFaceMm
  const faces = making.faces && !isCutOnly(route), hardening = isHardened(route) ? (steel?.hardening ?? unknownHardening) : null
  const sizesFrom = (finished: BarSize, form: 'length' | 'plate', black: BlackBar | 'no' | 'unknown') => {
    const leave = typeof black === 'string' ? making.leave : { ...making.leave, edgeMm: Math.max(making.leave.edgeMm, black.edgeMm), faceMm: Math.max(making.leave.faceMm, black.faceMm) }
    const blank = blankOf({ route, finished, count: each, form, faces: faces || black !== 'no', groundFaces: faces, sawnFaceMm, leave, hardening, allowances: making.allowances })
    return steel === null ? { ...blank, hardened: null } : blank
  }
  const wanted = heightsMm.map((heightMm): Wanted => {
    const known = new Map<string, Blank>()
    const blankFrom: Wanted['blankFrom'] = (stock, form) => {
      const black = stock === null || stock.condition !== 'rolled' ? 'no' : (blackBarFor(stock, making.blackBars) ?? 'unknown'), key = JSON.stringify([form, black])
      const blank = known.get(key) ?? sizesFrom({ heightMm, thicknessMm, lengthMm }, form, black)
      known.set(key, blank)
      return blank
    }
    return { heightMm, count: each, blankFrom }
  })
  const mayBe = ({ condition, steel: name }: Making['lengths'][number]) => conditionsFor[route].includes(condition) && (steel === null || name === steel.name)
  const lengths = making.lengths.filter(mayBe), { cuts, blanks } = cutListOf({ wanted, lengths, plates: making.plates.filter(mayBe), kerfMm, faces, isCutOnly: isCutOnly(route) })
  const unlisted = [...making.lengths, ...making.plates].filter((stock) => stock.condition === 'rolled' && cuts.takings.some(({ stockId }) => stockId === stock.id) && blackBarFor(stock, making.blackBars) === undefined)
  const deliveries = isCutOnly(route) ? deliveriesOf(lengths, cuts, making) : []
  const findings: Finding[] = deliveries.map(deliveryFinding)
  if (unlisted.length > 0) findings.push({ code: 'rolled-not-in-table', facts: { stock: unlisted.map(({ id }) => id) } })
  if (route === 'ground' && rowFor(making.allowances, lengthMm) === undefined) findings.push({ code: 'not-in-allowances', facts: { lengthMm } })
  return { blanks, cuts, steel, deliveries, findings }
}

/** The row for a rolled flat; undefined where no table has its section. */
const blackBarFor = ({ widthMm, thicknessMm }: Making['lengths'][number], blackBars: readonly BlackBar[]): BlackBar | undefined =>
  blackBars.find((row) => thicknessMm > row.overThicknessMm && thicknessMm <= row.toThicknessMm && widthMm > row.overWidthMm && widthMm <= row.toWidthMm)

function deliveriesOf(lengths: Making['lengths'], { takings }: CutList, { steels, stockLimits }: Making): readonly Delivery[] {
  const used = lengths.filter(({ id }) => takings.some(({ stockId }) => stockId === id))
  return used.map((stock) => ({ stock, delivered: deliveredOf(stock, 'width', steels.find(({ name }) => name === stock.steel), stockLimits) }))
}

/** The height as delivered may be so far off, and mates must come from one. */
function deliveryFinding({ stock, delivered }: Delivery): Finding {
  if (delivered === null) return { code: 'delivery-not-known', facts: { stock: stock.id, nominalMm: stock.widthMm } }
  const { lowMm, highMm, limit } = delivered
  return { code: 'mates-from-one', facts: { stock: stock.id, nominalMm: stock.widthMm, lowMm, highMm, apartUm: apartUm(delivered), grade: limit.grade, source: limit.source } }
}

/** What two of one delivery may differ by. */
export const apartUm = ({ limit }: Delivered): number => (limit.upperMm - limit.lowerMm) * 1000
