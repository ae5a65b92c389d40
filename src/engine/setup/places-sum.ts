import type { Places } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import { wantedYMm } from '#engine/setup/places.ts'
import type { PlacesCase } from '#engine/setup/read-question.ts'
import { geometrySources, rulesSources } from '#engine/setup/sum-sources.ts'

/** How the places and the base of a `places` answer came about: where each bar was wanted, how far it had to move, what it keeps off. */
export function sumOfPlaces({ part, holes, bars, wishes }: PlacesCase, { places, base }: Places): readonly Sum[] {
  const { betweenJawsMm, alongJawsMm } = part, [first, second] = bars
  const neededMm = bars.reduce((total, bar) => total + bar.acrossMm, (bars.length - 1) * wishes.gapMm)
  return [
    sum('needed-across', 'neededMm', neededMm, { thicknessMm: first?.acrossMm ?? null, secondThicknessMm: second?.acrossMm ?? null, gapMm: wishes.gapMm, betweenJawsMm }, rulesSources),
    ...holes.flatMap((hole, k) => (hole.kind === 'hole' && hole.through
      ? [sum('keep-out-hole', `holes[${k}].keepOutMm`, hole.diameterMm / 2 + wishes.holeAirMm, { diameterMm: hole.diameterMm, holeAirMm: wishes.holeAirMm })] : [])),
    ...(betweenJawsMm === null ? [] : places.flatMap(({ xMm, yMm }, k) => {
      const { acrossMm: thicknessMm, lengthMm } = bars[k]!
      const wantedMm = { x: alongJawsMm === null ? 0 : (alongJawsMm - lengthMm) / 2, y: wantedYMm(betweenJawsMm, places.length, k, bars[k]!) }
      return [
        sum('place-across', `places[${k}].yMm`, yMm, { wantedYMm: wantedMm.y, movedMm: yMm - wantedMm.y, betweenJawsMm, thicknessMm }),
        sum('place-along', `places[${k}].xMm`, xMm, { wantedXMm: wantedMm.x, movedMm: xMm - wantedMm.x, alongJawsMm, lengthMm }),
      ]
    })),
    ...(base === null ? [] : [
      sum('base-along', 'base.x0Mm', base.x0Mm, { leastXMm: Math.min(...places.map((place) => place.xMm)) }),
      sum('base-along', 'base.x1Mm', base.x1Mm, { mostXMm: Math.max(...places.map((place, k) => place.xMm + bars[k]!.lengthMm)), alongJawsMm }),
      sum('base-across', 'base.y0Mm', base.y0Mm, { leastYMm: Math.min(...places.map((place) => place.yMm)) }),
      sum('base-across', 'base.y1Mm', base.y1Mm, { mostYMm: Math.max(...places.map((place, k) => place.yMm + bars[k]!.acrossMm)), betweenJawsMm }),
    ]),
  ]
}

const sum = (formula: string, name: string, value: number, inputs: Sum['inputs'], sources: readonly string[] = geometrySources): Sum =>
  ({ formula, result: { name, value }, inputs, sources })
