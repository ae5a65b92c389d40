import { ways, type Way } from '#model/wishes.ts'
import { foundFooting, foundStack, theBed, type Found } from '#engine/setup/found.ts'
import { footingsInOrder } from '#engine/setup/footings-in-order.ts'
import type { Search } from '#engine/setup/search.ts'
import type { Range } from '#engine/setup/seat-classes.ts'
import { lowersFor, stacksInOrder, type LowersOf } from '#engine/setup/stacks-in-order.ts'

/**
 * Everything that serves, in the order of the choices, ties by ids. Each is found only when it is asked for: the first
 * thirty of a hundred thousand bars cost little more than those of a hundred.
 *
 * @source SETUP-RULES
 */
export function* inOrder(search: Search): Generator<Found, void> {
  const { advised, above, fitnesses, question } = search, lowersOf = lowersFor(search)
  for (const range of [advised, above]) {
    if (range === null) continue
    for (const alike of fitnesses) {
      for (const way of ways) if (question.ways.includes(way)) yield* inOrderOf(search, way, range, alike, lowersOf)
    }
  }
}

function* inOrderOf(search: Search, way: Way, range: Range, { fitness, trusts }: Search['fitnesses'][number], lowersOf: LowersOf): Generator<Found, void> {
  if (way === 'bed') {
    if (fitness === theBed.trust && theBed.seatMm >= range.fromMm && theBed.seatMm <= range.toMm) yield theBed
  } else if (way === 'stack') {
    for (const stack of stacksInOrder(search, range, fitness, lowersOf)) yield foundStack(search, stack)
  } else {
    const { all, byTrust } = search.rack.bySeat[way]
    for (const k of footingsInOrder(search, way, trusts.length > 1 ? all : byTrust[trusts[0]!]!, range)) yield foundFooting(search, k)
  }
}
