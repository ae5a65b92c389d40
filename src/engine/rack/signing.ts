import type { BarEventKind } from '#model/bar-event.ts'
import type { BarRecord, OutTo, Where } from '#model/bar-record.ts'
import type { CameBack } from '#model/came-back.ts'
import type { By } from '#model/change.ts'
import type { Deed } from '#model/deed.ts'
import { editOf } from '#model/record-fields.ts'

/** Who or what takes bars; `called`: the vise as people call it. */
export type Holder = { readonly to: 'vise'; readonly viseId: string; readonly called: string } | { readonly to: OutTo; readonly who: string }

/** What signing out or coming back writes: where each bar is from now on, and what happened to it. */
export type Signing = {
  readonly moves: readonly { readonly bar: BarRecord; readonly where: Where }[]
  readonly events: readonly { readonly bar: string; readonly kind: BarEventKind; readonly note: string }[]
}

/** Bars are taken: from a slot, or on from whoever had them. `dueOn` null: whenever. */
export function signOut(bars: readonly BarRecord[], holder: Holder, { atIso, dueOn }: { readonly atIso: string; readonly dueOn: string | null }): Signing {
  const away = { sinceIso: atIso, ...(dueOn === null ? {} : { dueOn }) }
  const where: Where = holder.to === 'vise' ? { at: 'vise', viseId: holder.viseId, ...away } : { at: 'out', who: holder.who, to: holder.to, ...away }
  const kind = holder.to === 'other shop' ? 'to another shop' : 'signed out', note = holder.to === 'vise' ? holder.called : holder.who
  return { moves: bars.map((bar) => ({ bar, where })), events: bars.map(({ id }) => ({ bar: id, kind, note })) }
}

/**
 * Bars come back into their slots. From a vise or machine of the shop nobody has to look; whatever comes from a person or another shop without a look is
 * to be looked at first.
 */
export function comeBack(bars: readonly BarRecord[], how: CameBack): Signing {
  return { moves: bars.map((bar) => ({ bar, where: { at: 'slot' } })), events: bars.map(({ id, where }) => ({ bar: id, kind: backKind(where, how), note: '' })) }
}

function backKind(where: Where, how: CameBack): BarEventKind {
  if (how !== 'not looked at') return `back ${how}`
  return where.at === 'vise' || where.at === 'slot' || where.to === 'machine' ? 'back' : 'back not looked at'
}

/** A signing as one deed. Its changes have ids that begin alike: where two signings clash, the same one stands for all the bars. */
export function deedOfSigning({ moves, events }: Signing, by: By): Deed {
  const { person, device, atIso } = by, deed = by.newId()
  return {
    changes: moves.map(({ bar, where }, at) => editOf('bar', bar, { where }, { ...by, newId: () => `${deed}-${at}` })), checks: [],
    events: events.map(({ bar, kind, note }) => ({ id: by.newId(), bar, kind, undoes: null, note, person, device, atIso })),
  }
}
