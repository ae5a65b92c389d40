import { Worker } from 'node:worker_threads'
import { type Facts, Refusal } from '#model/refusal.ts'
import type { AskSlow } from '#tasks/make/slow-calculations.ts'

/** What comes back from the thread of `cut-worker.ts`. */
export type WorkerAnswer = { readonly answer: unknown } | { readonly refused: { readonly code: string; readonly facts: Facts } }

/**
 * In a thread of its own, one case after another; a case whose caller has gone is stopped by ending the thread. The thread ends by itself when nothing more
 * is asked: it holds much memory.
 *
 * @param file  the built `cut-worker`
 */
export function askWorker(file: string): AskSlow {
  let last: Promise<unknown> = Promise.resolve(), worker: Worker | null = null, waiting = 0
  const end = async () => { const old = worker; worker = null; await old?.terminate() }
  return (name, raw, signal) => {
    waiting += 1
    const answer = last.then(async () => {
      try {
        signal?.throwIfAborted()
        worker ??= new Worker(file)
        return await answered(worker, { name, raw }, signal)
      } catch (error) {
        if (!(error instanceof Refusal)) await end()
        throw error
      } finally {
        waiting -= 1
        if (waiting === 0) await end()
      }
    })
    last = answer.catch(() => undefined)
    return answer
  }
}

function answered(worker: Worker, asked: { readonly name: string; readonly raw: unknown }, signal: AbortSignal | undefined): Promise<unknown> {
  return new Promise((done, failed) => {
    const stop = () => failed(signal!.reason as Error)
    const leave = () => { worker.off('message', take); worker.off('error', fail); worker.off('exit', gone); signal?.removeEventListener('abort', stop) }
    const take = (said: WorkerAnswer) => {
      leave()
      if ('answer' in said) done(said.answer)
      else failed(new Refusal(said.refused.code, said.refused.facts))
    }
    const fail = (error: Error) => { leave(); failed(error) }
    const gone = () => { leave(); failed(new Error('the thread of slow calculations ended')) }
    worker.on('message', take)
    worker.on('error', fail)
    worker.on('exit', gone)
    signal?.addEventListener('abort', () => { leave(); stop() }, { once: true })
    worker.postMessage(asked)
  })
}
