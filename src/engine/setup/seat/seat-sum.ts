import type { Sum } from '#model/sum.ts'
import type { Seat, SeatQuestion, Tilt, WayToLie } from '#engine/setup/seat/seat.ts'

/** How the tilt, the height under the load and the rocking came about. */
export function seatSum({ part, jawSlopeUmPerMm }: SeatQuestion, seat: Seat): readonly Sum[] {
  if (seat.status === 'tips' || seat.status === 'collinear') return []
  const [xMm, yMm] = part.loadMm, way: WayToLie = seat.status === 'seated' ? seat : seat.facetsAtLoad[0]!
  const under: Sum = {
    formula: 'height-under-load', result: { name: 'heightUnderLoadUm', value: seat.heightUnderLoadUm },
    inputs: { aUm: way.plane.aUm, bUmPerMm: way.plane.bUmPerMm, xMm, cUmPerMm: way.plane.cUmPerMm, yMm }, sources: ['SEAT-MODEL'],
  }
  if (seat.status === 'seated') return [under, ...tiltSums(way, seat, part, jawSlopeUmPerMm)]
  if (seat.status === 'on-edge') return [under]
  return [under, { formula: 'rock-along', result: { name: 'rockAlongUm', value: seat.rockAlongUm }, inputs: { ways: seat.facetsAtLoad.length }, sources: ['SEAT-MODEL'] }]
}

function tiltSums({ plane }: WayToLie, tilt: Tilt, { lengthMm, widthMm }: SeatQuestion['part'], jawSlopeUmPerMm: number | null): readonly Sum[] {
  return [
    { formula: 'tilt-along', result: { name: 'tiltAlongUm', value: tilt.tiltAlongUm }, inputs: { bUmPerMm: plane.bUmPerMm, partLengthMm: lengthMm }, sources: ['SEAT-MODEL'] },
    { formula: jawSlopeUmPerMm === null ? 'tilt-across' : 'tilt-across-by-jaw', result: { name: 'tiltAcrossUm', value: tilt.tiltAcrossUm }, inputs: { cUmPerMm: plane.cUmPerMm, partWidthMm: widthMm }, sources: ['SEAT-MODEL'] },
  ]
}
