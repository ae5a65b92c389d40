import type { BarEventKind } from '#model/bar-event.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { sayEvent } from '#web/rack/say-bar.ts'
import { writeDeed } from '#web/write.ts'

/** Writes down that something happened to bars, and offers to take it back. `called`: the bars as people call them. */
export function happened(kind: BarEventKind, bars: readonly string[], called: string): void {
  const ids = writeDeed({ events: bars.map((bar) => ({ bar, kind, undoes: null, note: '' })) })
  offerUndo(`${called}: ${sayEvent(kind)}.`, () => {
    writeDeed({ events: bars.map((bar, at) => ({ bar, kind: 'undone', undoes: ids[at]!, note: '' })) })
  })
}
