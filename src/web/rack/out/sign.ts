import type { Signing } from '#engine/rack/signing.ts'
import type { Where } from '#model/bar-record.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { shopNow } from '#web/shop-store.ts'
import { writeDeed } from '#web/write.ts'

/** Writes a signing down, and offers to take it back: then everything is where and as it was, but for what somebody has moved on since. */
export function sign({ moves, events }: Signing, said: string): void {
  const ids = writeDeed({
    edits: moves.map(({ bar, where }) => ({ kind: 'bar', record: bar.id, fields: { where } })),
    events: events.map((event) => ({ ...event, undoes: null })),
  })
  offerUndo(said, () => {
    writeDeed({
      edits: moves.filter(({ bar, where }) => isStillAt(bar.id, where)).map(({ bar }) => ({ kind: 'bar', record: bar.id, fields: { where: bar.where } })),
      events: events.map(({ bar }, at) => ({ bar, kind: 'undone', undoes: ids[at]!, note: '' })),
    })
  })
}

function isStillAt(id: string, put: Where): boolean {
  const where = shopNow().shop?.bars.find((bar) => bar.id === id)?.where
  return where !== undefined && placeOf(where) === placeOf(put)
}

const placeOf = (where: Where): string => (where.at === 'slot' ? 'slot' : `${where.at === 'vise' ? `vise ${where.viseId}` : `${where.to ?? ''} ${where.who}`} ${where.sinceIso ?? ''}`)
