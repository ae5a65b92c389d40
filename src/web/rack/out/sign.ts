import type { Signing } from '#engine/rack/signing.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { writeDeed } from '#web/write.ts'

/** Writes a signing down, and offers to take it back: then everything is where and as it was. */
export function sign({ moves, events }: Signing, said: string): void {
  const ids = writeDeed({
    edits: moves.map(({ bar, where }) => ({ kind: 'bar', record: bar.id, fields: { where } })),
    events: events.map((event) => ({ ...event, undoes: null })),
  })
  offerUndo(said, () => {
    writeDeed({
      edits: moves.map(({ bar }) => ({ kind: 'bar', record: bar.id, fields: { where: bar.where } })),
      events: events.map(({ bar }, at) => ({ bar, kind: 'undone', undoes: ids[at]!, note: '' })),
    })
  })
}
