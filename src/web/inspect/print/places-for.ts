import { barLengthMm } from '#engine/inspect/gather-draft.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { evenly, stationPlacesMm } from '#engine/inspect/stations.ts'
import { attemptOr } from '#model/attempt.ts'
import type { CheckForm, DraftBar } from '#model/check-draft.ts'

/** Drawn as long while nobody has said how long a bar is. */
const unknownLengthMm = 100

/** Length of a bar of a half-done check and where its stations lie; evenly while what is typed cannot be read. */
export function placesFor({ bar }: DraftBar, form: CheckForm, facts: InspectFacts): { readonly lengthMm: number; readonly placesMm: readonly number[] } {
  const lengthMm = attemptOr(() => barLengthMm({ form, typed: {}, looks: {} }, facts, bar, 'length'), null) ?? unknownLengthMm
  return { lengthMm, placesMm: attemptOr(() => stationPlacesMm(form, lengthMm), null) ?? evenly(form.stations, lengthMm) }
}
