import type { DrillPlace } from '#engine/setup/hold/drill-place.ts'
import { deepestOverJawMm } from '#engine/setup/reach.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { readLengthMm, readNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { Choice, SetupQuestion } from '#model/setup.ts'
import type { JawSet } from '#model/vise-record.ts'

/** As typed; an empty text is not given. */
export type HoldTyped = {
  readonly forceN: string; readonly torqueNm: string; readonly lead: string
  readonly group: string; readonly diameter: string; readonly teeth: string; readonly feed: string; readonly width: string; readonly helix: string
  readonly drill: string; readonly drillFeed: string; readonly kd: string; readonly wear: string; readonly point: (typeof points)[number]
  readonly yieldMPa: string
}
export const points = ['standard', 'split'] as const
export const noHold: HoldTyped = {
  forceN: '', torqueNm: '', lead: '', group: '2', diameter: '', teeth: '', feed: '', width: '', helix: '', drill: '', drillFeed: '', kd: '', wear: '', point: 'standard', yieldMPa: '',
}

/** How dull the drill of the handbook's example is; what counts while the shop says nothing else. @source DRILL-FORCE */
export const commonWear = 1.3

type Force = { readonly kc11MPa: number; readonly mc: number }

/**
 * The case of `hold` for the choice looked at, in the keys of the calculation; null while no clamp force can be worked out.
 *
 * @param forces  of the steel groups offered
 * @throws Refusal of the texts
 */
export function holdCase(typed: HoldTyped, { question: { part, cuts, vise, wishes }, choice, drilled, jaws, side, forceOf, unit }: {
  readonly question: SetupQuestion; readonly drilled: DrillPlace; readonly choice: Pick<Choice, 'gripMm' | 'stickOutMm'>; readonly jaws: Pick<JawSet, 'face'>; readonly side: NonNullable<SetupForm['side']>; readonly forceOf: (group: string) => Force; readonly unit: Units['length']
}): object | null {
  const is = (text: string) => text.trim() !== '', depthMm = deepestOverJawMm(cuts), cut = ['diameter', 'teeth', 'feed', 'width'] as const
  if (part.betweenJawsMm === null || part.alongJawsMm === null || (!is(typed.forceN) && !(is(typed.torqueNm) && is(typed.lead)))) return null
  const length = (field: 'lead' | 'diameter' | 'feed' | 'width' | 'drill' | 'drillFeed') => readLengthMm(typed[field], unit, field)
  return {
    part: { betweenJawsMm: part.betweenJawsMm, alongJawsMm: part.alongJawsMm, heightMm: part.heightMm, shape: part.shape }, gripMm: choice.gripMm, stickOutMm: choice.stickOutMm,
    ...(vise.jawWidthMm === undefined ? {} : { jawWidthMm: vise.jawWidthMm }), face: jaws.face, surface: side === 'machined' ? 'machined' : side === 'sawn' || side === 'cast' ? 'unmachined' : 'ground',
    clamp: is(typed.forceN) ? { forceN: readNumber(typed.forceN, 'forceN') } : { torqueNm: readNumber(typed.torqueNm, 'torqueNm'), leadMm: length('lead') },
    ...(depthMm !== null && cut.every((field) => is(typed[field])) ? {
      milling: { ...forceOf(typed.group), depthMm, widthMm: length('width'), diameterMm: length('diameter'), teeth: readNumber(typed.teeth, 'teeth'), feedPerToothMm: length('feed'), helixDeg: is(typed.helix) ? readNumber(typed.helix, 'helix') : 0 },
    } : {}),
    ...(is(typed.kd) && is(typed.drillFeed) && (is(typed.drill) || drilled.largestMm !== null) ? {
      drilling: {
        diameterMm: is(typed.drill) ? length('drill') : drilled.largestMm, feedMm: length('drillFeed'), kd: readNumber(typed.kd, 'kd'), wear: is(typed.wear) ? readNumber(typed.wear, 'wear') : commonWear,
        splitPoint: typed.point === 'split', carried: drilled.carried, betweenBarsMm: drilled.betweenBarsMm,
      },
    } : {}),
    ...(is(typed.yieldMPa) ? { yieldMPa: readNumber(typed.yieldMPa, 'yieldMPa') } : {}), ...(wishes.toleranceUm === null ? {} : { toleranceUm: wishes.toleranceUm }),
  }
}
