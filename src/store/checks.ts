import { canonical } from '#model/canonical.ts'
import type { Check } from '#model/check.ts'
import { Refusal } from '#model/refusal.ts'
import { addFresh } from '#store/add-fresh.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { insertRows } from '#store/insert-rows.ts'
import { inPortions } from '#store/portions.ts'
import { knownOf } from '#store/records.ts'
import type { Tables } from '#store/schema.ts'

/**
 * Puts checks on the shelf as typed, all or none. Whoever sends them makes the ids, so sending again changes nothing.
 *
 * @param bars  ids of bars that are known to be there
 * @throws Refusal `bar-not-known`, `check-not-known`, `bar-left-out` (a correction that leaves a bar without its readings), `id-used-twice`
 */
export async function addChecks(store: Store, checks: readonly Check[], bars: ReadonlySet<string> = new Set()): Promise<void> {
  await inTransaction(store, async (tx) => {
    const fresh = await addFresh(checks, (all) => insertRows(tx, 'check', all.map((check) => rowFrom(tx, check)), 'leave out'), (ids) => checksUnder(tx, ids))
    await mindBars(tx, fresh, bars)
    for (const check of fresh) await mindReplaced(tx, check, fresh)
    const readings = fresh.flatMap(({ id, person, device, readings }) =>
      readings.map((reading, number) => ({ shop: tx.shop, person, device, check: id, number, ...reading })))
    await insertRows(tx, 'reading', readings, 'refuse')
  })
}

/** Every check, or those that have readings of one bar or a look at it; in the order of time, then of ids. */
export async function checksOf(store: Store, bar?: string): Promise<Check[]> {
  if (bar === undefined) return checksAmong(store, null)
  const rows = await store.db.selectFrom('reading').select('check').where('shop', '=', store.shop).where('bar', '=', bar).execute()
  const looks = await store.db.selectFrom('check').select(['id', 'looks']).where('shop', '=', store.shop).where('looks', '!=', '[]').execute()
  const lookedAt = looks.filter((row) => (JSON.parse(row.looks) as Check['looks']).some((look) => look.bar === bar))
  return checksAmong(store, [...new Set([...rows.map((row) => row.check), ...lookedAt.map((row) => row.id)])])
}

/** Those that are kept under these ids. */
export async function checksUnder(store: Store, ids: readonly string[]): Promise<ReadonlyMap<string, Check>> {
  const found: Check[] = []
  for (const some of inPortions(ids)) found.push(...await checksAmong(store, some))
  return new Map(found.map((check) => [check.id, check]))
}

async function checksAmong(store: Store, ids: readonly string[] | null): Promise<Check[]> {
  if (ids?.length === 0) return []
  const checks = await store.db.selectFrom('check').selectAll().where('shop', '=', store.shop)
    .$if(ids !== null, (query) => query.where('id', 'in', ids!)).orderBy('atIso').orderBy('id').execute()
  const readings = await store.db.selectFrom('reading').selectAll().where('shop', '=', store.shop)
    .$if(ids !== null, (query) => query.where('check', 'in', ids!)).orderBy('check').orderBy('number').execute()
  const byCheck = new Map<string, Check['readings']>(checks.map((check) => [check.id, []]))
  for (const { check, bar, station, xMm, line, face, text, heightMm } of readings) {
    byCheck.get(check)!.push({ bar, station, xMm, line: line as 0 | 1, face: face as 'A' | 'B', text, heightMm })
  }
  return checks.map((row) => checkFrom(row, byCheck.get(row.id)!))
}

function rowFrom(store: Store, { readings: _readings, zero, closing, temperature, took, looks, asFound, ...plain }: Check): Tables['check'] {
  const [zeroText, closingText, temperatureText, tookText] = [zero, closing, temperature, took].map((fact) => (fact === null ? null : canonical(fact)))
  return {
    shop: store.shop, ...plain, zero: zeroText!, closing: closingText!, temperature: temperatureText!, took: tookText!,
    looks: canonical(looks), asFound: asFound ? 1 : 0,
  }
}

function checkFrom({ shop: _shop, method, zero, closing, temperature, took, looks, asFound, ...plain }: Tables['check'], readings: Check['readings']): Check {
  const told = (text: string | null) => (text === null ? null : JSON.parse(text))
  return {
    ...plain, method: method as Check['method'], readings, zero: told(zero), closing: told(closing), temperature: told(temperature), took: told(took),
    looks: JSON.parse(looks), asFound: asFound === 1,
  }
}

async function mindBars(store: Store, checks: readonly Check[], bars: ReadonlySet<string>): Promise<void> {
  const known = await knownOf(store, 'bar', checks.flatMap((check) => [...check.readings, ...check.looks].map(({ bar }) => bar)), bars)
  for (const { readings, looks } of checks) {
    for (const [list, all] of [['readings', readings], ['looks', looks]] as const) {
      all.forEach(({ bar }, at) => {
        if (!known.has(bar)) throw new Refusal('bar-not-known', { field: `${list}[${at}].bar`, given: bar })
      })
    }
  }
}

/** A correction names a check there is, and has readings of every bar that one had: no bar loses its only height. */
async function mindReplaced(store: Store, check: Check, beside: readonly Check[]): Promise<void> {
  if (check.replaces === null) return
  const replaced = beside.find((other) => other.id === check.replaces && other.id !== check.id) ?? (await checksAmong(store, [check.replaces]))[0]
  if (!replaced || replaced.id === check.id) throw new Refusal('check-not-known', { field: 'replaces', given: check.replaces })
  const bars = new Set(check.readings.map((reading) => reading.bar))
  const left = replaced.readings.find((reading) => !bars.has(reading.bar))
  if (left) throw new Refusal('bar-left-out', { field: 'readings', given: check.replaces, needed: left.bar })
}
