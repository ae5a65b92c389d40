/** Something that wants its middle at `preferMm` on a line and takes `sizeMm` of it. */
export type Stop = { readonly preferMm: number; readonly sizeMm: number }

/**
 * Middles for stops in the order given, none over another and each as near to what it prefers as those before it allow; then
 * pushed back from the end. Where they do not all fit between `startMm` and `endMm`, the first ones stand before the start.
 */
export function stackedUp(stops: readonly Stop[], startMm: number, endMm: number, gapMm = 1): readonly number[] {
  const middles: number[] = []
  let free = startMm
  for (const { preferMm, sizeMm } of stops) {
    const middle = Math.max(preferMm, free + sizeMm / 2)
    middles.push(middle)
    free = middle + sizeMm / 2 + gapMm
  }
  let end = endMm
  for (let i = stops.length - 1; i >= 0; i--) {
    middles[i] = Math.min(middles[i]!, end - stops[i]!.sizeMm / 2)
    end = middles[i]! - stops[i]!.sizeMm / 2 - gapMm
  }
  return middles
}
