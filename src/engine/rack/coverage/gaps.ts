import type { Want } from '#engine/rack/coverage/wants.ts'

/** Heights in a vise that unserved setups ask for, and how many of them a bar in there would serve. */
export type Gap = { readonly lowMm: number; readonly highMm: number; readonly setups: number }

/**
 * Where the unserved heights of a vise lie, from the bed up: stretches between which the number of setups changes. Where one window ends
 * at the height at which another begins, that height counts with both and is a stretch of its own, without length.
 */
export function gapsOf(wants: readonly Want[], timesOf: (setup: number) => number): readonly Gap[] {
  const starts = new Map<number, number>(), ends = new Map<number, number>()
  for (const { setup, lowMm, highMm } of wants) {
    const fromMm = tidy(lowMm), toMm = tidy(highMm), times = timesOf(setup)
    starts.set(fromMm, (starts.get(fromMm) ?? 0) + times)
    ends.set(toMm, (ends.get(toMm) ?? 0) + times)
  }
  const gaps: Gap[] = []
  let open = 0, fromMm = 0
  const put = (lowMm: number, highMm: number, setups: number) => {
    if (setups > 0) gaps.push({ lowMm, highMm, setups })
  }
  for (const mm of [...new Set([...starts.keys(), ...ends.keys()])].sort((a, b) => a - b)) {
    const [begin, end] = [starts.get(mm) ?? 0, ends.get(mm) ?? 0]
    if (mm > fromMm) put(fromMm, mm, open)
    open += begin
    if (begin > 0 && end > 0) put(mm, mm, open)
    open -= end
    fromMm = mm
  }
  return gaps
}

/** Without the noise of sums, so that ends that are one stay one. */
const tidy = (mm: number): number => Math.round(mm * 1e9) / 1e9
