import { Refusal } from '#model/refusal.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { refuseNotPositive } from '#engine/setup/seat/read-part.ts'
import { clampForceN, commonEfficiency, leastEfficiency, mostEfficiency, type Screw } from '#engine/setup/hold/clamp-force.ts'
import { type Drilling, drillingForce, type MillingCut, millingForce } from '#engine/setup/hold/cutting-forces.ts'
import { faces, frictionAt, materials, surfaces } from '#engine/setup/hold/friction.ts'
import { contacts, type HoldQuestion } from '#engine/setup/hold/hold.ts'

const mostN = 1e9, mostMPa = 1e7
/** A vise rubs with less, and no screw gives back more than it takes: 7 for 0.07 is a slip of the hand. */
const mostFriction = 1, mostShare = 1

type Torque = { readonly torqueNm: number; readonly screw: Screw }
type Given<Cut, Force> = { readonly force: Force; readonly cut: null } | { readonly force: null; readonly cut: Cut }
type Drilled = { readonly carried: boolean; readonly betweenBarsMm: number | null }

/** A case as read; forces that were not given are worked out when it has been found sound. */
export type HoldCase = Omit<HoldQuestion, 'clampN' | 'milling' | 'drilling'> & {
  readonly clamp: { readonly forceN: number; readonly by: null } | { readonly forceN: null; readonly by: Torque }
  readonly mill: Given<MillingCut, { readonly forceN: number; readonly pullN: number }> | null
  readonly drill: (Given<Drilling, { readonly thrustN: number; readonly torqueNm: number }> & Drilled) | null
}

export function readHold(raw: RawObject): HoldCase {
  const part = raw.object('part', (object) => ({ betweenJawsMm: object.number('betweenJawsMm'), alongJawsMm: object.number('alongJawsMm'), heightMm: object.number('heightMm'), shape: object.wordOr('shape', ['block', 'round'] as const, 'block') }))
  const contact = raw.wordOr('contact', contacts, 'flat'), friction = readFriction(raw)
  return {
    betweenJawsMm: part?.betweenJawsMm ?? NaN, alongJawsMm: part?.alongJawsMm ?? NaN, heightMm: part?.heightMm ?? NaN, jawWidthMm: raw.numberOr('jawWidthMm', null),
    gripMm: raw.number('gripMm'), stickOutMm: raw.number('stickOutMm'), contact: part?.shape === 'round' ? 'line' : contact, friction,
    clamp: raw.object('clamp', readClamp)!, mill: raw.objectOr('milling', readMilling, null), drill: raw.objectOr('drilling', readDrilling, null),
    factors: raw.objectOr('factors', (object) => ({ milling: object.numberOr('milling', commonFactors.milling), drilling: object.numberOr('drilling', commonFactors.drilling) }), commonFactors),
    eMPa: raw.numberOr('eMPa', 210_000, mostMPa), nu: raw.numberOr('nu', 0.3), yieldMPa: raw.numberOr('yieldMPa', null, mostMPa), toleranceUm: raw.numberOr('toleranceUm', null),
  }
}

/** Safety factors; common practice, no source. @source HOLD-RULES */
const commonFactors = { milling: 3, drilling: 2 }

function readFriction(raw: RawObject): number {
  const face = raw.wordOr('face', faces, 'smooth'), surface = raw.wordOr('surface', surfaces, 'ground'), material = raw.wordOr('material', materials, 'steel'), wet = raw.yesNoOr('wet', true)
  return raw.numberOr('friction', frictionAt(face, surface, material, wet), mostFriction)
}

function readClamp(raw: RawObject): HoldCase['clamp'] {
  if (raw.has('forceN')) return { forceN: raw.number('forceN', mostN), by: null }
  const torqueNm = raw.number('torqueNm'), leadMm = raw.number('leadMm'), efficiency = raw.numberOr('efficiency', commonEfficiency, mostShare)
  const thread = raw.objectOr('thread', (object) => ({
    diameterMm: object.number('diameterMm'), pitchMm: object.numberOr('pitchMm', leadMm), flankDeg: object.numberOr('flankDeg', 15), friction: object.numberOr('friction', 0.15, mostFriction),
    collarRadiusMm: object.number('collarRadiusMm'), collarFriction: object.numberOr('collarFriction', 0.15, mostFriction),
  }), null)
  return { forceN: null, by: { torqueNm, screw: { leadMm, thread, efficiency } } }
}

function readMilling(raw: RawObject): NonNullable<HoldCase['mill']> {
  if (raw.has('forceN')) return { force: { forceN: raw.number('forceN', mostN), pullN: raw.numberOr('pullN', 0, mostN) }, cut: null }
  return {
    force: null,
    cut: {
      kc11MPa: raw.number('kc11MPa', mostMPa), mc: raw.number('mc'), depthMm: raw.number('depthMm'), widthMm: raw.number('widthMm'), diameterMm: raw.number('diameterMm'),
      teeth: raw.count('teeth'), feedPerToothMm: raw.number('feedPerToothMm'), helixDeg: raw.numberOr('helixDeg', 0),
    },
  }
}

function readDrilling(raw: RawObject): NonNullable<HoldCase['drill']> {
  const where = { carried: raw.yesNoOr('carried', true), betweenBarsMm: raw.numberOr('betweenBarsMm', null) }
  if (raw.has('thrustN')) return { ...where, force: { thrustN: raw.number('thrustN', mostN), torqueNm: raw.number('torqueNm') }, cut: null }
  return { ...where, force: null, cut: { diameterMm: raw.number('diameterMm'), feedMm: raw.number('feedMm'), kd: raw.number('kd'), wear: raw.numberOr('wear', 1.3), splitPoint: raw.yesNoOr('splitPoint', false) } }
}

/** What a torque may give at the least and at the most where the screw's friction is not known. */
export type ClampRange = { readonly leastN: number; readonly mostN: number }

/**
 * The question of a case, its forces worked out.
 *
 * @throws Refusal `size-not-positive` (sizes, forces, friction, factors), `force-negative`, `cut-wider-than-cutter`, `angle-too-steep`
 */
export function holdQuestionFrom({ clamp, mill, drill, ...rest }: HoldCase): { readonly question: HoldQuestion; readonly range: ClampRange | null } {
  for (const key of ['betweenJawsMm', 'alongJawsMm', 'heightMm'] as const) refuseNotPositive(rest[key], `part.${key}`)
  for (const [key, given] of Object.entries({ gripMm: rest.gripMm, jawWidthMm: rest.jawWidthMm, friction: rest.friction, eMPa: rest.eMPa, yieldMPa: rest.yieldMPa, toleranceUm: rest.toleranceUm })) if (given !== null) refuseNotPositive(given, key)
  for (const key of ['milling', 'drilling'] as const) refuseNotPositive(rest.factors[key], `factors.${key}`)
  if (clamp.by === null) refuseNotPositive(clamp.forceN, 'clamp.forceN')
  else refuseTorque(clamp.by)
  if (mill !== null) refuseMilling(mill)
  if (drill !== null) refuseDrilling(drill)
  const atEfficiency = (efficiency: number) => clampForceN(clamp.by!.torqueNm, { ...clamp.by!.screw, efficiency })
  return {
    question: {
      ...rest, clampN: clamp.by === null ? clamp.forceN : clampForceN(clamp.by.torqueNm, clamp.by.screw),
      milling: mill === null ? null : mill.cut === null ? mill.force : millingForce(mill.cut),
      drilling: drill === null ? null : { ...(drill.cut === null ? drill.force : drillingForce(drill.cut)), carried: drill.carried, betweenBarsMm: drill.betweenBarsMm },
    },
    range: clamp.by !== null && clamp.by.screw.thread === null ? { leastN: atEfficiency(leastEfficiency), mostN: atEfficiency(mostEfficiency) } : null,
  }
}

function refuseTorque({ torqueNm, screw: { leadMm, thread, efficiency } }: Torque): void {
  for (const [key, given] of Object.entries({ torqueNm, leadMm, efficiency })) refuseNotPositive(given, `clamp.${key}`)
  if (thread === null) return
  for (const key of ['diameterMm', 'pitchMm'] as const) refuseNotPositive(thread[key], `clamp.thread.${key}`)
  for (const key of ['friction', 'collarRadiusMm', 'collarFriction', 'flankDeg'] as const) refuseBelowZero(thread[key], `clamp.thread.${key}`)
  refuseSteep(thread.flankDeg, 'clamp.thread.flankDeg')
}

function refuseMilling({ force, cut }: NonNullable<HoldCase['mill']>): void {
  if (cut === null) { refuseBelowZero(force.forceN, 'milling.forceN'); refuseBelowZero(force.pullN, 'milling.pullN'); return }
  for (const key of ['kc11MPa', 'depthMm', 'widthMm', 'diameterMm', 'teeth', 'feedPerToothMm'] as const) refuseNotPositive(cut[key], `milling.${key}`)
  refuseBelowZero(cut.mc, 'milling.mc')
  refuseBelowZero(cut.helixDeg, 'milling.helixDeg')
  refuseSteep(cut.helixDeg, 'milling.helixDeg')
  if (cut.widthMm > cut.diameterMm) throw new Refusal('cut-wider-than-cutter', { field: 'milling.widthMm', given: cut.widthMm, needed: { mostMm: cut.diameterMm } })
}

function refuseDrilling({ force, cut, betweenBarsMm }: NonNullable<HoldCase['drill']>): void {
  if (betweenBarsMm !== null) refuseNotPositive(betweenBarsMm, 'drilling.betweenBarsMm')
  if (cut === null) { refuseBelowZero(force.thrustN, 'drilling.thrustN'); refuseBelowZero(force.torqueNm, 'drilling.torqueNm'); return }
  for (const key of ['diameterMm', 'feedMm', 'kd', 'wear'] as const) refuseNotPositive(cut[key], `drilling.${key}`)
}

function refuseBelowZero(given: number, field: string): void {
  if (given < 0) throw new Refusal('force-negative', { field, given, needed: { least: 0 } })
}

function refuseSteep(given: number, field: string): void {
  if (given >= 90) throw new Refusal('angle-too-steep', { field, given, needed: { below: 90 } })
}
