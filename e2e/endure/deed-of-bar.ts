import { createHash } from 'node:crypto'
import { deedOfNewBars } from '#engine/rack/new-bars.ts'
import { codeFrom } from '#model/code.ts'
import type { Deed } from '#model/deed.ts'

/** A deed that adds one bar, the same for the same name: sent again it must change nothing. */
export function deedOfBar(name: string): { readonly bar: string; readonly deed: Deed } {
  let made = 0
  const by = { person: 'KM', device: 'endure', atIso: '2025-03-04T08:00:00.000Z', newId: () => `${name}-${(made += 1)}` }
  const bar = `bar-${name}`
  return {
    bar,
    deed: deedOfNewBars([{
      id: bar, code: codeFrom(createHash('sha256').update(name).digest(), 8), name, heightMm: 35, heightText: '35', thicknessMm: 8, lengthMm: 150,
      matesId: null, slotId: null, note: '', drillBar: false,
    }], by),
  }
}
