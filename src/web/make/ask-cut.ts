import { type Facts, Refusal } from '#model/refusal.ts'
import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'

type Answers = { readonly 'cut-bars': CutBarsAnswer; readonly 'cut-plate': CutPlateAnswer }
type Answer = CutBarsAnswer | CutPlateAnswer

/** To the thread of `cut-worker.ts`, and back. */
export type CutAsked = { readonly name: keyof Answers; readonly raw: unknown }
export type CutSaid = { readonly standing: Answer } | { readonly answer: Answer } | { readonly refused: { readonly code: string; readonly facts: Facts } }

/** `stop` ends the work; the answer is then the one that stood last, null where there was none yet. */
export type CutAsking<Name extends keyof Answers> = { readonly answer: Promise<Answers[Name] | null>; readonly stop: () => void }

/**
 * A cut list, worked out in a thread of its own.
 *
 * @param raw         a case of the calculation
 * @param onStanding  told the answer as it stands, again and again
 * @return its answer is refused as the calculation refuses
 */
export function askCut<Name extends keyof Answers>(name: Name, raw: unknown, onStanding: (answer: Answers[Name]) => void): CutAsking<Name> {
  const worker = new Worker(new URL('./cut-worker.ts', import.meta.url), { type: 'module' })
  let standing: Answers[Name] | null = null, stop = () => {}
  const answer = new Promise<Answers[Name] | null>((done, failed) => {
    stop = () => done(standing)
    worker.addEventListener('message', ({ data }: MessageEvent<CutSaid>) => {
      if ('refused' in data) failed(new Refusal(data.refused.code, data.refused.facts))
      else if ('answer' in data) done(data.answer as Answers[Name])
      else {
        standing = data.standing as Answers[Name]
        onStanding(standing)
      }
    })
    worker.addEventListener('error', (event) => failed(new Error(event.message)))
    worker.postMessage({ name, raw } satisfies CutAsked)
  }).finally(() => worker.terminate())
  return { answer, stop: () => stop() }
}
