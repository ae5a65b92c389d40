import type { SeatQuestion } from '#engine/setup/seat/seat.ts'

/**
 * The part of the load that each contact carries, in their order; null where more touch than statics settles.
 *
 * Free: three contacts, balanced in force and both moments. Held by the jaw: two, balanced along.
 */
export function sharesOf({ part: { loadMm: [x, y] }, points, jawSlopeUmPerMm }: SeatQuestion, contacts: readonly number[]): readonly number[] | null {
  const touching = contacts.map((i) => points[i]!)
  if (jawSlopeUmPerMm !== null) {
    const [p, q] = touching
    if (touching.length !== 2 || p === undefined || q === undefined) return null
    const share = (x - p.xMm) / (q.xMm - p.xMm)
    return [1 - share, share]
  }
  const [p, q, r] = touching
  if (touching.length !== 3 || p === undefined || q === undefined || r === undefined) return null
  const [qx, qy, rx, ry, lx, ly] = [q.xMm - p.xMm, q.yMm - p.yMm, r.xMm - p.xMm, r.yMm - p.yMm, x - p.xMm, y - p.yMm], area = qx * ry - qy * rx
  const second = (lx * ry - ly * rx) / area, third = (qx * ly - qy * lx) / area
  return [1 - second - third, second, third]
}
