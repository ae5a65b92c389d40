import { nearestTo, type Nearest } from '#engine/setup/row/nearest-to.ts'
import { sameUm } from '#engine/setup/row/row-question.ts'
import type { TopWindow } from '#engine/setup/row/tight-windows.ts'
import type { Tops } from '#engine/setup/row/tops.ts'

/** A way of giving pairs to vises whose tops lie closest together: its window, their mean above the window's low end, sum of squares about it. */
export type Optimum = { readonly window: TopWindow; readonly centreUm: number; readonly um2: number }

/**
 * The ways with the smallest sum of squared tops about their own mean, in all the windows together.
 *
 * About a height that is given the best way is quickly found (`nearestTo`); only the mean is not known before. The sum of
 * squares is the sum about any other height, less a square of the distance: among all ways the best is therefore one that
 * is best about *some* height. Those are found from the two ends of the window inwards, always asking about the height at
 * which the two ways known so far are equally good, and leaving out stretches that cannot hold anything better.
 *
 * @source ROW-SEARCH
 */
export function drawnTogether(tops: Tops, windows: readonly TopWindow[], spreadUm: number): readonly Optimum[] {
  const found: Optimum[] = [], vises = [...tops.bedsUm.keys()], taken = new Set<number>()
  let leastUm2 = Infinity
  for (const window of windows) {
    const about = (heightUm: number): Way => {
      const nearest = nearestTo(tops, window, vises, taken, heightUm)!, way = wayOf(nearest, heightUm)
      leastUm2 = Math.min(leastUm2, way.um2)
      found.push({ window, centreUm: way.total / vises.length, um2: way.um2 })
      return way
    }
    between(about, vises.length, () => leastUm2 + sameUm, about(0), about(spreadUm))
  }
  return different(found.filter(({ um2 }) => um2 <= leastUm2 + sameUm))
}

/** One way: the height it is best about, the sum of its tops, of their squares, of their squares about the mean. */
type Way = { readonly heightUm: number; readonly total: number; readonly squares: number; readonly um2: number }

function wayOf({ topsUm }: Nearest, heightUm: number): Way {
  const total = topsUm.reduce((sum, um) => sum + um, 0), mean = total / topsUm.length
  return { heightUm, total, squares: topsUm.reduce((sum, um) => sum + um * um, 0), um2: topsUm.reduce((sum, um) => sum + (um - mean) ** 2, 0) }
}

function between(about: (heightUm: number) => Way, vises: number, enough: () => number, a: Way, b: Way): void {
  const apart = b.total - a.total
  if (Math.abs(apart) <= nothing || b.heightUm - a.heightUm <= nothing) return
  // a way in between lies above both lines that touch the known ones: where the two lines meet it could be best
  const meet = (b.squares - a.squares + 2 * (a.heightUm * a.total - b.heightUm * b.total)) / (2 * (a.heightUm - b.heightUm))
  if (a.squares + 2 * a.heightUm * (meet - a.total) - meet ** 2 / vises > enough()) return
  const middle = about((b.squares - a.squares) / (2 * apart))
  const gained = a.squares - middle.squares - 2 * middle.heightUm * (a.total - middle.total)
  if (gained <= nothing * (1 + a.squares)) return
  between(about, vises, enough, a, middle)
  between(about, vises, enough, middle, b)
}

/** Differences this small are rounding, in µm or as a part of a sum of squares. */
const nothing = 1e-14

/** Each window and mean once. */
function different(optima: readonly Optimum[]): readonly Optimum[] {
  return optima.filter((one, at) => optima.findIndex((other) => other.window === one.window && Math.abs(other.centreUm - one.centreUm) <= sameUm / 1000) === at)
}
