import { type Units } from '#model/shop-record.ts'
import { withUnit, wordLength, wordNumber } from '#model/length.ts'
import { inColumns, plainText } from '#cli/columns.ts'
import { wrapped } from '#cli/wrapped.ts'
import type { CheckOfShop } from '#tasks/inspect/check-of-shop.ts'
import { calledSize } from '#words/say-bar.ts'
import { sayFinding } from '#words/say-finding.ts'
import { plusMinus } from '#words/say-uncertainty.ts'
import { verdictWords } from '#words/verdict-words.ts'

/** A check as text: what was taken, each bar, two as a pair, what is proved, what to look at again. */
export function checkText({ check, checked, bars, replacedBy }: Omit<CheckOfShop, 'bars'> & { readonly bars: readonly { readonly id: string; readonly name: string; readonly code: string }[] }, units: Units, columns: number): string {
  const heights = new Map(checked.bars.map((bar) => [bar.id, bar.heightMm]))
  const nameOf = (id: string): string => {
    const bar = bars.find((one) => one.id === id), heightMm = heights.get(id) ?? null
    return bar ? plainText([heightMm === null ? '' : calledSize(heightMm, units), bar.name || bar.code].filter((word) => word !== '').join(' ')) : id
  }
  const um = (value: number | null | undefined): string => (value === null || value === undefined ? '–' : wordNumber(value, units.decimalMark, null, 1))
  const height = (mm: number | null): string => (mm === null ? '–' : wordLength(mm, units, { decimals: units.length === 'mm' ? 4 : 5 }))
  const sayUses = (of: readonly { readonly use: string; readonly limitUm: number; readonly verdict: keyof typeof verdictWords }[]): string =>
    of.map(({ use, limitUm, verdict }) => `${use} ${um(limitUm)} µm: ${verdictWords[verdict].word}`).join(' · ')
  const { took, zero, closing, temperature } = check
  const tools = [took?.instrument, took?.plate, took?.blocks].flatMap((tool) => (tool ? [plainText(tool.name)] : []))
  const head = [
    `${checkWords[check.method]}, ${check.atIso.slice(0, 16).replace('T', ' ')} UTC${check.person === '' ? '' : `, ${plainText(check.person)}`}. Check ${check.id}.`,
    ...(replacedBy === null ? [] : [`Replaced by check ${replacedBy}.`]), ...(check.replaces === null ? [] : [`It replaces check ${check.replaces}.`]),
    [
      ...tools,
      ...(zero ? [`zero on ${zero.on === 'block' ? 'a block of' : nameOf(zero.bar)} ${withUnit(zero.heightMm, units)}`] : []),
      ...(closing ? [`closing zero ${um(closing.um)} µm`] : []),
      ...(temperature ? [`${wordNumber(temperature.c, units.decimalMark)} °C`] : []),
    ].join(' · '),
  ].filter((line) => line !== '').map((line) => wrapped(line, columns)).join('')
  const table = inColumns([
    ['bar', `height ${units.length}`, '± µm', 'parallel µm', 'taper', 'crown', 'proved to µm'],
    ...checked.bars.map((bar) => [
      nameOf(bar.id), height(bar.heightMm), bar.uHeightUm === null ? '–' : um(2 * bar.uHeightUm),
      um(bar.turnOver ? bar.turnOver.parallelismUm : bar.shape?.parallelismUm), um(bar.shape?.taperUm), um(bar.turnOver ? bar.turnOver.heightCrownUm : bar.shape?.crownUm), um(bar.provedToUm),
    ]),
  ], [1, 2, 3, 4, 5, 6])
  const { pair, pairUses } = checked
  const pairLines = pair === null ? [] : [
    [
      `Pair: mean difference ${um(pair.meanDifferenceUm)} µm, at worst ${um(pair.worstAsLaidUm)} µm as laid`,
      pair.worstTurnedUm === null ? '' : `, ${um(pair.worstTurnedUm)} µm turned end for end`,
      pair.uncertainty ? ` (${plusMinus(pair.uncertainty.difference.u, units)})` : '',
      pair.provedToUm === undefined ? '.' : `; proved to ${um(pair.provedToUm)} µm.`,
    ].join(''),
    ...(pairUses.length > 0 ? [`Pair, by its difference and by both bars: ${sayUses(pairUses)}.`] : []),
  ]
  const barLines = checked.bars.flatMap((bar) => (bar.uses.length === 0 ? [] : [`${nameOf(bar.id)}: ${sayUses(bar.uses)}.`]))
  const said = checked.findings.map((finding) => wrapped(sayFinding(finding, units, nameOf), columns, '  - ')).join('')
  return `${head}\n${table}\n${[...barLines, ...pairLines].map((line) => wrapped(line, columns)).join('')}${said === '' ? '' : `\nTo look at\n${said}`}`
}

const checkWords = { 'stated': 'Told heights', 'compare': 'Compared at the plate', 'micrometer': 'Read by micrometer', 'turn-over': 'Read with either face up', 'rock': 'Rocked' } as const
