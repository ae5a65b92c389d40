import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { guiltyOf, type Guilty, type GuiltyQuestion, type Suspect } from '#engine/setup/guilty/guilty.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestMm } from '#engine/read/raw-object.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

export type GuiltyAnswer = Guilty & Ignored & { readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }

const longestUm = 1000 * longestMm

/**
 * The calculation `guilty`: one raw case in, its answer out; each suspect that is shown is a finding, the largest first.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (the distance), `uncertainty-negative`
 */
export function answerGuilty(raw: unknown): GuiltyAnswer {
  const { value: question, ignored } = readCase(raw, (object): GuiltyQuestion => ({
    y1Um: object.number('y1Um', longestUm), y2Um: object.number('y2Um', longestUm), y3Um: object.number('y3Um', longestUm),
    y4Um: object.numberOr('y4Um', null, longestUm), uUm: object.numberOr('uUm', null, longestUm), overMm: object.numberOr('overMm', null),
  }))
  const { overMm, uUm } = question
  if (overMm !== null && overMm <= touchMm) throw new Refusal('size-not-positive', { field: 'overMm', given: overMm, needed: { aboveMm: 0 } })
  if (uUm !== null && uUm < 0) throw new Refusal('uncertainty-negative', { field: 'uUm', given: uUm, needed: { least: 0 } })
  const guilty = guiltyOf(question)
  return { ...guilty, findings: findingsOf(guilty), ignored, sum: sumOf(question, guilty) }
}

const codes: { readonly [suspect in Suspect]: string } = { bars: 'guilty-bars', block: 'guilty-block', bed: 'guilty-bed', closing: 'guilty-closing' }

function findingsOf(guilty: Guilty): readonly Finding[] {
  const shown = guilty.order.filter((suspect) => guilty[suspect]!.shown)
  if (guilty.bars.uUm === null) return [{ code: 'guilty-not-known', facts: { largest: guilty.order[0]!, shareUm: guilty[guilty.order[0]!]!.shareUm } }]
  if (shown.length === 0) return [{ code: 'guilty-none', facts: { uUm: guilty.bars.uUm } }]
  return shown.map((suspect) => ({ code: codes[suspect], facts: { shareUm: guilty[suspect]!.shareUm, uUm: guilty[suspect]!.uUm } }))
}

function sumOf({ y1Um, y2Um, y3Um, y4Um, uUm }: GuiltyQuestion, { bars, block, bed, closing }: Guilty): readonly Sum[] {
  const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs'], source: string): Sum => ({ formula, result: { name, value }, inputs, sources: [source] })
  return [
    sum('guilty-bars', 'bars.shareUm', bars.shareUm, { y1Um, y2Um }, 'REVERSAL'),
    sum('guilty-block', 'block.shareUm', block.shareUm, { y1Um, y3Um }, 'REVERSAL'),
    sum('guilty-bed', 'bed.shareUm', bed.shareUm, { y2Um, y3Um }, 'REVERSAL'),
    ...(closing === null ? [] : [sum('guilty-closing', 'closing.shareUm', closing.shareUm, { y4Um, y1Um }, 'REVERSAL')]),
    ...(uUm === null ? [] : [sum('uncertainty-of-half', 'uHalfUm', bars.uUm, { uUm }, 'GUM')]),
    ...(uUm === null || closing === null ? [] : [sum('uncertainty-of-difference', 'uDifferenceUm', closing.uUm, { uUm }, 'GUM')]),
  ]
}
