import type { Blank } from '#model/blank.ts'
import type { RouteKind } from '#model/route.ts'
import type { Condition, StockLengthFields } from '#model/stock-length.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The conditions in which steel may come for a route. */
export const conditionsFor: { readonly [route in RouteKind]: readonly Condition[] } = {
  'as drawn': ['drawn'],
  'as delivered': ['ground flat', 'prehardened ground'],
  'milled': ['drawn', 'rolled', 'annealed', 'ground flat'],
  'rubbed': ['drawn', 'rolled', 'annealed', 'ground flat'],
  'milled prehardened': ['prehardened', 'prehardened ground'],
  'hard milled': ['drawn', 'rolled', 'annealed', 'ground flat'],
  'ground': ['drawn', 'rolled', 'annealed', 'ground flat'],
  'bought': [],
}

/** mm. Wider or thicker by no more than this is milled away; beyond it the stock is for something else. Common practice, no source. */
const mostMilledAwayMm = 3

/** mm. A face that is not worked is as thick as it comes: up to so far off what was asked. Common practice, no source. */
const thicknessAsItComesMm = 0.25

/** Whether faces that are not worked come out as asked, or worked ones clean up. */
export function isThickEnough({ sawn }: Blank, faces: boolean, thicknessMm: number): boolean {
  const overMm = thicknessMm - sawn.thicknessMm
  return faces ? overMm >= -touchMm && overMm <= mostMilledAwayMm : Math.abs(overMm) <= thicknessAsItComesMm + touchMm
}

/** Whether a stock length has the width for a blank as it is: the very height where it is only cut, a little more where edges are milled. */
export function isOfWidth({ sawn, heightMm }: Blank, isCutOnly: boolean, { widthMm }: Pick<StockLengthFields, 'widthMm'>): boolean {
  const overMm = widthMm - sawn.heightMm
  return isCutOnly ? Math.abs(widthMm - heightMm) <= touchMm : overMm >= -touchMm && overMm <= mostMilledAwayMm + touchMm
}
