import { readLabel } from '#model/label-code.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** Where the text of a label leads, scanned or typed: to its bar or its slot; null where no label of this shop says that. */
export function pathOfLabel(text: string, { bars, slots }: Pick<ShopSnapshot, 'bars' | 'slots'>): string | null {
  const label = readLabel(text)
  if (label === null) return null
  const bar = label.kind === 'slot' ? undefined : bars.find(({ code }) => code === label.code)
  if (bar) return `/rack/${bar.id}`
  const slot = label.kind === 'bar' ? undefined : slots.find(({ code }) => code === label.code)
  return slot ? `/rack/slot/${slot.id}` : null
}
