import type { Check, Look } from '#model/check.ts'
import type { ShopFields } from '#model/shop-record.ts'
import { type Use, uses } from '#model/wishes.ts'
import { barUncertainty } from '#engine/inspect/bar-uncertainty.ts'
import { barReadingsOf, zeroMmOf } from '#engine/inspect/check-readings.ts'
import { stationValuesOf } from '#engine/inspect/shape.ts'
import { turnOverFrom } from '#engine/inspect/turn-over-from.ts'
import { turnOverGrows } from '#engine/inspect/turn-over-uncertainty.ts'
import { usesProved } from '#engine/inspect/uses-proved.ts'
import { limitUmOf } from '#engine/rack/question-at.ts'

type Limits = ShopFields['limitsUm']

/**
 * What one check proves about one bar. `kind`: at the plate at both ends and the middle; wiped, stoned, without rock and read
 * twice by micrometer; anything else proves nothing and can only fail.
 */
export type CheckOutcome = {
  readonly kind: 'plate check' | 'quick look' | 'no proof'
  /** Uses it is good for by its parallelism. */
  readonly uses: readonly Use[]
  /** It rocks, or is out for every use. */
  readonly failed: boolean
  /** Seen on it and not stoned: the burr may stand where it was not read. */
  readonly burrs: readonly Burr[]
}

/** What leaves a burr behind. */
export type Burr = 'nicked' | 'drilled'
const burrs: readonly Burr[] = ['nicked', 'drilled']

/** What two heights by micrometer can restore; the finer uses want the plate. Common practice, no source. */
export const quickUses: readonly Use[] = ['drilling', 'milling']

/** @param check  with all readings or those of this bar alone */
export function outcomeOf(check: Check, bar: string, lengthMm: number, limitsUm: Limits): CheckOutcome {
  const look = check.looks.find((one) => one.bar === bar) ?? null
  return { ...proofOf(check, look, bar, lengthMm, limitsUm), burrs: look === null || look.stoned ? [] : burrs.filter((burr) => look.seen.includes(burr)) }
}

type Proof = Omit<CheckOutcome, 'burrs'>

function proofOf(check: Check, look: Look | null, bar: string, lengthMm: number, limitsUm: Limits): Proof {
  if (look?.rock === 'rocks') return { kind: 'no proof', uses: [], failed: true }
  const found = check.method === 'stated' ? null : parallelismOf(check, bar, lengthMm)
  if (found === null) return nothing
  const { stationsMm, valueUm, uUm } = found
  // Without an instrument there is no uncertainty: the value alone then speaks for the uses of a quick look.
  const judged = usesProved(valueUm, uUm ?? 0, Object.fromEntries(uses.map((use) => [use, limitUmOf(use, limitsUm)])))
  const proved = judged.filter(({ verdict }) => verdict === 'proved').map(({ use }) => use)
  if (judged.every(({ verdict }) => verdict === 'out')) return { ...nothing, failed: true }
  if (check.method !== 'micrometer') return endsAndMiddle(stationsMm, lengthMm) ? { kind: 'plate check', uses: uUm === null ? proved.filter((use) => quickUses.includes(use)) : proved, failed: false } : nothing
  const looked = look !== null && look.wiped && look.stoned && look.rock === 'none'
  return looked ? { kind: 'quick look', uses: proved.filter((use) => quickUses.includes(use)), failed: false } : nothing
}

const nothing: Proof = { kind: 'no proof', uses: [], failed: false }

type Parallelism = { readonly stationsMm: readonly number[]; readonly valueUm: number; readonly uUm: number | null }

/** Null where the readings do not tell it. */
function parallelismOf(check: Check, bar: string, lengthMm: number): Parallelism | null {
  const readings = barReadingsOf(check, bar, lengthMm)
  if (!readings) return null
  const turned = check.method === 'turn-over' ? turnOverFrom(check, bar, lengthMm) : null
  if (check.method === 'turn-over' && (turned === null || turned.parallelismUm === null)) return null
  const { stationsMm, lines } = stationValuesOf(readings), values = lines.flat(), uncertainty = barUncertainty(check, bar, lengthMm, zeroMmOf(check))
  const uUm = uncertainty && uncertainty.parallelism.u * turnOverGrows(check.method)
  return { stationsMm, valueUm: turned?.parallelismUm ?? Math.max(...values) - Math.min(...values), uUm }
}

/** A station in the first and in the last quarter, and one in the middle third. Common practice, no source. */
function endsAndMiddle(stationsMm: readonly number[], lengthMm: number): boolean {
  return stationsMm[0]! <= lengthMm / 4 && stationsMm.at(-1)! >= (lengthMm * 3) / 4 && stationsMm.some((x) => x >= lengthMm / 3 && x <= (lengthMm * 2) / 3)
}
