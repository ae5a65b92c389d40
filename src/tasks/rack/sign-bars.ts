import { comeBack, deedOfSigning, type Holder, type Signing, signOut } from '#engine/rack/signing.ts'
import { type Holding, whoHasWhat } from '#engine/rack/who-has-what.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { CameBack } from '#model/came-back.ts'
import { Refusal } from '#model/refusal.ts'
import type { Applied } from '#store/changes.ts'
import { keepDeed } from '#store/deeds.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'
import { today } from '#tasks/rack/rack-facts.ts'
import { viseNamed } from '#tasks/setup/vise-named.ts'

/** Whom bars go to, one of the four; `dueOn` `2026-03-31`, left out: whenever. */
export type OutAsked = {
  /** Ids or codes. */
  readonly bars: readonly string[]
  readonly vise?: string
  readonly person?: string
  readonly machine?: string
  readonly otherShop?: string
  readonly dueOn?: string
}

/** What is written: which changes stand and which clashed with someone who was as quick, and the events, for taking them back. */
export type Signed = Applied & { readonly events: readonly string[]; readonly bars: readonly { readonly id: string; readonly code: string; readonly name: string }[] }

/** Signs bars out. @throws Refusal `field-missing`, `bar-not-known`, as `viseNamed`, and what a field refuses */
export function signBarsOut(store: Store, asked: OutAsked, by: Maker): Promise<Signed> {
  return signed(store, asked.bars, by, async (tx, bars) => signOut(bars, await holderOf(tx, asked), { atIso: by.atIso, dueOn: asked.dueOn ?? null }))
}

/** Takes bars back into their slots. @throws Refusal `field-missing`, `bar-not-known` */
export function takeBarsBack(store: Store, asked: { readonly bars: readonly string[]; readonly how: CameBack }, by: Maker): Promise<Signed> {
  return signed(store, asked.bars, by, (_tx, bars) => Promise.resolve(comeBack(bars, asked.how)))
}

/** Who has what now, with what is overdue. */
export function holdingsOf(store: Store): Promise<readonly Holding[]> {
  return atOneMoment(store, async (tx) => whoHasWhat(await recordsOf(tx, 'bar'), today()))
}

async function signed(store: Store, named: readonly string[], by: Maker, sign: (tx: Store, bars: readonly BarRecord[]) => Promise<Signing>): Promise<Signed> {
  if (named.length === 0) throw new Refusal('field-missing', { field: 'bars', given: null, needed: 'at least one' })
  return await inTransaction(store, async (tx) => {
    const bars = new Map<string, BarRecord>()
    for (const one of named) {
      const bar = await barNamed(tx, one)
      bars.set(bar.id, bar)
    }
    const deed = deedOfSigning(await sign(tx, [...bars.values()]), by)
    return { ...await keepDeed(tx, deed), events: deed.events.map(({ id }) => id), bars: [...bars.values()].map(({ id, code, name }) => ({ id, code, name })) }
  })
}

async function holderOf(tx: Store, { vise, person, machine, otherShop }: OutAsked): Promise<Holder> {
  const told = [vise, person, machine, otherShop].filter((one) => one !== undefined && one.trim() !== '')
  if (told.length !== 1) throw new Refusal('field-missing', { field: 'to', given: told.length === 0 ? null : told as string[], needed: ['vise', 'person', 'machine', 'otherShop'] })
  if (vise !== undefined && vise.trim() !== '') {
    const { id, name } = await viseNamed(tx, vise)
    return { to: 'vise', viseId: id, called: name }
  }
  return { to: machine?.trim() ? 'machine' : otherShop?.trim() ? 'other shop' : 'person', who: told[0]!.trim() }
}
