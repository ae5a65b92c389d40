import load from 'highs'
import wasm from 'highs/runtime?url'
import { Refusal } from '#model/refusal.ts'
import { runCutBars } from '#engine/make/cut-bars/answer-cut-bars.ts'
import { runCutPlate } from '#engine/make/cut-plate/answer-cut-plate.ts'
import { solveWith } from '#engine/make/solve-with-highs.ts'
import type { CutAsked, CutSaid } from '#web/make/ask-cut.ts'

const say = (said: CutSaid) => { self.postMessage(said) }

// One cut list in a thread of its own: the answer as it stands whenever it has become better, then the last one. Ended from outside to stop it.
self.addEventListener('message', (event: MessageEvent<CutAsked>) => void answer(event.data))

async function answer({ name, raw }: CutAsked): Promise<void> {
  try {
    const tools = { now: () => performance.now() / 1000, solve: solveWith(await load({ locateFile: () => wasm })) }
    for (const run = name === 'cut-bars' ? runCutBars(raw, tools) : runCutPlate(raw, tools); ;) {
      const next = run.next()
      say(next.done === true ? { answer: next.value } : { standing: next.value })
      if (next.done === true) return
    }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    say({ refused: { code: error.code, facts: error.facts } })
  }
}
