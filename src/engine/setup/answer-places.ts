import type { Places } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { sumOfPlaces } from '#engine/setup/places-sum.ts'
import { placesOf } from '#engine/setup/places.ts'
import { type Ignored } from '#engine/read/read-case.ts'
import { readPlacesCase } from '#engine/setup/read-question.ts'

export type PlacesAnswer = Places & Ignored & { readonly sum: readonly Sum[] }

/** The calculation `places`: one raw case in, its answer out. @throws Refusal as `readPlacesCase` */
export function answerPlaces(raw: unknown): PlacesAnswer {
  const { part, holes, bars, wishes, ignored } = readPlacesCase(raw)
  const places = placesOf(obstaclesOf(part, holes, wishes), bars)
  return { ...places, ignored, sum: sumOfPlaces({ part, holes, bars, wishes }, places) }
}
