import { barLengthMm } from '#engine/inspect/gather-draft.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { evenly, stationPlacesMm } from '#engine/inspect/stations.ts'
import type { CheckForm, DraftBar } from '#model/check-draft.ts'
import { Refusal } from '#model/refusal.ts'

/** Drawn as long while nobody has said how long a bar is. */
const unknownLengthMm = 100

/** Length of a bar of a half-done check and where its stations lie; evenly while what is typed cannot be read. */
export function placesFor({ bar }: DraftBar, form: CheckForm, facts: InspectFacts): { readonly lengthMm: number; readonly placesMm: readonly number[] } {
  const lengthMm = read(() => barLengthMm({ form, typed: {}, looks: {} }, facts, bar, 'length')) ?? unknownLengthMm
  return { lengthMm, placesMm: read(() => stationPlacesMm(form, lengthMm)) ?? evenly(form.stations, lengthMm) }
}

function read<Value>(from: () => Value): Value | null {
  try { return from() } catch (error) {
    if (error instanceof Refusal) return null
    throw error
  }
}
