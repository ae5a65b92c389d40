import { barUncertainty } from '#engine/inspect/bar-uncertainty.ts'
import { turnOverGrows } from '#engine/inspect/turn-over-uncertainty.ts'
import { commonRun, type PredictionAsked } from '#engine/setup/prediction/asked.ts'
import { couldFrom } from '#engine/setup/prediction/could.ts'
import { scatterFrom } from '#engine/setup/prediction/scatter.ts'
import type { Bar } from '#model/bar.ts'
import type { Check } from '#model/check.ts'
import type { InstrumentRecord } from '#model/instrument-record.ts'
import type { OutcomeRecord } from '#model/outcome-record.ts'
import type { Side } from '#model/part.ts'
import type { Choice, SetupQuestion } from '#model/setup.ts'
import type { ViseRecord } from '#model/vise-record.ts'

/** What of a shop bears on a prediction beside its bars. */
export type PredictionFacts = { readonly checks: readonly Check[]; readonly instruments: readonly InstrumentRecord[]; readonly outcomes: readonly OutcomeRecord[] }

type Asked = { readonly question: SetupQuestion; readonly bars: ReadonlyMap<string, Bar>; readonly vise: Pick<ViseRecord, 'measured'> | null; readonly side: Side }

/** What the prediction of a choice is worked out from: each bar by its latest check, the vise as it was measured, the shop as its parts came out. */
export function predictionAt({ checks, instruments, outcomes }: PredictionFacts, { question: { part, wishes }, bars, vise, side }: Asked, { bars: ids, stand, places }: Pick<Choice, 'bars' | 'stand' | 'places'>): PredictionAsked {
  return {
    part, choice: { bars: ids, stand, places }, side, vise: vise?.measured ?? null, toleranceUm: wishes.toleranceUm, ...commonRun,
    scatter: scatterFrom(outcomes), could: couldFrom(instruments, part.betweenJawsMm ?? 1),
    bars: ids.flatMap((id) => bars.get(id) ?? []).map((bar) => ({ ...bar, stationUUm: stationUUmOf(bar, checks.find((check) => check.id === bar.known?.check)) })),
  }
}

/** Two stations of a bar differ by the uncertainty of its parallelism; each of them alone by √2 less. */
function stationUUmOf({ id, lengthMm, heightMm }: Bar, check: Check | undefined): number | null {
  const uncertainty = check === undefined ? null : barUncertainty(check, id, lengthMm, heightMm, 'place')
  return uncertainty && (uncertainty.parallelism.u * turnOverGrows(check!.method)) / Math.SQRT2
}
