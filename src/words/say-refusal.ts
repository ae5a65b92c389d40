import type { Facts } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { accessRefusals } from '#words/refusals/access.ts'
import { cuttingRefusals } from '#words/refusals/cutting.ts'
import { cutListRefusals } from '#words/refusals/cut-list.ts'
import { doorRefusals } from '#words/refusals/door.ts'
import { grindRefusals } from '#words/refusals/grind.ts'
import { heatRefusals } from '#words/refusals/heat.ts'
import { inputRefusals } from '#words/refusals/input.ts'
import { inspectRefusals } from '#words/refusals/inspect.ts'
import { makingRefusals } from '#words/refusals/making.ts'
import { postgresRefusals } from '#words/refusals/postgres.ts'
import { rackRefusals } from '#words/refusals/rack.ts'
import { rackFileRefusals } from '#words/refusals/rack-file.ts'
import { seatRefusals } from '#words/refusals/seat.ts'
import { setupRefusals } from '#words/refusals/setup.ts'
import { shopRefusals } from '#words/refusals/shop.ts'
import { type NameOf, type Say, wordingFor } from '#words/wording.ts'

export const refusalWords: { readonly [code: string]: Say } = { ...inputRefusals, ...setupRefusals, ...seatRefusals, ...inspectRefusals, ...rackRefusals, ...heatRefusals, ...cuttingRefusals, ...grindRefusals, ...makingRefusals, ...cutListRefusals, ...rackFileRefusals, ...shopRefusals, ...postgresRefusals, ...accessRefusals, ...doorRefusals }

/** What was asked, why it cannot be done and what to do, in one or two sentences. A code nobody has worded is named as it is. */
export function sayRefusal(refusal: { readonly code: string; readonly facts: Facts }, units: Units, nameOf?: NameOf): string {
  const say = Object.hasOwn(refusalWords, refusal.code) ? refusalWords[refusal.code]! : undefined
  return say ? say(refusal.facts, wordingFor(units, nameOf)) : `Refused: ${refusal.code}.`
}
