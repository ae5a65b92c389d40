/** The wheel and how the table runs under it. Null: not told, so not reckoned with. */
export type Wheel = {
  readonly widthMm: number
  /** For each stroke of the table. */
  readonly crossfeedMm: number
  readonly tableMPerMin: number
  /** Past the work at either end. */
  readonly overrunMm: number
  readonly gapMm: number
  readonly diameterMm: number | null
  readonly rpm: number | null
  readonly markedRpm: number | null
}

/** Minutes for once over the work: (W + w) / crossfeed strokes of L + 2 × overrun. @source GEOMETRY */
export const sweepMin = (acrossMm: number, lengthMm: number, { widthMm, crossfeedMm, tableMPerMin, overrunMm }: Wheel): number =>
  (((acrossMm + widthMm) / crossfeedMm) * (lengthMm + 2 * overrunMm)) / (1000 * tableMPerMin)

/** Speed of the rim in m/s. @source GEOMETRY */
export const rimMPerS = (diameterMm: number, rpm: number): number => (Math.PI * diameterMm * rpm) / 60_000
