import type { SetupOfShop, ViseOfShop } from '#engine/rack/coverage/coverage-question.ts'
import { defaultWishes } from '#engine/setup/read-wishes.ts'
import type { ShopFields } from '#model/shop-record.ts'

/** mm. Blocks as they come to a bench vise, low ones more often than high. Common practice, no source. */
const heightsMm = [8, 10, 12, 15, 20, 25, 30, 40, 50], widthsMm = [20, 40], offTopMm = 1

/** Blocks faced on top, in every vise that they go into: what a shop is likely to set up before it has written anything down. */
export function typicalMix(vises: readonly ViseOfShop[], { limitsUm }: Pick<ShopFields, 'limitsUm'>): readonly SetupOfShop[] {
  return vises.flatMap(({ id, openingMm }) => heightsMm.flatMap((heightMm) => widthsMm.filter((betweenJawsMm) => betweenJawsMm <= openingMm).map((betweenJawsMm): SetupOfShop => ({
    viseId: id, times: 1,
    asked: {
      part: { shape: 'block', betweenJawsMm, alongJawsMm: 60, heightMm, hollows: [] },
      cuts: [{ kind: 'face', depthMm: offTopMm, overJaw: true, runThroughMm: 0.5 }], wishes: { ...defaultWishes, gripMm: 'auto', matchUm: limitsUm.milling },
    },
  }))))
}
