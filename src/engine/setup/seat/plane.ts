/** z = a + b x + c y over the plan. */
export type Plane = { readonly aUm: number; readonly bUmPerMm: number; readonly cUmPerMm: number }

/** A measured place that may carry the part. */
export type SupportPoint = { readonly xMm: number; readonly yMm: number; readonly zUm: number }

/** µm. A part this near to a point touches it; keeps rounding out of the contacts. */
export const touchUm = 1e-6

export const heightOf = ({ aUm, bUmPerMm, cUmPerMm }: Plane, xMm: number, yMm: number): number => aUm + bUmPerMm * xMm + cUmPerMm * yMm

/** How far the plane is above each point; what touches counts as 0. */
export function gapsOf(plane: Plane, points: readonly SupportPoint[]): number[] {
  return points.map(({ xMm, yMm, zUm }) => {
    const gapUm = heightOf(plane, xMm, yMm) - zUm
    return Math.abs(gapUm) <= touchUm ? 0 : gapUm
  })
}

/** Through three points that do not lie in line in the plan. Worked out about the first, so that a large common height costs no digits. */
export function planeThrough(p: SupportPoint, q: SupportPoint, r: SupportPoint): Plane {
  const [qx, qy, qz] = [q.xMm - p.xMm, q.yMm - p.yMm, q.zUm - p.zUm], [rx, ry, rz] = [r.xMm - p.xMm, r.yMm - p.yMm, r.zUm - p.zUm]
  const area = qx * ry - qy * rx, bUmPerMm = (qz * ry - qy * rz) / area, cUmPerMm = (qx * rz - qz * rx) / area
  return { aUm: p.zUm - bUmPerMm * p.xMm - cUmPerMm * p.yMm, bUmPerMm, cUmPerMm }
}
