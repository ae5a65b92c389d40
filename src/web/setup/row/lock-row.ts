import type { ShopSnapshot } from '#model/snapshot.ts'
import { keepSetup } from '#web/setup/saved/use-pair.ts'
import type { SetupState } from '#web/setup/state/setup-state.ts'
import type { Edit } from '#web/write.ts'

/** Which two bars go into which vise. */
export type RowPlace = { readonly viseId: string; readonly bars: readonly string[] }

type Asked = { readonly state: SetupState; readonly places: readonly RowPlace[]; readonly atIso: string; readonly newId: () => string }
export type RowDecision = { readonly setupIds: readonly string[]; readonly edits: readonly Edit[]; readonly undo: readonly Edit[] }

/** Keeps the setup on the screen once for each vise of the row. Nothing is kept where no part was given. */
export function keepRow(shop: ShopSnapshot, { state, places, atIso, newId }: Asked): RowDecision {
  if (state.form.height.trim() === '') return { setupIds: [], edits: [], undo: [] }
  const kept = places.map(({ viseId, bars }) => keepSetup(shop, { state, viseId, choice: { bars, stand: 'on edge' }, atIso, newId }))
  return { setupIds: kept.map(({ setupId }) => setupId), edits: kept.flatMap(({ edits }) => edits), undo: kept.flatMap(({ undo }) => undo) }
}

/** Locks pairs and vises together: each bar is in its vise from now on, bars that were in a vise of the row go back to their slots. */
export function lockRow(shop: ShopSnapshot, asked: Asked): RowDecision {
  const kept = keepRow(shop, asked), row = new Set(asked.places.map(({ viseId }) => viseId))
  const goes = new Map(asked.places.flatMap(({ viseId, bars }) => bars.map((bar) => [bar, viseId] as const)))
  const moves = shop.bars.flatMap((bar) => {
    const wanted = goes.get(bar.id), now = bar.where.at === 'vise' ? bar.where.viseId : null
    if (wanted === undefined ? now === null || !row.has(now) : now === wanted) return []
    return [{ bar, to: wanted === undefined ? { at: 'slot' } as const : { at: 'vise', viseId: wanted } as const }]
  })
  return {
    setupIds: kept.setupIds,
    edits: [...kept.edits, ...moves.map(({ bar, to }): Edit => ({ kind: 'bar', record: bar.id, fields: { where: to } }))],
    undo: [...kept.undo, ...moves.map(({ bar }): Edit => ({ kind: 'bar', record: bar.id, fields: { where: bar.where } }))],
  }
}
