import { expect, test } from 'vitest'
import { situations } from '#model/situation.ts'
import { cautionsFor } from '#words/cautions.ts'
import { findingWords } from '#words/say-finding.ts'
import { refusalWords } from '#words/say-refusal.ts'
import { sumWords } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'
import { wordingFor } from '#words/wording.ts'

/** What only the other region says (docs/words.md); keys and options such as `--vise` are the same in both. */
const foreign = { US: /\b(vices?|moving jaw|clocks?|gauges?)\b/i, UK: /(?<!--|under )\b(vises?|movable jaw|indicators?|gages?)\b/i }

test.each(['US', 'UK'] as const)('every sentence is said in the words of the region: %s', (words) => {
  const units = { ...plainUnits, words }, wording = wordingFor(units)
  const said = [
    ...Object.entries({ ...findingWords, ...refusalWords }).map(([code, say]) => [code, say({}, wording)]),
    ...Object.entries(sumWords).map(([formula, { title }]) => [formula, title]),
    ...situations.flatMap((situation) => cautionsFor(new Set([situation]), units).map((line) => [situation, line])),
  ]
  expect(said.length).toBeGreaterThan(300)
  expect(said.filter(([, text]) => foreign[words].test(text!))).toEqual([])
})
