import type { CoverageQuestion, SetupOfShop, ViseOfShop } from '#engine/rack/coverage/coverage-question.ts'
import { commonMatchUm, commonWishes } from '#engine/setup/read-wishes.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { windowOf } from '#engine/setup/window.ts'

/** What of a part and its wishes decides which bars go under it; `acrossMm` null: not known. */
export type Room = {
  readonly acrossMm: number | null
  readonly gapMm: number
  readonly round: boolean
  readonly matchUm: number
  readonly drilling: boolean
  readonly stackRatio: number
}

/** Heights that serve a setup in one vise, both by their places in the question; `vise` null: the heights were given. */
export type Want = { readonly setup: number; readonly vise: number | null; readonly lowMm: number; readonly highMm: number; readonly room: Room }

/** Why a setup has no heights in a vise. */
export type NoWant = 'only-above-advice' | 'no-height-serves' | 'wider-than-vises'

/** What a setup asks for in each vise it is for. */
export function wantsOf({ vises, advisedOnly }: CoverageQuestion, { viseId, asked }: SetupOfShop, setup: number): readonly (Want | NoWant)[] {
  if ('lowMm' in asked) return [asked.lowMm > asked.highMm + touchMm ? 'no-height-serves' : { setup, vise: null, lowMm: asked.lowMm, highMm: Math.max(asked.lowMm, asked.highMm), room: openRoom }]
  const { part, wishes } = asked, wants: (Want | NoWant)[] = []
  const room: Room = {
    acrossMm: part.betweenJawsMm, gapMm: wishes.gapMm, round: part.shape === 'round',
    matchUm: wishes.matchUm, drilling: wishes.use === 'drilling', stackRatio: wishes.stackRatio,
  }
  for (let k = 0; k < vises.length; k += 1) {
    if (viseId === null || viseId === vises[k]!.id) wants.push(wantIn(vises[k]!, k))
  }
  return wants

  function wantIn(vise: ViseOfShop, k: number): Want | NoWant {
    if (part.betweenJawsMm !== null && part.betweenJawsMm > vise.openingMm + touchMm) return 'wider-than-vises'
    const { lowMm, highMm, advisedHighMm } = windowOf({ vise, ...(asked as Exclude<typeof asked, { lowMm: number }>) })
    if (lowMm > highMm + touchMm) return 'no-height-serves'
    const toMm = advisedOnly ? advisedHighMm : highMm
    return lowMm > toMm + touchMm ? 'only-above-advice' : { setup, vise: k, lowMm, highMm: Math.max(lowMm, toMm), room }
  }
}

/** Nothing is known of the part. */
const openRoom: Room = { acrossMm: null, gapMm: commonWishes.gapMm, round: false, matchUm: commonMatchUm.milling, drilling: false, stackRatio: commonWishes.stackRatio }

/** Whether new bars, so thick (null: thin enough), would carry the part: two beside each other, or one alone where two do not go under. */
export function goesUnder({ acrossMm, gapMm, round }: Room, ways: CoverageQuestion['ways'], thicknessMm: number | null): boolean {
  const fits = (neededMm: number) => acrossMm === null || neededMm <= acrossMm + touchMm
  const two = !round && (thicknessMm === null || fits(2 * thicknessMm + gapMm))
  const one = !two && acrossMm !== null && fits(thicknessMm ?? 0)
  return (two && ways.includes('on edge')) || (one && ways.includes('single'))
}
