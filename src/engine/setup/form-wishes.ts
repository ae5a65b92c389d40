import { readLengthMm, type LengthUnit } from '#model/length.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { Refusal } from '#model/refusal.ts'
import type { Wishes } from '#model/wishes.ts'
import { holeRunThroughMm, milledRunThroughMm } from '#engine/setup/read-cut.ts'
import { commonMatchUm, commonWishes } from '#engine/setup/read-wishes.ts'

/** What a form starts from where nothing is typed. */
export type FormDefaults = {
  /** The most that a grip left to *auto* comes to. */
  readonly autoGripMm: number
  readonly airMm: number
  readonly holeAirMm: number
  readonly bedAirMm: number
  readonly gapMm: number
  readonly holeRunThroughMm: number
  readonly milledRunThroughMm: number
}

const inch = (text: string) => readLengthMm(text, 'in')

/** Each unit its own round numbers. Common practice, no source. @source SETUP-RULES */
export const formDefaults: { readonly [unit in LengthUnit]: FormDefaults } = {
  mm: {
    autoGripMm: 10, airMm: commonWishes.airMm, holeAirMm: commonWishes.holeAirMm, bedAirMm: commonWishes.bedAirMm, gapMm: commonWishes.gapMm,
    holeRunThroughMm, milledRunThroughMm,
  },
  in: {
    autoGripMm: inch('3/8'), airMm: inch('.040'), holeAirMm: inch('.020'), bedAirMm: inch('.040'), gapMm: inch('1/16'),
    holeRunThroughMm: inch('1/16'), milledRunThroughMm: inch('.020'),
  },
}

/** A length of the form; null where nothing was typed. */
export const typedMm = (text: string, unit: LengthUnit, field: string): number | null => (text.trim() === '' ? null : readLengthMm(text, unit, field))

/**
 * The wishes of a form.
 *
 * @param workedMm   what is left of the part under the deepest cut over a jaw: a grip left to *auto* is at most 0.6 of it
 * @param overJaw    whether a cutter passes over a jaw; where none does, the wish to stand proud is the only air
 * @throws Refusal of `readLengthMm`, `wish-negative` for `proud`
 */
export function wishesFrom(form: SetupForm, workedMm: number, overJaw: boolean): Wishes {
  const { unit } = form, start = formDefaults[unit]
  const wish = (name: 'air' | 'holeAir' | 'bedAir' | 'gap', other: number) => typedMm(form.wishes[name], unit, `wishes.${name}`) ?? other
  const proudMm = typedMm(form.proud, unit, 'proud'), airMm = wish('air', start.airMm), toleranceMm = typedMm(form.wishes.tolerance, unit, 'wishes.tolerance')
  if (proudMm !== null && proudMm < 0) throw new Refusal('wish-negative', { field: 'proud', of: 'wishes.airMm', given: proudMm, needed: 0 })
  return {
    ...commonWishes,
    gripMm: gripFrom(form, workedMm),
    airMm: proudMm === null ? airMm : overJaw ? Math.max(airMm, proudMm) : proudMm,
    holeAirMm: wish('holeAir', start.holeAirMm), bedAirMm: wish('bedAir', start.bedAirMm), gapMm: wish('gap', start.gapMm),
    toleranceUm: toleranceMm === null ? null : toleranceMm * 1000,
    use: form.use,
    matchUm: commonMatchUm[form.use],
  }
}

function gripFrom(form: SetupForm, workedMm: number): Wishes['gripMm'] {
  const text = form.wishes.grip.trim().toLowerCase()
  if (text !== '' && text !== 'auto') return readLengthMm(text, form.unit, 'wishes.grip')
  return form.unit === 'mm' ? 'auto' : Math.max(0, Math.min(formDefaults.in.autoGripMm, 0.6 * workedMm))
}
