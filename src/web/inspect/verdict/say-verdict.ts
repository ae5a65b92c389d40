import type { Checked, CheckedBar } from '#engine/inspect/checked.ts'
import type { UseVerdict } from '#engine/inspect/uses-proved.ts'
import { mmPerInch, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { listOf } from '#words/wording.ts'
import type { Judged } from '#engine/inspect/judged.ts'

/** What it is good for: `Proved for drilling and milling. Not proved for fine milling. Out for grinding.` */
export function sayUses(uses: readonly UseVerdict[]): string {
  const of = (verdict: UseVerdict['verdict'], begin: string) => {
    const names = uses.filter((one) => one.verdict === verdict).map(({ use }) => use)
    return names.length === 0 ? [] : [`${begin} ${listOf(names)}.`]
  }
  return [...of('proved', 'Proved for'), ...of('not-proved', 'Not proved for'), ...of('out', 'Out for')].join(' ')
}

/** The finest use that is proved; null: none. */
export function finestProved({ uses }: Pick<Judged, 'uses'>): string | null {
  return uses.findLast(({ verdict }) => verdict === 'proved')?.use ?? null
}

/** Micrometres to a tenth; what is proved is never rounded down. */
export function sayUm(um: number | null, { decimalMark }: Units, how: { readonly sign?: boolean; readonly up?: boolean } = {}): string {
  if (um === null) return '–'
  return `${how.sign && um > 0 ? '+' : ''}${wordNumber(how.up ? Math.ceil(um * 10 - 1e-6) / 10 : um, decimalMark, null, 1)}`
}

/** The shape of a bar in µm, as far as it was read; with either face up its bend apart. */
export function shapeFigures({ shape, turnOver }: Pick<CheckedBar, 'shape' | 'turnOver'>, units: Units): readonly (readonly [name: string, value: string])[] {
  const um = (value: number | null) => sayUm(value, units), signed = (value: number | null) => sayUm(value, units, { sign: true })
  if (turnOver) return [['parallel to', um(turnOver.parallelismUm)], ['bow to face A', signed(turnOver.bowUm)], ['crown', signed(turnOver.heightCrownUm)]]
  if (!shape) return []
  const { parallelismUm, taperUm, crownUm, twistUm } = shape
  return [
    ['parallel to', um(parallelismUm)], ['taper', signed(taperUm)],
    ...(crownUm === null ? [] : [[crownUm < 0 ? 'hollow' : 'crown', um(Math.abs(crownUm))] as const]), ...(twistUm === null ? [] : [['twist', signed(twistUm)] as const]),
  ]
}

/** A height to the micrometre, or its like in inches, with its expanded uncertainty (k = 2) where that is known. */
export function sayHeightOf({ heightMm, uHeightUm }: Pick<CheckedBar, 'heightMm' | 'uHeightUm'>, { length, decimalMark }: Units): string {
  if (heightMm === null) return '?'
  const inches = length === 'in', value = inches ? wordNumber(heightMm / mmPerInch, decimalMark, 5) : wordNumber(heightMm, decimalMark, Math.abs(heightMm * 1000 - Math.round(heightMm * 1000)) < 1e-6 ? 3 : 4)
  return uHeightUm === null ? value : `${value} ± ${wordNumber(2 * uHeightUm, decimalMark, null, 1)} µm`
}

/** Which way round the second bar lies better; null: not known, or all the same. */
export function sayWayRound({ pair }: Checked, units: Units): string | null {
  if (pair === null) return null
  switch (pair.betterWay) {
    case 'as laid': return `Better as laid: ${sayUm(pair.worstAsLaidUm, units)} µm at the worst place; turned end for end ${sayUm(pair.worstTurnedUm, units)}.`
    case 'turned': return `Turn the second bar end for end: ${sayUm(pair.worstTurnedUm, units)} µm at the worst place instead of ${sayUm(pair.worstAsLaidUm, units)}.`
    case 'either': return `Either way round: ${sayUm(pair.worstAsLaidUm, units)} µm at the worst place.`
    case null: return null
  }
}
