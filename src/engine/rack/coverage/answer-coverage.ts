import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { type Coverage, coverageOf } from '#engine/rack/coverage/coverage.ts'
import { readCoverageCase } from '#engine/rack/coverage/read-coverage.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import type { Ignored } from '#engine/read/read-case.ts'

/** The calculation `coverage`: one raw case in, its answer out. @throws Refusal as `readCoverageCase`, then as `coverageOf` */
export function answerCoverage(raw: unknown): Coverage & Ignored & { readonly findings: readonly Finding[]; readonly sum: readonly Sum[] } {
  const { question, bars, ignored } = readCoverageCase(raw), coverage = coverageOf(question, indexRack(bars))
  return { ...coverage, findings: question.places ? [] : [{ code: 'places-not-looked-at', facts: {} }], ignored, sum: coverageSums(coverage) }
}

/** How the shares of a coverage come about. */
export function coverageSums({ setups, served, share, next }: Pick<Coverage, 'setups' | 'served' | 'share' | 'next'>): readonly Sum[] {
  const sources = ['SETUP-RULES']
  return [
    { formula: 'share-served', result: { name: 'share', value: share }, inputs: { served, setups }, sources },
    ...next.map(({ gained }, k) => ({ formula: 'share-with-next', result: { name: `next[${k}].served`, value: served + gained }, inputs: { served, gained }, sources: ['STABBING'] })),
  ]
}
