import type { Rejection, RejectionReason } from '#model/setup.ts'
import { standOf } from '#engine/setup/footings.ts'
import { foundFooting, foundStack, theBed, type Found } from '#engine/setup/found.ts'
import { reasonsOfFooting, reasonsOfSeat, reasonsOfStack } from '#engine/setup/reasons.ts'
import { isCandidate, type Search } from '#engine/setup/search.ts'
import { mayBeInStack, mayBeStacked, stackOf } from '#engine/setup/stacking.ts'

/**
 * Every candidate that does not serve, with all its reasons: those with the fewest first, of these the nearest to the
 * window, then by ids. Without stacks unless asked for, which are as many as the pairs squared.
 */
export function rejectionsOf(search: Search, withStacks: boolean): readonly Rejection[] {
  const { window } = search, outsideMm = ({ seatMm }: Pick<Rejection, 'seatMm'>) => Math.max(window.lowMm - seatMm, seatMm - window.highMm, 0)
  return [...footingsRejected(search), ...(withStacks ? stacksRejected(search) : []), ...bedRejected(search)]
    .map(({ found, reasons }) => rejectionFrom(search, found, reasons))
    .toSorted((a, b) => a.reasons.length - b.reasons.length || outsideMm(a) - outsideMm(b))
}

type Rejected = { readonly found: Found; readonly reasons: readonly RejectionReason[] }

function* footingsRejected(search: Search): Generator<Rejected, void> {
  const { footings, question } = search
  for (let k = 0; k < footings.count; k += 1) {
    if (!question.ways.includes(standOf(footings, k)) || !isCandidate(search, k)) continue
    const reasons = reasonsOfFooting(search, k)
    if (reasons.length > 0) yield { found: foundFooting(search, k), reasons }
  }
}

function* stacksRejected(search: Search): Generator<Rejected, void> {
  const { footings, question: { ways, wishes } } = search
  const pairs = ways.includes('stack') ? Array.from(footings.first.keys()).filter((k) => mayBeInStack(footings, k, wishes.stackRatio)) : []
  for (const lower of pairs) {
    for (const upper of pairs) {
      if (!mayBeStacked(footings, lower, upper)) continue
      const stack = stackOf(footings, lower, upper), reasons = reasonsOfStack(search, stack)
      if (reasons.length > 0) yield { found: foundStack(search, stack), reasons }
    }
  }
}

function* bedRejected(search: Search): Generator<Rejected, void> {
  const reasons = search.question.ways.includes('bed') ? reasonsOfSeat(search, theBed.seatMm) : []
  if (reasons.length > 0) yield { found: theBed, reasons }
}

function rejectionFrom({ atSeat }: Search, { bars, stand, stacked, seatMm, places }: Found, reasons: readonly RejectionReason[]): Rejection {
  const { gripMm, airMm } = atSeat(seatMm)
  return {
    bars: bars.map((bar) => bar.id), stand, ...(stacked === null ? {} : { stacked }), seatMm, gripMm, airMm, reasons,
    ...(reasons.includes('fouled') ? { fouledHoles: places.fouledHoles } : {}),
  }
}
