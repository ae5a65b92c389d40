import type { Units } from '#model/shop-record.ts'

/** Trade words that differ between the regions; one switch for all of them. */
export type Terms = {
  readonly vise: string
  readonly movingJaw: string
  readonly indicator: string
  readonly gauge: string
}

const byRegion: { readonly [region in Units['words']]: Terms } = {
  US: { vise: 'vise', movingJaw: 'movable jaw', indicator: 'indicator', gauge: 'gage' },
  UK: { vise: 'vice', movingJaw: 'moving jaw', indicator: 'clock', gauge: 'gauge' },
}

export function termsFor(words: Units['words']): Terms {
  return byRegion[words]
}

/** What is shown until a shop has said otherwise. */
export const plainUnits: Units = { length: 'mm', decimalMark: '.', words: 'US' }
