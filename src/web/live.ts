/** What a stream of the shop's news is heard by. */
export type Ear = {
  /** A revision of the shop there is now. */
  readonly onRevision: (revision: string) => void
}

/** A stream that gave no sign of life for so long is dead, whatever the browser thinks of it. */
const silenceMs = 40_000

/**
 * Listens to what others do as long as somebody looks at this window: browsers open few connections to one server, and a
 * window in the background would keep one from the others.
 */
export function listenTo({ onRevision }: Ear): { readonly isOpen: () => boolean; readonly look: () => void } {
  let stream: EventSource | null = null, heardMs = 0
  const close = () => { stream?.close(); stream = null }
  function open(): void {
    close()
    heardMs = performance.now()
    stream = new EventSource('/api/live')
    const heard = () => { heardMs = performance.now() }
    stream.addEventListener('beat', heard)
    stream.addEventListener('revision', ({ data }: MessageEvent<string>) => { heard(); onRevision(data) })
  }
  return {
    isOpen: () => stream?.readyState === EventSource.OPEN && performance.now() - heardMs < silenceMs,
    look() {
      if (document.visibilityState !== 'visible') return close()
      // A browser tries again by itself, but not after a refusal, nor where it does not see that the line is dead.
      if (stream === null || stream.readyState === EventSource.CLOSED || performance.now() - heardMs > silenceMs) open()
    },
  }
}
