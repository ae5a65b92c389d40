/** A bar or part that lies over two vises of the row: `apartMm` between their middles, `lengthMm` its own length. */
export type LongBarQuestion = { readonly from: number; readonly to: number; readonly apartMm: number; readonly lengthMm: number }

/** Its slope along, rising from the one vise to the other, and what that makes over its whole length. */
export type LongBar = { readonly slopeUmPerMm: number; readonly endToEndUm: number }

/** How a long bar lies over two beds of different height. @source GEOMETRY */
export function longBarOf({ apartMm, lengthMm }: LongBarQuestion, fromUm: number, toUm: number): LongBar {
  const slopeUmPerMm = (toUm - fromUm) / apartMm
  return { slopeUmPerMm, endToEndUm: slopeUmPerMm * lengthMm }
}
