import { outcomeOf } from '#engine/rack/check-outcome.ts'
import { heightFrom } from '#engine/rack/height-from.ts'
import { heightChangeOf, heightsOverYears } from '#engine/rack/heights-over-years.ts'
import { standingEvents } from '#engine/rack/trust-from.ts'
import type { BarRecord, Where } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'
import type { HistoryEntry } from '#model/history.ts'
import type { Fact, Facts } from '#model/refusal.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopFields } from '#model/shop-record.ts'

/** One thing that happened to a bar, or to several of a pair at once, as a code with its facts. */
export type LifeLine = { readonly atIso: string; readonly person: string; readonly bars: readonly string[]; readonly says: Finding }

/** What a history does not carry: the setups, and how slots, vises and mates are called. */
export type LifeFacts = {
  readonly setups: readonly Pick<SetupRecord, 'title' | 'operation' | 'viseId' | 'bars' | 'usedAtIso' | 'retired'>[]
  readonly shop: Pick<ShopFields, 'limitsUm'>
  readonly nameOf: (kind: 'slot' | 'vise' | 'mates', id: string) => string
}

/**
 * The life of one bar, oldest first: made, checked, used, lent, knocked, stoned, ground, marked anew. What was taken back, and checks that were put right, are
 * left out. Wear or growth is a line of its own where the heights say so.
 *
 * @param history  of the bar, in any order
 */
export function lineOfLife(record: Pick<BarRecord, 'id' | 'lengthMm'>, history: readonly HistoryEntry[], facts: LifeFacts): readonly LifeLine[] {
  const { id } = record, line = (atIso: string, person: string, code: string, of: Facts): LifeLine => ({ atIso, person, bars: [id], says: { code, facts: of } })
  const events = standingEvents(history.flatMap((entry) => (entry.what === 'event' ? [entry.event] : [])))
  const checks = history.flatMap((entry) => (entry.what === 'check' ? [entry.check] : [])), replaced = new Set(checks.map((check) => check.replaces))
  const added = events.find(({ kind }) => kind === 'added') ?? null, first = history.filter((entry) => entry.what === 'change').map((entry) => entry.atIso).sort()[0]
  const stated = checks.find((check) => check.method === 'stated' && check.atIso === added?.atIso) ?? null
  const change = heightChangeOf(heightsOverYears(record, checks), events)
  const lines = [
    ...events.map((event) => (event === added
      ? line(event.atIso, event.person, 'life-added', { heightMm: stated === null ? null : heightFrom(id, [stated], [], null)?.heightMm ?? null })
      : line(event.atIso, event.person, 'life-event', { kind: event.kind, note: event.note }))),
    ...checks.filter((check) => check !== stated && !replaced.has(check.id)).map((check) => line(check.atIso, check.person, ...checkSays(check, record, facts))),
    ...history.flatMap((entry) => (entry.what !== 'change' || entry.atIso === first ? [] : Object.entries(entry.fields).flatMap(([field, { value, fate }]) => {
      const says = fate === 'aside' ? null : fieldSays(field, value, facts, events.some(({ atIso, person }) => atIso === entry.atIso && person === entry.person))
      return says === null ? [] : [line(entry.atIso, entry.person, says.code, says.facts)]
    }))),
    ...facts.setups.filter((setup) => !setup.retired && setup.bars.includes(id)).map((setup) =>
      line(setup.usedAtIso, '', 'life-set-up', { title: [setup.title, setup.operation].filter((text) => text !== '').join(', '), vise: facts.nameOf('vise', setup.viseId) })),
    ...(change === null ? [] : [line(change.to.atIso, '', `life-${change.is}`, { um: change.um, expandedUm: change.expandedUm, sinceDay: change.from.atIso.slice(0, 10) })]),
  ]
  return inTime(lines)
}

/** The lives of a pair or set as one: what happened to several of them at once is one line. */
export function lifeTogether(lives: readonly (readonly LifeLine[])[]): readonly LifeLine[] {
  const joined = new Map<string, LifeLine>()
  for (const one of lives.flat()) {
    const key = JSON.stringify([one.atIso, one.person, one.says]), before = joined.get(key)
    joined.set(key, before === undefined ? one : { ...before, bars: [...before.bars, ...one.bars] })
  }
  return inTime([...joined.values()])
}

const inTime = (lines: readonly LifeLine[]): readonly LifeLine[] => lines.toSorted((a, b) => (a.atIso === b.atIso ? 0 : a.atIso < b.atIso ? -1 : 1))

function checkSays(check: Check, { id, lengthMm }: Pick<BarRecord, 'id' | 'lengthMm'>, { shop }: LifeFacts): readonly [code: string, facts: Facts] {
  const height = heightFrom(id, [check], [], lengthMm)
  if (check.method === 'stated') return ['life-stated', { heightMm: height?.heightMm ?? null }]
  const { uses, failed, burrs } = outcomeOf(check, id, lengthMm, shop.limitsUm)
  return ['life-checked', { method: check.method, heightMm: height?.heightMm ?? null, uUm: height?.uUm ?? null, failed, uses, burrs }]
}

/** Null: nothing to tell, or the event beside the change tells it. */
function fieldSays(field: string, value: Fact, { nameOf }: LifeFacts, hasEvent: boolean): Finding | null {
  switch (field) {
    case 'where': return hasEvent ? null : { code: 'life-where', facts: whereFacts(value as Where, nameOf) }
    case 'slotId': return { code: 'life-slot', facts: { slot: typeof value === 'string' ? nameOf('slot', value) : null } }
    case 'matesId': return { code: 'life-mates', facts: { mates: typeof value === 'string' ? nameOf('mates', value) : null } }
    case 'name': return { code: 'life-renamed', facts: { name: value } }
    case 'thicknessMm': case 'lengthMm': return { code: 'life-size', facts: { size: field === 'lengthMm' ? 'length' : 'thickness', mm: value } }
    default: return null
  }
}

const whereFacts = (where: Where, nameOf: LifeFacts['nameOf']): Facts =>
  where.at === 'slot' ? { at: 'slot', who: null } : { at: where.at, who: where.at === 'vise' ? nameOf('vise', where.viseId) : where.who }
