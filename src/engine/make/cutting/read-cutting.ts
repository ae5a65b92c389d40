import type { Cited } from '#model/cited.ts'
import { cutterMaterials, type CutterData, type SpecificForce, type SteelGroup, type SteelState, steelStates } from '#model/cutting-data.ts'
import { Refusal } from '#model/refusal.ts'
import { cutterEMPa } from '#engine/make/cutting/deflection.ts'
import type { Cutter, CuttingQuestion } from '#engine/make/cutting/side-pass.ts'
import type { Machine } from '#engine/make/cutting/speed.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { refuseNotPositive } from '#engine/setup/seat/read-part.ts'

/** What a case may name instead of bringing it along. */
export type CuttingBooks = { readonly forces: readonly SpecificForce[]; readonly cutters: readonly CutterData[]; readonly steels: readonly SteelGroup[] }

const mostMPa = 1e6, mostRpm = 1e6, mostKw = 1e6, mostPasses = 200, mostSpeeds = 100, mostTeeth = 100

/** Widest roughing pass as a share of the diameter. @source SIDE-MILLING */
const roughShare = 0.3

/** Where an exponent is not printed: that of annealed and of tempered tool steel. Common practice, no source. */
const neighboursMc = 0.23

type Given = { readonly [key in 'roughMm' | 'finishMm' | 'speedMPerMin' | 'rpm' | 'feedPerToothMm']: number | null }

/** A case as read, before the books are looked into. */
export type CuttingCase = Pick<CuttingQuestion, 'machine' | 'depthMm' | 'lengthMm' | 'stockMm' | 'springPass' | 'overrunMm'> & Given & {
  readonly steel: string | null
  readonly state: SteelState | null
  readonly group: string | null
  readonly kc11MPa: number | null
  readonly mc: number | null
  readonly cutter: Cutter
}

export function readCutting(raw: RawObject, { forces, steels }: CuttingBooks): CuttingCase {
  const hasForce = raw.has('kc11MPa'), hasGroup = raw.has('group')
  return {
    steel: raw.has('steel') || !(hasForce || hasGroup) ? raw.word('steel', [...new Set(steels.map(({ steel }) => steel))]) : null,
    state: raw.has('state') ? raw.word('state', steelStates) : null, group: hasGroup ? raw.word('group', forces.map(({ group }) => group)) : null,
    kc11MPa: raw.numberOr('kc11MPa', null, mostMPa), mc: hasForce ? raw.number('mc') : raw.numberOr('mc', null),
    cutter: raw.object('cutter', readCutter)!, machine: raw.objectOr('machine', readMachine, unlimited),
    depthMm: raw.number('depthMm'), lengthMm: raw.number('lengthMm'), stockMm: raw.number('stockMm'), roughMm: raw.numberOr('roughMm', null), finishMm: raw.numberOr('finishMm', null),
    springPass: raw.yesNoOr('springPass', true), overrunMm: raw.numberOr('overrunMm', 2),
    speedMPerMin: raw.numberOr('speedMPerMin', null), rpm: raw.numberOr('rpm', null, mostRpm), feedPerToothMm: raw.numberOr('feedPerToothMm', null),
  }
}

function readCutter(raw: RawObject): Cutter {
  const material = raw.wordOr('material', cutterMaterials, 'carbide')
  return {
    diameterMm: raw.number('diameterMm'), teeth: raw.count('teeth'), material, stickOutMm: raw.number('stickOutMm'), helixDeg: raw.numberOr('helixDeg', 30), eMPa: raw.numberOr('eMPa', cutterEMPa[material], 1e7),
  }
}

/** Of the motor's power; common practice, a handbook gives 0.7 to 0.9 (from memory). */
const commonEfficiency = 0.8
const unlimited: Machine = { leastRpm: null, mostRpm: null, speedsRpm: null, powerKw: null, efficiency: commonEfficiency, mostFeedMmPerMin: null }

const readMachine = (raw: RawObject): Machine => ({
  leastRpm: raw.numberOr('leastRpm', null, mostRpm), mostRpm: raw.numberOr('mostRpm', null, mostRpm), speedsRpm: raw.has('speedsRpm') ? raw.numbers('speedsRpm', mostRpm, mostSpeeds) : null,
  powerKw: raw.numberOr('powerKw', null, mostKw), efficiency: raw.numberOr('efficiency', commonEfficiency), mostFeedMmPerMin: raw.numberOr('mostFeedMmPerMin', null),
})

/**
 * The question of a case, with what the books add where the case leaves it open.
 *
 * @throws Refusal `size-not-positive`, `value-not-allowed` (speeds, efficiency, helix), `steel-state-unknown`, `no-cutting-data`, `cut-wider-than-cutter`, `too-many` (passes, teeth)
 */
export function cuttingQuestionFrom(given: CuttingCase, books: CuttingBooks): CuttingQuestion {
  refuseSizes(given)
  const { cutter, machine, depthMm, lengthMm, stockMm, springPass, overrunMm, rpm } = given, steel = steelOf(given, books), group = given.group ?? steel?.dataGroup ?? null
  const force = forceOf(given, books, steel), data = books.cutters.find((row) => row.group === group && row.material === cutter.material) ?? null
  const need = (field: keyof Given, usual: number | null): number => {
    const value = given[field] ?? usual
    if (value === null) throw new Refusal('no-cutting-data', { field, given: null, needed: 'a value of your own', group, material: cutter.material })
    return value
  }
  const feedPerToothMm = need('feedPerToothMm', data === null ? null : data.feed.start * (data.feed.per === 'diameter' ? cutter.diameterMm : 1))
  const finishMm = need('finishMm', data === null ? null : (data.finishMm[0] + data.finishMm[1]) / 2), roughMm = need('roughMm', roughShare * cutter.diameterMm)
  for (const [field, widthMm] of Object.entries({ roughMm, finishMm })) if (widthMm > cutter.diameterMm) throw new Refusal('cut-wider-than-cutter', { field, given: widthMm, needed: { mostMm: cutter.diameterMm } })
  if (stockMm / roughMm > mostPasses) throw new Refusal('too-many', { field: 'roughMm', given: Math.ceil(stockMm / roughMm), needed: mostPasses })
  return {
    force, data, hardened: steel?.state === 'hardened' || group === '38' || group === '39', cutter, machine, depthMm, lengthMm, stockMm, roughMm, finishMm, springPass, overrunMm,
    speedMPerMin: rpm === null ? need('speedMPerMin', data?.fromMPerMin ?? null) : (given.speedMPerMin ?? 0), rpm, feedPerToothMm,
  }
}

function refuseSizes({ cutter, machine, overrunMm, mc, ...rest }: CuttingCase): void {
  const { depthMm, lengthMm, stockMm, roughMm, finishMm, speedMPerMin, rpm, feedPerToothMm, kc11MPa } = rest, { leastRpm, mostRpm, powerKw, mostFeedMmPerMin, efficiency, speedsRpm } = machine
  const sizes = { depthMm, lengthMm, stockMm, roughMm, finishMm, speedMPerMin, rpm, feedPerToothMm, kc11MPa }, { diameterMm, teeth, stickOutMm, eMPa } = cutter
  const all = [...Object.entries(sizes), ...Object.entries({ diameterMm, teeth, stickOutMm, eMPa }).map(([key, value]) => [`cutter.${key}`, value] as const),
    ...Object.entries({ leastRpm, mostRpm, powerKw, mostFeedMmPerMin, efficiency }).map(([key, value]) => [`machine.${key}`, value] as const), ...(speedsRpm ?? []).map((value, k) => [`machine.speedsRpm[${k}]`, value] as const)]
  for (const [field, value] of all) if (value !== null) refuseNotPositive(value, field)
  if (teeth > mostTeeth) throw new Refusal('too-many', { field: 'cutter.teeth', given: teeth, needed: mostTeeth })
  const allowed = (isRight: boolean, field: string, value: number, needed: string) => { if (!isRight) throw new Refusal('value-not-allowed', { field, given: value, needed }) }
  allowed(efficiency <= 1, 'machine.efficiency', efficiency, 'at most 1')
  allowed(speedsRpm?.length !== 0, 'machine.speedsRpm', 0, 'at least one speed')
  allowed(leastRpm === null || mostRpm === null || leastRpm <= mostRpm, 'machine.leastRpm', leastRpm ?? 0, 'at most the highest speed')
  allowed(overrunMm >= 0, 'overrunMm', overrunMm, 'at least 0')
  allowed(mc === null || (mc >= 0 && mc < 1), 'mc', mc ?? 0, 'from 0 to below 1')
  allowed(cutter.helixDeg >= 0 && cutter.helixDeg <= 80, 'cutter.helixDeg', cutter.helixDeg, 'from 0 to 80')
}

function steelOf({ steel, state }: CuttingCase, { steels }: CuttingBooks): SteelGroup | null {
  if (steel === null) return null
  const rows = steels.filter((row) => row.steel === steel), found = state === null ? rows[0] : rows.find((row) => row.state === state)
  if (found === undefined) throw new Refusal('steel-state-unknown', { field: 'state', given: state, needed: rows.map((row) => row.state), steel })
  return found
}

const own: Cited = { source: 'SHOP', standing: 'shop' }

function forceOf({ kc11MPa, mc, group }: CuttingCase, { forces }: CuttingBooks, steel: SteelGroup | null): CuttingQuestion['force'] {
  if (kc11MPa !== null) return { kc11MPa, mc: mc!, assumedMc: false, ...own }
  const row = forces.find((one) => one.group === (group ?? steel?.forceGroup))!, known = mc ?? row.mc
  return { kc11MPa: row.kc11MPa, mc: known ?? neighboursMc, assumedMc: known === null, source: row.source, standing: row.standing }
}
