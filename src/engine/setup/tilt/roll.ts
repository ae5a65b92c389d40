import type { Spot } from '#engine/setup/tilt/pivots.ts'

/**
 * Places on at most two lines along the jaws, as they are gone through: the first line up to `split`, the second from there,
 * each from left to right. Without a second line one more place of no weight stands in for it.
 */
export type Lines = {
  readonly order: readonly number[]
  readonly split: number
  readonly xs: Float64Array
  /** Of each place, the first and one past the last of its own line to the left of it; then the same to the right of it. */
  readonly from: Int32Array
  readonly to: Int32Array
  /** 1 / (distance along from i to k), a row for each i, below 0 on the way to the left; then the same below 0 to the right. */
  readonly perMm: Float64Array
  /** Parts of the load that each line carries, where it stands along, and how far apart the lines are. */
  readonly weights: readonly [first: number, second: number]
  readonly loadXMm: number
  readonly apartMm: number
}

/**
 * Places of a part whose slope across is given as one line, or those of bars along the jaws as two; null where that takes
 * more than two lines.
 *
 * @param load  strictly between the ends and the lines; over no place (jaw held) and on no line through two of them
 */
export function linesFrom(spots: readonly Spot[], [loadXMm, loadYMm]: readonly [number, number], jawHeld: boolean): Lines | null {
  const ys = jawHeld ? [0] : [...new Set(spots.map(({ yMm }) => yMm))].sort((a, b) => a - b)
  if (ys.length > 2) return null
  const inLine = (line: number) => spots.flatMap(({ yMm }, i) => (jawHeld || yMm === ys[line] ? [i] : [])).sort((a, b) => spots[a]!.xMm - spots[b]!.xMm)
  const first = inLine(0), order = jawHeld ? first : [...first, ...inLine(1)], split = first.length, n = order.length
  const xs = Float64Array.from({ length: n + 1 }, (_, k) => (k < n ? spots[order[k]!]!.xMm : 0))
  const from = new Int32Array(2 * (n + 1)), to = new Int32Array(2 * (n + 1)), perMm = new Float64Array(2 * n * n)
  for (let i = 0; i < n; i += 1) {
    const [start, end] = i < split ? [0, split] : [split, n], own = xs.subarray(start, end)
    from[i] = start; to[i] = start + own.findIndex((x) => x >= xs[i]!)
    from[n + 1 + i] = start + own.findLastIndex((x) => x <= xs[i]!) + 1; to[n + 1 + i] = end
    for (let k = start; k < end; k += 1) { perMm[n * n + i * n + k] = 1 / (xs[k]! - xs[i]!); perMm[i * n + k] = -perMm[n * n + i * n + k]! }
  }
  const apartMm = jawHeld ? 1 : ys[1]! - ys[0]!, share = jawHeld ? 0 : (loadYMm - ys[0]!) / apartMm
  return { order, split, xs, from, to, perMm, weights: [1 - share, share], loadXMm, apartMm }
}

/**
 * The seats of many trials on at most two lines. Lying level along, the part touches each line at one place; it is then
 * rolled toward the load, each time about the places it touches until the next one comes down, until the load is passed.
 *
 * Which of random heights is the highest cannot be foreseen: places and slopes are chosen by products with 0 or 1, not by
 * branches, and all trials are laid level before any is rolled, so that none waits for the one before.
 *
 * @param heights  µm, trial by trial in the order of the lines, one more at the end; the slope across taken off where it is given
 * @param across  slopes across, µm/mm; written where there are two lines
 */
export function rollTrials(lines: Lines, heights: Float64Array, trials: number, along: Float64Array, across: Float64Array): void {
  const touched = levelTrials(lines, heights, trials), { split, xs, from, to, perMm, weights: [wi, wj], loadXMm, apartMm } = lines, n = xs.length - 1
  for (let t = 0; t < trials; t += 1) {
    const row = t * n
    let i = touched[2 * t]!, j = touched[2 * t + 1]!, reachedMm = wi * xs[i]! + wj * xs[j]!, steepest = 0
    const toRight = Number(reachedMm < loadXMm), way = toRight * (n + 1), table = toRight * n * n
    do {
      const zi = heights[row + i]!, zj = heights[row + j]!, ri = table + i * n, rj = table + j * n, endI = to[way + i]!, endJ = to[way + j]!
      let next = 0
      steepest = -Number.MAX_VALUE
      for (let k = from[way + i]!; k < endI; k += 1) {
        const rise = (heights[row + k]! - zi) * perMm[ri + k]!, more = Number(rise > steepest)
        steepest = steepest * (1 - more) + rise * more; next += Math.imul(k - next, more)
      }
      for (let k = from[way + j]!; k < endJ; k += 1) {
        const rise = (heights[row + k]! - zj) * perMm[rj + k]!, more = Number(rise > steepest)
        steepest = steepest * (1 - more) + rise * more; next += Math.imul(k - next, more)
      }
      const inFirst = Number(next < split)
      i += Math.imul(next - i, inFirst); j += Math.imul(next - j, 1 - inFirst)
      reachedMm = wi * xs[i]! + wj * xs[j]!
    } while (Number(reachedMm < loadXMm) === toRight)
    const slope = (2 * toRight - 1) * steepest
    along[t] = slope
    if (j < n) across[t] = (heights[row + j]! - slope * xs[j]! - heights[row + i]! + slope * xs[i]!) / apartMm
  }
}

/** The highest place of each line in each trial, two for each. */
function levelTrials({ split, xs }: Lines, heights: Float64Array, trials: number): Int32Array {
  const n = xs.length - 1, touched = new Int32Array(2 * trials)
  for (let t = 0; t < trials; t += 1) {
    const row = t * n
    let i = row, j = row + split
    for (let k = row + 1; k < row + split; k += 1) i += Math.imul(k - i, Number(heights[k]! > heights[i]!))
    for (let k = row + split + 1; k < row + n; k += 1) j += Math.imul(k - j, Number(heights[k]! > heights[j]!))
    touched[2 * t] = i - row; touched[2 * t + 1] = j - row
  }
  return touched
}
