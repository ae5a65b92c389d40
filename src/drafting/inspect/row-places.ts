import { textWidthMm } from '#drafting/lettering.ts'
import type { Point } from '#drafting/scene.ts'
import { fieldBox } from '#drafting/setup/said.ts'
import { stackedUp } from '#drafting/stack-up.ts'

/** Middles of the readings of one row, counted from its top, in order of the stations. */
export type RowPlaces = {
  readonly at: readonly Point[]
  readonly widthMm: number
  readonly rowMm: number
  readonly heightMm: number
  /** Each stands over its own station, in one or two tiers; else they go line by line like words. */
  readonly inOrder: boolean
}

const gapMm = 1

/**
 * Readings over their stations: in one tier where they stand apart, by turns in two where not, and line after line where
 * they are too many for that.
 */
export function rowPlaces(xs: readonly number[], { fromMm, toMm }: { readonly fromMm: number; readonly toMm: number }, fields: 'spots' | 'none', texts: readonly string[]): RowPlaces {
  const widthMm = fields === 'spots' ? fieldBox.widthMm : Math.max(6, ...texts.map((text) => textWidthMm(text, 3.6, true))) + gapMm
  const rowMm = fields === 'spots' ? fieldBox.heightMm : 5
  for (const tiers of [1, 2]) {
    const at = tiered(xs, tiers, widthMm, rowMm, fromMm, toMm)
    if (at) return { at, widthMm, rowMm, heightMm: tiers * rowMm + (tiers - 1) * gapMm, inOrder: true }
  }
  const across = Math.max(1, Math.floor((toMm - fromMm + gapMm) / (widthMm + gapMm)))
  const at = xs.map((_, i): Point => [fromMm + (i % across) * (widthMm + gapMm) + widthMm / 2, Math.floor(i / across) * (rowMm + gapMm) + rowMm / 2])
  const rows = Math.ceil(xs.length / across)
  return { at, widthMm, rowMm, heightMm: rows * rowMm + (rows - 1) * gapMm, inOrder: false }
}

/** Null where a tier has no room, or a line down from the upper one would run through the lower. */
function tiered(xs: readonly number[], tiers: number, widthMm: number, rowMm: number, fromMm: number, toMm: number): readonly Point[] | null {
  const at: Point[] = xs.map((x) => [x, rowMm / 2])
  for (let tier = 0; tier < tiers; tier += 1) {
    const ours = xs.flatMap((_, i) => (i % tiers === tier ? [i] : []))
    const middles = stackedUp(ours.map((i) => ({ preferMm: xs[i]!, sizeMm: widthMm })), fromMm, toMm, gapMm)
    if (middles.length > 0 && middles[0]! - widthMm / 2 < fromMm - 1e-6) return null
    ours.forEach((i, j) => { at[i] = [middles[j]!, rowMm / 2 + tier * (rowMm + gapMm)] })
  }
  const moved = at.some(([x], i) => Math.abs(x - xs[i]!) > widthMm * 0.4)
  const crossed = tiers === 2 && xs.some((x, i) => i % 2 === 0 && at.some(([other], j) => j % 2 === 1 && Math.abs(other - x) < widthMm / 2 + 0.2))
  return moved || crossed ? null : at
}
