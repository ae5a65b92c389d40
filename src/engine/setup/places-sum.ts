import type { Places } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import type { PlacesCase } from '#engine/setup/read-question.ts'

const rules = ['SETUP-RULES'], geometry = ['GEOMETRY', 'SETUP-RULES']

/** How the places and the base of a `places` answer came about: where each bar was wanted, how far it had to move, what it keeps off. */
export function sumOfPlaces({ part, holes, bars, wishes }: PlacesCase, { places, base }: Places): readonly Sum[] {
  const sum = (formula: string, name: string, value: number, inputs: Sum['inputs'], sources = rules): Sum =>
    ({ formula, result: { name, value }, inputs, sources })
  const { betweenJawsMm, alongJawsMm } = part
  const widthMm = bars.reduce((total, bar) => total + bar.acrossMm, (bars.length - 1) * wishes.gapMm)
  return [
    sum('needed-across', 'neededMm', widthMm, { thicknessMm: bars[0]!.acrossMm, secondThicknessMm: bars[1]?.acrossMm ?? null, gapMm: wishes.gapMm, betweenJawsMm }),
    ...holes.flatMap((hole, k) => hole.kind === 'hole' && hole.through
      ? [sum('keep-out-hole', `holes[${k}].keepOutMm`, hole.diameterMm / 2 + wishes.holeAirMm, { diameterMm: hole.diameterMm, holeAirMm: wishes.holeAirMm }, geometry)] : []),
    ...places.flatMap(({ xMm, yMm }, k) => {
      const { acrossMm: thicknessMm, lengthMm } = bars[k]!
      const wantedYMm = places.length === 1 ? ((betweenJawsMm ?? 0) - thicknessMm) / 2 : k === 0 ? 0 : (betweenJawsMm ?? 0) - thicknessMm
      const wantedXMm = alongJawsMm === null ? 0 : (alongJawsMm - lengthMm) / 2
      return [
        sum('place-across', `places[${k}].yMm`, yMm, { wantedYMm, movedMm: yMm - wantedYMm, betweenJawsMm, thicknessMm }, geometry),
        sum('place-along', `places[${k}].xMm`, xMm, { wantedXMm, movedMm: xMm - wantedXMm, alongJawsMm, lengthMm }, geometry),
      ]
    }),
    ...(base === null ? [] : [
      sum('base-along', 'base.x0Mm', base.x0Mm, { leastXMm: Math.min(...places.map((place) => place.xMm)) }, geometry),
      sum('base-along', 'base.x1Mm', base.x1Mm, { mostXMm: Math.max(...places.map((place, k) => place.xMm + bars[k]!.lengthMm)), alongJawsMm }, geometry),
      sum('base-across', 'base.y0Mm', base.y0Mm, { leastYMm: Math.min(...places.map((place) => place.yMm)) }, geometry),
      sum('base-across', 'base.y1Mm', base.y1Mm, { mostYMm: Math.max(...places.map((place, k) => place.yMm + bars[k]!.acrossMm)), betweenJawsMm }, geometry),
    ]),
  ]
}
