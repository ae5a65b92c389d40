import { attempt } from '#model/attempt.ts'
import { type Facts, Refusal } from '#model/refusal.ts'
import type { PredictionAsked } from '#engine/setup/prediction/asked.ts'
import { type Prediction, runPrediction } from '#engine/setup/prediction/prediction.ts'

/** Choices to foretell, in the order in which they are wanted; `key` comes back with each answer. */
export type PredictAsk = readonly { readonly key: string; readonly asked: PredictionAsked }[]
/** One answer, or the part done of the one at work, or why there will be none. */
export type PredictSaid = { readonly key: string; readonly prediction: Prediction } | { readonly key: string; readonly part: number } | { readonly refused: Refused }
export type Refused = { readonly code: string; readonly facts: Facts }

/** Foretells beside the screen, so that no key waits for it. */
addEventListener('message', ({ data }: MessageEvent<PredictAsk>) => {
  const ended = attempt(() => data.forEach(foretell))
  if (ended instanceof Refusal) say({ refused: { code: ended.code, facts: ended.facts } })
})

function foretell({ key, asked }: PredictAsk[number]): void {
  const run = runPrediction(asked)
  let next = run.next()
  for (; next.done !== true; next = run.next()) say({ key, part: next.value })
  say({ key, prediction: next.value })
}

const say = (said: PredictSaid): void => postMessage(said)
