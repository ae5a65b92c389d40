import type { Stop } from '#drafting/stack-up.ts'

/** Which of some stops can stand just where they prefer with none over another; those in `first` go before the rest, which go in their order. */
export function standingApart(stops: readonly Stop[], first: readonly number[] = [], gapMm = 1.5): ReadonlySet<number> {
  const kept = new Set<number>()
  for (const i of [...first, ...stops.keys()]) {
    const { preferMm, sizeMm } = stops[i]!
    if ([...kept].every((other) => other === i || Math.abs(stops[other]!.preferMm - preferMm) >= (stops[other]!.sizeMm + sizeMm) / 2 + gapMm)) kept.add(i)
  }
  return kept
}
