import { parentPort } from 'node:worker_threads'
import { Refusal } from '#model/refusal.ts'
import { askHere } from '#tasks/make/ask-here.ts'
import type { SlowName } from '#tasks/make/slow-calculations.ts'
import type { WorkerAnswer } from '#tasks/make/ask-worker.ts'

// The thread the server leaves slow calculations to: a case in, its answer or its refusal out. A fault ends it, and is the server's to log.
parentPort!.on('message', ({ name, raw }: { readonly name: SlowName; readonly raw: unknown }) => {
  askHere(name, raw).then(
    (answer) => parentPort!.postMessage({ answer } satisfies WorkerAnswer),
    (error: unknown) => {
      if (!(error instanceof Refusal)) throw error
      parentPort!.postMessage({ refused: { code: error.code, facts: error.facts } } satisfies WorkerAnswer)
    },
  )
})
