import { uses, type Use, type Wishes } from '#model/wishes.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'

/** Where nobody wishes otherwise. Common practice, no source. @source SETUP-RULES */
export const commonWishes = {
  gripMm: 10, airMm: 1, holeAirMm: 0.5, bedAirMm: 1, gapMm: 2, gripLineMm: 2, carryMm: 10,
  stickOutPerGrip: 3, stickOutPerThickness: 2, stackRatio: 3, toleranceUm: null, use: 'milling',
} as const satisfies Omit<Wishes, 'matchUm'>

/** µm. How far two bars may differ for a use. Common practice, no source. @source SETUP-RULES */
export const commonMatchUm: { readonly [use in Use]: number } = { drilling: 25, milling: 10, 'fine milling': 5, grinding: 2 }

/** All wishes may be left out; the match left out comes from the use. */
export function readWishes(raw: RawObject): Wishes {
  const use = raw.wordOr('use', uses, commonWishes.use)
  const wish = (key: Exclude<keyof typeof commonWishes, 'gripMm' | 'toleranceUm' | 'use'>) => raw.numberOr(key, commonWishes[key])
  return {
    gripMm: raw.numberOrWord('gripMm', 'auto', commonWishes.gripMm),
    airMm: wish('airMm'), holeAirMm: wish('holeAirMm'), bedAirMm: wish('bedAirMm'), gapMm: wish('gapMm'),
    gripLineMm: wish('gripLineMm'), carryMm: wish('carryMm'),
    stickOutPerGrip: wish('stickOutPerGrip'), stickOutPerThickness: wish('stickOutPerThickness'), stackRatio: wish('stackRatio'),
    toleranceUm: raw.numberOr('toleranceUm', commonWishes.toleranceUm, 1000 * longestMm),
    use,
    matchUm: raw.numberOr('matchUm', commonMatchUm[use], 1000 * longestMm),
  }
}

export const defaultWishes: Wishes = { ...commonWishes, matchUm: commonMatchUm[commonWishes.use] }
