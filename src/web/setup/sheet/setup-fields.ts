import { formDefaults } from '#engine/setup/form-wishes.ts'
import { type LengthUnit, wordLength } from '#model/length.ts'
import type { CutForm, HoleForm, SetupForm } from '#model/setup-form.ts'
import type { Terms } from '#words/terms.ts'

/** One typed field of the form: where it is kept, what stands under it, and what counts while it is empty. */
export type SetupField = { readonly path: string; readonly label: string; readonly more?: string; readonly ifEmpty?: string }


/** The part, in the order in which it is asked: height, off the top, between jaws, along. */
export function partFields({ shape }: SetupForm): readonly SetupField[] {
  const along = { path: 'along', label: 'along', more: 'the jaws' }
  const offTop = { path: 'offTop', label: 'off the top', ifEmpty: '0' }
  if (shape === 'round') return [{ path: 'height', label: 'diameter', more: 'of the part' }, offTop, along]
  return [{ path: 'height', label: 'height', more: 'of the part' }, offTop, { path: 'between', label: 'between jaws' }, along]
}

export function cutFields(cut: CutForm, index: number, unit: LengthUnit, terms: Terms): readonly SetupField[] {
  const at = `cuts[${index}]`, of = `of ${cut.kind} ${index + 1}`
  switch (cut.kind) {
    case 'hole': return holeFields(cut, at, of, unit, terms)
    case 'end': return [{ path: `${at}.stock`, label: 'to come off', more: of }]
    case 'step':
    case 'slot': return [
      { path: `${at}.depth`, label: 'deep', more: of },
      ...(cut.rect === null ? [] : rectFields(`${at}.rect`, of)),
      { path: `${at}.runThrough`, label: 'run-through', more: of, ifEmpty: sizeIn(unit, 'milledRunThroughMm') },
    ]
  }
}

export function hollowFields(index: number): readonly SetupField[] {
  return rectFields(`hollows[${index}]`, `of hollow ${index + 1}`)
}

export function wishFields(unit: LengthUnit): readonly SetupField[] {
  return [
    { path: 'wishes.grip', label: 'grip', ifEmpty: 'auto' },
    { path: 'wishes.air', label: 'clear of jaws', ifEmpty: sizeIn(unit, 'airMm') },
    { path: 'proud', label: 'top proud by', ifEmpty: '–' },
    { path: 'wishes.tolerance', label: 'tolerance', ifEmpty: 'none' },
    { path: 'wishes.holeAir', label: 'hole to bar', ifEmpty: sizeIn(unit, 'holeAirMm') },
    { path: 'wishes.bedAir', label: 'above the bed', ifEmpty: sizeIn(unit, 'bedAirMm') },
    { path: 'wishes.gap', label: 'between bars', ifEmpty: sizeIn(unit, 'gapMm') },
  ]
}

const sizeIn = (unit: LengthUnit, name: 'airMm' | 'holeAirMm' | 'bedAirMm' | 'gapMm' | 'holeRunThroughMm' | 'milledRunThroughMm'): string =>
  wordLength(formDefaults[unit][name], { length: unit, decimalMark: '.' })

function holeFields(hole: HoleForm, at: string, of: string, unit: LengthUnit, terms: Terms): readonly SetupField[] {
  const jaw = hole.from === 'fixed' ? 'fixed jaw' : terms.movingJaw
  return [
    { path: `${at}.diameter`, label: '⌀', more: of },
    { path: `${at}.across`, label: `from ${jaw}`, more: of },
    { path: `${at}.along`, label: 'from left end', more: of },
    ...(hole.through
      ? [{ path: `${at}.runThrough`, label: 'run-through', more: of, ifEmpty: sizeIn(unit, 'holeRunThroughMm') }]
      : [{ path: `${at}.depth`, label: 'deep', more: of }]),
    ...(hole.tool === 'drill' ? [{ path: `${at}.pointAngle`, label: 'point angle', more: of, ifEmpty: '118' }] : []),
    ...(hole.tool === 'tap' ? [{ path: `${at}.pitch`, label: 'pitch', more: of }, { path: `${at}.leadThreads`, label: 'lead threads', more: of, ifEmpty: '4' }] : []),
  ]
}

function rectFields(at: string, of: string): readonly SetupField[] {
  return [
    { path: `${at}.x0`, label: 'along, from', more: of }, { path: `${at}.x1`, label: 'along, to', more: of },
    { path: `${at}.y0`, label: 'across, from', more: of }, { path: `${at}.y1`, label: 'across, to', more: of },
  ]
}
