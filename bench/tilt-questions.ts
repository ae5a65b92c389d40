import type { TiltQuestion } from '#engine/setup/tilt/tilt.ts'

/** 12 points on two bars. Invented. */
export const twoBars = (trials: number): TiltQuestion => barsAt(trials, [4, 56], [5, 31, 57, 83, 109, 135])
/** 12 points on three. Invented. */
export const threeBars = (trials: number): TiltQuestion => barsAt(trials, [4, 30, 56], [5, 48, 92, 135])

/** Ground bars, each with an error of its own and one at each station. Invented. */
function barsAt(trials: number, ys: readonly number[], xs: readonly number[]): TiltQuestion {
  const spots = ys.flatMap((yMm) => xs.map((xMm) => ({ xMm, yMm }))), ofBar = (b: number) => spots.map(({ yMm }) => (yMm === ys[b] ? 1 : 0))
  return {
    part: { lengthMm: 140, widthMm: 60, loadMm: [67, 28] }, spots, nominalUm: spots.map((_, i) => ((i * 7) % 5) / 4), jawSlopeUmPerMm: null, trials, seed: 1, toleranceUm: 5,
    sources: [
      ...ys.map((_, bar) => ({ by: { of: 'bar', bar } as const, spread: { dist: 'normal', sd: 0.8 } as const, onPoints: ofBar(bar), onSlope: 0, could: null })),
      ...spots.map(({ yMm }, i) => ({ by: { of: 'bar', bar: ys.indexOf(yMm) } as const, spread: { dist: 'normal', sd: 0.4 } as const, onPoints: spots.map((_, k) => Number(k === i)), onSlope: 0, could: null })),
    ],
  }
}
