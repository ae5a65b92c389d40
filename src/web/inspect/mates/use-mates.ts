import { useEffect, useMemo, useRef, useState } from 'react'
import { findMates, type MatesAsked, type MatesFound, type MatesSaid } from '#web/inspect/mates/find-mates.ts'

/** `fault`: an error of ours. */
type Ended = 'stopped' | 'fault'
/** What was found, how far the search is, or how it ended before; `stop` leaves it where it is. */
export type Search = { readonly answer: MatesFound | null; readonly lots: readonly [done: number, of: number] | null; readonly ended: Ended | null; readonly stop: () => void }

/** From here on the search goes into a worker. */
const mostAtOnce = 300

/** The best mates for what is asked, at once for a few hundred bars, else beside the screen; `asked` null: nothing is asked. */
export function useMates(asked: MatesAsked | null): Search {
  const atOnce = useMemo(() => (asked !== null && asked.facts.bars.length <= mostAtOnce ? findMates(asked) : null), [asked])
  const [beside, setBeside] = useState<{ readonly asked: MatesAsked; readonly said: MatesSaid | Ended } | null>(null)
  const running = useRef<Worker | null>(null), large = asked !== null && atOnce === null ? asked : null
  useEffect(() => {
    if (large === null) return undefined
    const worker = new Worker(new URL('./mates-worker.ts', import.meta.url), { type: 'module' })
    worker.addEventListener('message', ({ data }: MessageEvent<MatesSaid>) => setBeside({ asked: large, said: data }))
    worker.addEventListener('error', () => setBeside({ asked: large, said: 'fault' }))
    worker.postMessage(large)
    running.current = worker
    return () => worker.terminate()
  }, [large])
  if (large === null) return { answer: atOnce, lots: null, ended: null, stop: () => undefined }
  const said = beside?.asked === large ? beside.said : null, stop = () => { running.current?.terminate(); setBeside({ asked: large, said: 'stopped' }) }
  if (said === 'stopped' || said === 'fault') return { answer: null, lots: null, ended: said, stop }
  if (said === null || 'lots' in said) return { answer: null, lots: said?.lots ?? [0, 1], ended: null, stop }
  return { answer: said, lots: null, ended: null, stop }
}
