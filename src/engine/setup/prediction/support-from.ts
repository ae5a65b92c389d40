import type { Bar } from '#model/bar.ts'
import type { PredictionAsked } from '#engine/setup/prediction/asked.ts'
import type { BarUnder, Figure, Support } from '#engine/setup/seat/support.ts'

const notKnown: Figure = { value: 0, u: 0 }

/**
 * The bars as they stand in the vise, with what is known of both. What is not known comes as level and without uncertainty;
 * `notKnown` names it.
 *
 * The marked end is taken to be the left one, as the sheet says; the part is pressed in its middle.
 *
 * @param asked  of which `notForetold` says nothing
 */
export function supportFrom({ part, choice, bars, vise, side }: PredictionAsked): Support {
  const lengthMm = part.alongJawsMm!, widthMm = part.betweenJawsMm!, { bed, jawSlope, jawLift } = vise ?? { bed: null, jawSlope: null, jawLift: null }
  return {
    part: { lengthMm, widthMm, loadMm: [lengthMm / 2, widthMm / 2] },
    bars: bars.map((bar, at): BarUnder => ({
      id: bar.id, ...choice.places[at]!, heightMm: bar.heightMm, thicknessMm: bar.thicknessMm, lengthMm: bar.lengthMm, turned: false,
      heightsUm: bar.heightsUm ?? [], uUm: ownUUm(bar, bars), stationUUm: bar.stationUUm ?? 0,
    })),
    side,
    bedUm: bed?.readings.map(({ xMm, yMm, um }) => [xMm, yMm, um] as const) ?? [], bedUUm: bed?.uUm ?? 0,
    jawSlopeUmPerMm: jawSlope === null ? notKnown : { value: jawSlope.umPerMm, u: jawSlope.uUmPerMm },
    squarenessUmPerMm: notKnown,
    liftUm: jawLift === null ? notKnown : { value: jawLift.um, u: jawLift.uUm },
  }
}

/** What bars of one check share (plate, zero, block, temperature) lifts the part as a whole and tilts nothing. */
function ownUUm({ known }: Bar, bars: readonly Bar[]): number {
  return known === undefined ? 0 : bars.every((other) => other.known?.check === known.check) ? known.uAloneUm : known.uUm
}
