import { canonical } from '#model/canonical.ts'
import type { SetupFields, SetupRecord } from '#model/setup-record.ts'
import type { Choice } from '#model/setup.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { SetupState } from '#web/setup/state/setup-state.ts'
import type { Edit } from '#web/write.ts'

/** What is written when something is decided on, and what takes it back. */
export type Decision = { readonly setupId: string; readonly edits: readonly Edit[]; readonly undo: readonly Edit[] }

type Asked = { readonly state: SetupState; readonly viseId: string; readonly choice: Pick<Choice, 'bars' | 'stand'> | null; readonly atIso: string; readonly newId: () => string }

/**
 * Keeps the setup as it stands: over the record it was opened from where the question is still the same, else as a new one.
 *
 * Undo puts the old fields back; a new record is retired, so that its history stays.
 */
export function keepSetup(shop: ShopSnapshot, asked: Asked): Decision {
  const { state, viseId, choice, atIso, newId } = asked
  const opened = shop.setups.find(({ id }) => id === state.setupId)
  const again = opened !== undefined && sameQuestion(opened, state, viseId) ? opened : null
  const fields: SetupFields = {
    title: state.title.trim(), operation: state.operation.trim(), viseId, partId: state.partId, form: state.form,
    bars: [...(choice?.bars ?? [])], stand: choice?.stand ?? 'on edge', usedAtIso: atIso, retired: false,
  }
  const record = again?.id ?? newId()
  return {
    setupId: record,
    edits: [{ kind: 'setup', record, fields }],
    undo: [{ kind: 'setup', record, fields: again === null ? { retired: true } : fieldsOf(again) }],
  }
}

/**
 * Takes a pair: the setup is kept, its bars are in this vise from now on, and bars that were in it go back to their slots.
 *
 * Bars that already are where they should be are not written again.
 */
export function usePairIn(shop: ShopSnapshot, asked: Asked): Decision {
  const { choice, viseId } = asked, kept = keepSetup(shop, asked), taken = new Set(choice?.bars ?? [])
  const moves = shop.bars.flatMap((bar) => {
    const inHere = bar.where.at === 'vise' && bar.where.viseId === viseId
    if (taken.has(bar.id) === inHere) return []
    const to = inHere ? { at: 'slot' } as const : { at: 'vise', viseId } as const
    return [{ bar, to }]
  })
  return {
    setupId: kept.setupId,
    edits: [...kept.edits, ...moves.map(({ bar, to }): Edit => ({ kind: 'bar', record: bar.id, fields: { where: to } }))],
    undo: [...kept.undo, ...moves.map(({ bar }): Edit => ({ kind: 'bar', record: bar.id, fields: { where: bar.where } }))],
  }
}

/** Whether what was kept is all that stands here, bars too: nothing is to be written. */
export function isKept(kept: SetupRecord, { state: { form }, viseId, choice }: Pick<Asked, 'state' | 'viseId' | 'choice'>): boolean {
  return kept.viseId === viseId && canonical(kept.form) === canonical(form) && kept.bars.join() === (choice?.bars ?? []).join()
}

/** Whether what was kept is still what is asked; what the clamp is reckoned with is no part of that. */
function sameQuestion(kept: Pick<SetupRecord, 'form' | 'viseId'>, state: Pick<SetupState, 'form'>, viseId: string): boolean {
  const asks = ({ hold: _hold, ...form }: SetupState['form']) => form
  return kept.viseId === viseId && canonical(asks(kept.form)) === canonical(asks(state.form))
}

function fieldsOf({ id: _id, saw: _saw, ...fields }: SetupRecord): SetupFields {
  return fields
}
