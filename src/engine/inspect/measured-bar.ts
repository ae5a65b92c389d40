import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { ShopFields } from '#model/shop-record.ts'
import { barUncertainty } from '#engine/inspect/bar-uncertainty.ts'
import { checkedOf } from '#engine/inspect/checked.ts'
import { stationValuesOf } from '#engine/inspect/shape.ts'
import { turnOverGrows } from '#engine/inspect/turn-over-uncertainty.ts'
import type { UseVerdict } from '#engine/inspect/uses-proved.ts'
import { meanOf } from '#engine/numeric/total.ts'

/** A bar as a check leaves it: what mates are chosen from. */
export type MeasuredBar = {
  readonly id: string
  readonly lengthMm: number
  readonly check: string
  readonly atIso: string
  readonly heightMm: number
  /** Heights along the bar from the marked end, lines and repeats taken together; empty where places are not known. */
  readonly profile: readonly (readonly [xMm: number, heightMm: number])[]
  /** Standard uncertainty of the height at one place, and the part of it that a bar read in the same check does not share; null: not known. */
  readonly uUm: number | null
  readonly uAloneUm: number | null
  /** What its own parallelism proves; empty without uncertainty. */
  readonly uses: readonly UseVerdict[]
}

/** Null where the check read nothing of the bar, or was only told its height. */
export function measuredBarFrom({ id, lengthMm }: Pick<BarRecord, 'id' | 'lengthMm'>, check: Check, limitsUm: ShopFields['limitsUm']): MeasuredBar | null {
  const own: Check = { ...check, readings: check.readings.filter((reading) => reading.bar === id), looks: [] }
  if (check.method === 'stated' || own.readings.length === 0) return null
  const { bars: [bar], zeroMm } = checkedOf(own, { limitsUm, lengthMmOf: () => lengthMm })
  if (!bar || bar.heightMm === null) return null
  const uncertainty = barUncertainty(own, id, lengthMm, bar.heightMm, 'place'), values = bar.turnOver ? null : bar.readings && stationValuesOf(bar.readings)
  const aboveZero: readonly (readonly [number, number])[] = values ? values.stationsMm.map((x, i) => [x, meanOf(values.lines.map((line) => line[i]!))])
    : (bar.turnOver?.heightsUm ?? []).map((um, i) => [bar.turnOver!.stationsMm[i]!, um])
  return {
    id, lengthMm, check: check.id, atIso: check.atIso, heightMm: bar.heightMm, uses: bar.uses,
    profile: aboveZero.map(([x, um]) => [x, zeroMm + um / 1000]),
    uUm: uncertainty && uncertainty.height.u * turnOverGrows(check.method),
    // The difference of two mates of one check is of two such bars alike.
    uAloneUm: uncertainty && (uncertainty.difference.u * turnOverGrows(check.method)) / Math.SQRT2,
  }
}

/** Standard uncertainty of the difference of two bars at a place: bars of one check share plate, zero, block and temperature. */
export function differenceUUm(a: Pick<MeasuredBar, 'check' | 'uUm' | 'uAloneUm'>, b: Pick<MeasuredBar, 'check' | 'uUm' | 'uAloneUm'>): number | null {
  const [first, second] = a.check === b.check ? [a.uAloneUm, b.uAloneUm] : [a.uUm, b.uUm]
  return first === null || second === null ? null : Math.hypot(first, second)
}
