import type { CoverageQuestion, KnownHeights, SetupOfShop } from '#engine/rack/coverage/coverage-question.ts'
import type { IsPlaced } from '#engine/rack/coverage/serving.ts'
import type { RackIndex } from '#engine/setup/index-rack.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { placeRanks } from '#engine/setup/order.ts'
import { rememberPlaces } from '#engine/setup/place-memory.ts'
import { placesOf } from '#engine/setup/places.ts'
import { isCutInto } from '#engine/setup/search.ts'

/** mm. As thin as new bars are made where nobody says. Common practice, no source. */
const thinnestMm = 3

/** Whether bars find a place under the part of a setup, clear of its cuts; null where nobody asks or nothing is in the way. @source SETUP-RULES */
export function placedFor({ places, setups }: CoverageQuestion, setup: number, { footings }: RackIndex): IsPlaced {
  const asked = lookedAt(places, setups[setup]!)
  if (asked === null) return null
  let memory: ReturnType<typeof rememberPlaces> | null = null
  return (k) => {
    memory ??= rememberPlaces(footings, obstaclesOf(asked.part, asked.cuts, asked.wishes))
    const rank = memory.rankAt(k)
    if (rank > placeRanks.fouled || (rank === placeRanks.fouled && isCutInto({ footings, inTheWayAt: memory.inTheWayAt }, k))) return false
    const { offBalance, notCarried } = memory.placesAt(k)
    return !offBalance && !notCarried
  }
}

/** Whether a new pair of the thickness asked for, as long as the part, would find a place. */
export function newPairPlaced({ places, setups, next }: CoverageQuestion, setup: number): boolean {
  const asked = lookedAt(places, setups[setup]!)
  if (asked === null || asked.part.shape === 'round') return true
  const bar = { acrossMm: next.thicknessMm ?? thinnestMm, lengthMm: asked.part.alongJawsMm ?? longMm }
  return placeRanks[placesOf(obstaclesOf(asked.part, asked.cuts, asked.wishes), [bar, bar]).status] < placeRanks.fouled
}

const longMm = 150

function lookedAt(places: boolean, { asked }: SetupOfShop): Exclude<SetupOfShop['asked'], KnownHeights> | null {
  if (!places || 'lowMm' in asked) return null
  return asked.cuts.some(({ kind }) => kind !== 'face') || asked.part.hollows.length > 0 ? asked : null
}
