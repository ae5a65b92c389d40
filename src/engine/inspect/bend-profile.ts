/**
 * How far the centre line of a bar lies off the chord between its first and its last station, in µm, toward face A positive:
 * half of what the readings with A up stand above those with B up.
 *
 * @param stationsMm  at least two, rising, the same for both
 * @source REVERSAL
 */
export function bendProfile(stationsMm: readonly number[], faceAUpUm: readonly number[], faceBUpUm: readonly number[]): readonly number[] {
  const halves = stationsMm.map((_, i) => (faceAUpUm[i]! - faceBUpUm[i]!) / 2), last = halves.length - 1
  const perMm = (halves[last]! - halves[0]!) / (stationsMm[last]! - stationsMm[0]!)
  return halves.map((half, i) => half - halves[0]! - perMm * (stationsMm[i]! - stationsMm[0]!))
}
