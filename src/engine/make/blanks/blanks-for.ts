import type { Blank, CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { Making } from '#model/making.ts'
import type { MakingSteel } from '#model/making-steel.ts'
import type { Order } from '#model/order.ts'
import type { RouteKind } from '#model/route.ts'
import { blankOf } from '#engine/make/blanks/blank.ts'
import { cutListOf, type Wanted } from '#engine/make/blanks/cut-list.ts'
import { deliveredOf } from '#engine/make/blanks/delivered.ts'
import { rowFor, usualSaw } from '#engine/make/blanks/leave.ts'
import { conditionsFor } from '#engine/make/blanks/stock-fits.ts'

export type Blanks = { readonly blanks: readonly Blank[]; readonly cuts: CutList; readonly steel: MakingSteel | null; readonly findings: readonly Finding[] }

export const isHardened = (route: RouteKind): boolean => route === 'hard milled' || route === 'ground'
export const isCutOnly = (route: RouteKind): boolean => route === 'as drawn' || route === 'as delivered'

/**
 * Blanks of an order by one route, and the stock they come out of. Bars that are hardened are all of one steel: of those there are the one
 * that leaves least undone, then the cheapest, then by name; null where there is none, sizes then as for oil and no change.
 */
export function blanksFor(order: Order, route: RouteKind, making: Making): Blanks {
  if (!isHardened(route)) return blanksOf(order, route, making, null)
  const canBe = making.steels.filter(({ name, hardening }) => hardening !== null && [...making.lengths, ...making.plates].some(({ steel, condition }) => steel === name && conditionsFor[route].includes(condition)))
  const tried = canBe.map((steel) => blanksOf(order, route, making, steel)).toSorted((a, b) => Number(tooSoft(a, order)) - Number(tooSoft(b, order)) || undone(a) - undone(b) || (a.cuts.cost ?? Infinity) - (b.cuts.cost ?? Infinity) || (a.steel!.name < b.steel!.name ? -1 : 1))
  return tried[0] ?? blanksOf(order, route, { ...making, lengths: [], plates: [] }, null)
}

const undone = ({ cuts }: Blanks): number => cuts.short.reduce((sum, { count }) => sum + count, 0)
const tooSoft = ({ steel }: Blanks, { hrc }: Order): boolean => hrc !== null && hrc > steel!.hardening!.hrcTo

/** Nothing known of the steel: it neither grows nor shrinks, and bends as in oil. */
const unknownHardening = { quench: 'oil', hrcFrom: 0, hrcTo: 0, growthFromPercent: 0, growthToPercent: 0 } as const

function blanksOf({ heightsMm, thicknessMm, lengthMm, each }: Order, route: RouteKind, making: Making, steel: MakingSteel | null): Blanks {
  const saw = making.machines.find(({ kind }) => kind === 'saw'), kerfMm = saw?.kerfMm ?? usualSaw.kerfMm, sawnFaceMm = saw?.sawnFaceMm ?? usualSaw.sawnFaceMm
  const faces = making.faces && !isCutOnly(route), hardening = isHardened(route) ? (steel?.hardening ?? unknownHardening) : null
  const wanted = heightsMm.map((heightMm): Wanted => {
    const blank = (form: 'length' | 'plate') => blankOf({ route, finished: { heightMm, thicknessMm, lengthMm }, count: each, form, faces, sawnFaceMm, leave: making.leave, hardening, allowances: making.allowances })
    return { fromLength: blank('length'), fromPlate: blank('plate') }
  })
  const mayBe = ({ condition, steel: name }: Making['lengths'][number]) => conditionsFor[route].includes(condition) && (steel === null || name === steel.name)
  const lengths = making.lengths.filter(mayBe), cuts = cutListOf({ wanted, lengths, plates: making.plates.filter(mayBe), kerfMm, faces, isCutOnly: isCutOnly(route) })
  const fromLengths = new Map(cuts.takings.filter(({ form }) => form === 'length').map(({ heightMm }) => [heightMm, cuts.takings.reduce((sum, one) => (one.form === 'length' && one.heightMm === heightMm ? sum + one.count : sum), 0)]))
  const blanks = wanted.flatMap(({ fromLength, fromPlate }) => {
    const count = isCutOnly(route) ? each : (fromLengths.get(fromLength.heightMm) ?? 0)
    return [{ ...fromLength, count }, { ...fromPlate, count: each - count }].filter((blank) => blank.count > 0).map((blank) => (steel === null ? { ...blank, hardened: null } : blank))
  })
  return { blanks, cuts, steel, findings: [...findingsOf(route, lengths, cuts, making), ...(route === 'ground' && rowFor(making.allowances, lengthMm) === undefined ? [{ code: 'not-in-allowances', facts: { lengthMm } }] : [])] }
}

/** What the delivered sizes of stock lengths say: the height as drawn may be so far off, and mates must come from one. */
function findingsOf(route: RouteKind, lengths: Making['lengths'], { takings }: CutList, { steels, stockLimits }: Making): readonly Finding[] {
  if (!isCutOnly(route)) return []
  const used = lengths.filter(({ id }) => takings.some(({ stockId }) => stockId === id))
  return used.flatMap((stock) => {
    const delivered = deliveredOf(stock, 'width', steels.find(({ name }) => name === stock.steel), stockLimits)
    if (delivered === null) return [{ code: 'delivery-not-known', facts: { stock: stock.id, nominalMm: stock.widthMm } }]
    const { lowMm, highMm, limit } = delivered
    return [{ code: 'mates-from-one', facts: { stock: stock.id, nominalMm: stock.widthMm, lowMm, highMm, apartUm: (highMm - lowMm) * 1000, grade: limit.grade, source: limit.source } }]
  })
}
