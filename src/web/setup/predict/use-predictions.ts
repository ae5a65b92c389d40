import { useEffect, useMemo, useRef, useState } from 'react'
import { predictionAt } from '#engine/rack/prediction-at.ts'
import type { PredictionAsked } from '#engine/setup/prediction/asked.ts'
import type { Prediction } from '#engine/setup/prediction/prediction.ts'
import type { Choice } from '#model/setup.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { PredictAsk, PredictSaid, Refused } from '#web/setup/predict/predict-worker.ts'
import type { Bench } from '#web/setup/view/bench.ts'
import { isRefused, type SetupView } from '#web/setup/view/view-from.ts'

/** What the choices in view will come out as, as far as that is known by now. */
export type Foretelling = {
  /** Null: not yet, not asked, or ended before. */
  readonly of: (choice: Choice) => Prediction | null
  /** Part done of all that is being worked out; null: nothing is. */
  readonly done: number | null
  /** How it ended before all was worked out; null: it did not. */
  readonly ended: Ended | null
  readonly stop: () => void
}

/** `fault`: an error of ours. */
type Ended = 'stopped' | 'fault' | Refused
/** What is being worked out for one list of questions, and how far, or how it ended. */
type Work = { readonly of: PredictAsk; readonly wanted: PredictAsk; readonly at: { readonly key: string; readonly part: number } | null; readonly ended: Ended | null }

/** The one looked at and the first rows under it. */
const mostInView = 5
/** Keys come faster than this: nothing is begun between two of them. */
const settledMs = 250
/** Answers kept; a question that comes back has its answer at once. */
const mostKept = 200

/** Foretells the choices in view in a worker. It follows the ranking and never changes it. */
export function usePredictions(shop: ShopSnapshot, bench: Bench, { answered }: SetupView, side: SetupForm['side']): Foretelling {
  const [known, setKnown] = useState<ReadonlyMap<string, Prediction>>(new Map()), [work, setWork] = useState<Work | null>(null)
  const { checks, instruments, outcomes } = shop, running = useRef<Worker | null>(null)
  const asked = useMemo(() => {
    const choices = new Map<Choice, string>(), shown = answered?.shown ?? null
    if (answered === null) return { choices, list: [] as PredictAsk }
    const inView = [...new Set([...(shown === null || isRefused(shown) ? [] : [shown]), ...answered.answer.choices.slice(0, mostInView)])]
    const list = inView.map((choice) => {
      const one: PredictionAsked = predictionAt({ checks, instruments, outcomes }, { question: answered.question, bars: bench.bars, vise: bench.vise, side: side ?? 'unknown' }, choice), key = JSON.stringify(one)
      choices.set(choice, key)
      return { key, asked: one }
    })
    return { choices, list }
  }, [answered, bench, checks, instruments, outcomes, side])
  // The same questions again, as after a key under the clamp, leave what is at work alone.
  const keys = asked.list.map(({ key }) => key).join('\n')
  // oxlint-disable-next-line react/exhaustive-deps -- `keys` holds all that is in the list
  const list = useMemo(() => asked.list, [keys])
  const kept = useRef(known)
  useEffect(() => { kept.current = known }, [known])
  useEffect(() => {
    const wanted = list.filter(({ key }) => !kept.current.has(key))
    if (wanted.length === 0) return undefined
    const later = setTimeout(() => {
      const worker = new Worker(new URL('./predict-worker.ts', import.meta.url), { type: 'module' })
      running.current = worker
      const work = { of: list, wanted, ended: null }, end = (ended: Ended) => { worker.terminate(); setWork({ ...work, at: null, ended }) }
      setWork({ ...work, at: { key: wanted[0]!.key, part: 0 } })
      worker.addEventListener('message', ({ data }: MessageEvent<PredictSaid>) => {
        if ('refused' in data) return end(data.refused)
        if ('part' in data) return setWork({ ...work, at: data })
        setKnown((before) => new Map([...[...before].slice(-mostKept), [data.key, data.prediction]]))
        if (data.key === wanted.at(-1)!.key) { worker.terminate(); setWork(null) }
      })
      worker.addEventListener('error', () => end('fault'))
      worker.postMessage(wanted)
    }, settledMs)
    return () => { clearTimeout(later); running.current?.terminate() }
  }, [list])
  const current = work?.of === list ? work : null
  return {
    of: (choice) => known.get(asked.choices.get(choice) ?? '') ?? null,
    done: current?.at ? (current.wanted.findIndex(({ key }) => key === current.at!.key) + current.at.part) / current.wanted.length : null,
    ended: current?.ended ?? null,
    stop: () => { running.current?.terminate(); if (current) setWork({ ...current, at: null, ended: 'stopped' }) },
  }
}
