import type { DrillPlace } from '#engine/setup/hold/drill-place.ts'
import { deepestOverJawMm } from '#engine/setup/reach.ts'
import { attempt } from '#model/attempt.ts'
import { type LengthUnit, readNumber, readSizeMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { Choice, SetupQuestion } from '#model/setup.ts'
import type { JawSet } from '#model/vise-record.ts'
import type { HoldField, HoldTyped } from '#web/setup/state/hold-typed.ts'

/** A field that a number is typed in. */
export type HoldNumber = Exclude<HoldField, 'group' | 'point'>

/** How dull the drill of the handbook's example is; what counts while the shop says nothing else. @source DRILL-FORCE */
export const commonWear = 1.3

/** What a text is in the calculation, and whose unit a length is typed in. */
const fields: { readonly [field in HoldNumber]: { readonly path: string; readonly unitOf?: 'form' | 'atHand' } } = {
  forceN: { path: 'clamp.forceN' }, torqueNm: { path: 'clamp.torqueNm' }, lead: { path: 'clamp.leadMm', unitOf: 'atHand' },
  diameter: { path: 'milling.diameterMm', unitOf: 'atHand' }, teeth: { path: 'milling.teeth' }, feed: { path: 'milling.feedPerToothMm', unitOf: 'atHand' },
  width: { path: 'milling.widthMm', unitOf: 'form' }, helix: { path: 'milling.helixDeg' },
  drill: { path: 'drilling.diameterMm', unitOf: 'form' }, drillFeed: { path: 'drilling.feedMm', unitOf: 'atHand' }, kd: { path: 'drilling.kd' }, wear: { path: 'drilling.wear' },
  yieldMPa: { path: 'yieldMPa' },
}

export type HoldUnits = { readonly form: LengthUnit; readonly atHand: LengthUnit }
/** The unit of a length; null: it is none. */
export function holdUnit(field: HoldNumber, units: HoldUnits): LengthUnit | null {
  const { unitOf } = fields[field]
  return unitOf === undefined ? null : units[unitOf]
}

/** Which field a refusal is about; null: none of these. */
export function holdFieldOf({ facts }: Refusal): HoldNumber | null {
  return (Object.keys(fields) as HoldNumber[]).find((field) => fields[field].path === facts['field']) ?? null
}

/** What the text of a field would be refused for as it stands, or null: it can be read, or nothing is typed. */
export function holdTextRefusal(field: HoldNumber, text: string, units: HoldUnits): Refusal | null {
  if (text.trim() === '') return null
  const read = attempt(() => readHoldText(field, text, units))
  return read instanceof Refusal ? read : null
}

/** @throws Refusal as `readSizeMm` and `readNumber`, `size-not-positive`; only a helix may be 0 */
function readHoldText(field: HoldNumber, text: string, units: HoldUnits): number {
  const { path } = fields[field], unit = holdUnit(field, units)
  if (unit !== null) return readSizeMm(text, unit, path)
  const value = readNumber(text, path)
  if (value <= 0 && field !== 'helix') throw new Refusal('size-not-positive', { field: path, given: text, needed: { above: 0 } })
  return value
}

type Asked = {
  readonly question: SetupQuestion
  readonly choice: Pick<Choice, 'gripMm' | 'stickOutMm'>
  readonly drilled: DrillPlace
  readonly jaws: Pick<JawSet, 'face'>
  readonly side: NonNullable<SetupForm['side']>
  /** Of the steel that was named; null: none was. */
  readonly force: { readonly kc11MPa: number; readonly mc: number } | null
  readonly units: HoldUnits
}

/** What is still to be given: for the clamp, without which nothing is worked out, and for milling and drilling once they were begun. */
export type StillToGive = { readonly [of in 'clamp' | 'milling' | 'drilling']: readonly (HoldNumber | 'group' | 'betweenJaws' | 'alongJaws' | 'depth' | 'clamp')[] }

export function stillToGive(typed: HoldTyped, { question: { part, cuts }, drilled, force }: Pick<Asked, 'question' | 'drilled' | 'force'>): StillToGive {
  const lacks = <Field extends HoldField>(...all: readonly Field[]) => all.filter((field) => !isTyped(typed[field]))
  const begun = (...all: readonly HoldField[]) => lacks(...all).length < all.length
  const steel = force === null ? ['group' as const] : [], depth = deepestOverJawMm(cuts) === null ? ['depth' as const] : []
  return {
    clamp: [
      ...(part.betweenJawsMm === null ? ['betweenJaws'] as const : []), ...(part.alongJawsMm === null ? ['alongJaws'] as const : []),
      ...(isTyped(typed.forceN) ? [] : begun('torqueNm', 'lead') ? lacks('torqueNm', 'lead') : ['clamp'] as const),
    ],
    milling: begun('diameter', 'teeth', 'feed', 'width', 'helix', 'group') ? [...lacks('diameter', 'teeth', 'feed', 'width'), ...steel, ...depth] : [],
    drilling: begun('drill', 'drillFeed', 'kd', 'wear') ? [...(drilled.largestMm === null ? lacks('drill') : []), ...lacks('drillFeed', 'kd')] : [],
  }
}

/**
 * The case of `hold` for the choice looked at, in the keys of the calculation; null while no clamp force can be worked out.
 *
 * @throws Refusal of the texts
 */
export function holdCase(typed: HoldTyped, asked: Asked): object | null {
  const { question: { part, cuts, vise, wishes }, choice, drilled, jaws, side, force, units } = asked, lacks = stillToGive(typed, asked)
  if (lacks.clamp.length > 0) return null
  const read = (field: HoldNumber) => readHoldText(field, typed[field], units), readOr = <Other>(field: HoldNumber, other: Other) => (isTyped(typed[field]) ? read(field) : other)
  const clamp = isTyped(typed.forceN) ? { forceN: read('forceN') } : { torqueNm: read('torqueNm'), leadMm: read('lead') }
  const milling = isTyped(typed.diameter) && lacks.milling.length === 0 ? {
    ...force, depthMm: deepestOverJawMm(cuts), widthMm: read('width'), diameterMm: read('diameter'),
    teeth: read('teeth'), feedPerToothMm: read('feed'), helixDeg: readOr('helix', 0),
  } : null
  const drilling = isTyped(typed.kd) && lacks.drilling.length === 0 ? {
    diameterMm: readOr('drill', drilled.largestMm), feedMm: read('drillFeed'), kd: read('kd'), wear: readOr('wear', commonWear),
    splitPoint: typed.point === 'split', carried: drilled.carried, betweenBarsMm: drilled.betweenBarsMm,
  } : null
  return {
    part: { betweenJawsMm: part.betweenJawsMm, alongJawsMm: part.alongJawsMm, heightMm: part.heightMm, shape: part.shape },
    gripMm: choice.gripMm, stickOutMm: choice.stickOutMm, ...(vise.jawWidthMm === undefined ? {} : { jawWidthMm: vise.jawWidthMm }),
    face: jaws.face, surface: surfaceOf(side), clamp, ...(milling && { milling }), ...(drilling && { drilling }),
    ...(isTyped(typed.yieldMPa) ? { yieldMPa: read('yieldMPa') } : {}),
    ...(wishes.toleranceUm === null ? {} : { toleranceUm: wishes.toleranceUm }),
  }
}

/** What the calculation calls the side at the fixed jaw; one that nobody told counts as ground. */
function surfaceOf(side: Asked['side']): 'ground' | 'machined' | 'unmachined' {
  if (side === 'machined') return 'machined'
  return side === 'sawn' || side === 'cast' ? 'unmachined' : 'ground'
}

const isTyped = (text: string): boolean => text.trim() !== ''
