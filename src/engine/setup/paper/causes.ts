export const meanings = [
  'seated', 'look-at-bars', 'corner', 'moving-side-up', 'fixed-side-up', 'end-up', 'twisted', 'one-corner', 'hung-up',
] as const
export type Meaning = (typeof meanings)[number]

/** What may be behind a whole side that is loose. */
export type Cause = 'jaw-lift' | 'high-bar-fixed-side' | 'high-bar-moving-side' | 'side-not-square' | 'fixed-jaw-leans'

/** What tells one cause from the others: the fault goes away, goes with the bar, goes with the part, or stays. */
export type Test = 'slacken-to-snug' | 'exchange-bars' | 'turn-part' | 'stays-throughout'

/** A cause, the test that shows it, and what to do about it: codes of the words. */
export type Told = { readonly cause: Cause; readonly test: Test; readonly remedy: `mend-${Cause}` }

/** Most likely first. Common practice, no source. @source SETUP-RULES */
export function causesOf(meaning: Meaning): readonly Cause[] {
  if (meaning === 'moving-side-up') return ['jaw-lift', 'high-bar-fixed-side', 'side-not-square']
  return meaning === 'fixed-side-up' ? ['side-not-square', 'high-bar-moving-side', 'fixed-jaw-leans'] : []
}

/** How to tell the causes apart, in their order. */
export const toldApart = (causes: readonly Cause[]): readonly Told[] => causes.map((cause) => ({ cause, test: tests[cause], remedy: `mend-${cause}` }))

const tests: { readonly [cause in Cause]: Test } = {
  'jaw-lift': 'slacken-to-snug', 'high-bar-fixed-side': 'exchange-bars', 'high-bar-moving-side': 'exchange-bars',
  'side-not-square': 'turn-part', 'fixed-jaw-leans': 'stays-throughout',
}
