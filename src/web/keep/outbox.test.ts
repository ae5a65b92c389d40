import { expect, test } from 'vitest'
import type { Aside, Entry, Sent, Written } from '#web/keep/entry.ts'
import { type Box, outboxOf } from '#web/keep/outbox.ts'

const entry = (record: string): Entry => ({
  door: 'deeds', body: { changes: [{ id: record, kind: 'slot', record, person: '', device: 'd', atIso: '2025-01-01T00:00:00Z', fields: {} }], checks: [], events: [] },
})
const nameOf = (one: Entry): string => (one.door === 'deeds' ? one.body.changes[0]!.record : one.door)

/** A device in memory, a shop that answers as told, and a clock that is moved by hand. */
function bench(left: readonly Written[] = []) {
  const kept = new Map<number, Entry>(left.map(({ seq, entry: one }) => [seq, one])), aside = new Map<number, Aside>()
  const log: string[] = [], pauses: number[] = []
  let answer: (one: Entry) => Sent = () => ({ came: 'taken' }), due: (() => void)[] = [], seq = kept.size, full = false
  const box: Box = {
    add: async (one) => { if (full) throw new Error('the disk is full'); log.push(`write ${nameOf(one)}`); kept.set(seq += 1, one); return seq },
    replace: async ({ seq: at, entry: one }) => { log.push(`rewrite ${nameOf(one)}`); kept.set(at, one) },
    all: async () => ({ waiting: [...kept].map(([at, one]) => ({ seq: at, entry: one })), aside: [...aside.values()] }),
    remove: async (at) => { log.push(`drop ${nameOf(kept.get(at)!)}`); kept.delete(at) },
    putAside: async (one) => { kept.delete(one.seq); aside.set(one.seq, one) },
    forgetAside: async (at) => { aside.delete(at) },
  }
  const outbox = outboxOf({
    box, taken: () => {},
    send: async (one) => { log.push(`send ${nameOf(one)}`); return answer(one) },
    after: (ms, run) => { pauses.push(ms); due.push(run) },
  })
  const settle = async () => { for (let i = 0; i < 60; i += 1) await Promise.resolve() }
  return {
    outbox, kept, aside, log, pauses, settle,
    shop: (next: typeof answer) => { answer = next },
    tick: async () => { const now = due; due = []; for (const run of now) run(); await settle() },
    fill: () => { full = true },
  }
}

test('an entry is written down before it is sent, and dropped after the answer', async () => {
  const { outbox, log, kept, settle } = bench()
  outbox.put(entry('a'))
  await settle()
  expect(log).toEqual(['write a', 'send a', 'drop a'])
  expect(kept.size).toBe(0)
  expect(outbox.now().waiting).toEqual([])
})

test('oldest first, what an earlier visit left before what is new', async () => {
  const { outbox, log, settle } = bench([{ seq: 1, entry: entry('left') }])
  const opening = outbox.open()
  await opening
  outbox.put(entry('a'))
  outbox.put(entry('b'))
  await settle()
  expect(log.filter((line) => line.startsWith('send'))).toEqual(['send left', 'send a', 'send b'])
})

test('while the shop is away nothing is lost or overtaken, and the pauses grow', async () => {
  const { outbox, shop, log, kept, pauses, tick, settle } = bench()
  shop(() => ({ came: 'away' }))
  outbox.put(entry('a'))
  outbox.put(entry('b'))
  await settle()
  await tick()
  await tick()
  expect(outbox.now().trouble).toBe('away')
  expect(kept.size).toBe(2)
  expect(log.filter((line) => line.startsWith('send'))).toEqual(['send a', 'send a', 'send a'])
  expect(pauses).toEqual([1000, 2000, 4000])
  shop(() => ({ came: 'taken' }))
  outbox.nudge()
  await settle()
  expect(kept.size).toBe(0)
  expect(outbox.now().trouble).toBeNull()
})

test('a pause that was cut short by a nudge does not send a second time', async () => {
  const { outbox, shop, log, tick, settle } = bench()
  shop(() => ({ came: 'fault', id: 'f1' }))
  outbox.put(entry('a'))
  await settle()
  expect(outbox.now().trouble).toEqual({ fault: 'f1' })
  shop(() => ({ came: 'taken' }))
  outbox.nudge()
  await settle()
  await tick()
  expect(log.filter((line) => line === 'send a')).toHaveLength(2)
})

test('a refused entry is put aside with its reason, and the next one goes', async () => {
  const { outbox, shop, kept, aside, settle } = bench()
  shop((one) => (nameOf(one) === 'a' ? { came: 'refused', code: 'unknown-record', facts: { given: 'a' } } : { came: 'taken' }))
  outbox.put(entry('a'))
  outbox.put(entry('b'))
  await settle()
  expect(outbox.now().aside.map(({ refusal }) => refusal.code)).toEqual(['unknown-record'])
  expect([kept.size, aside.size]).toEqual([0, 1])
  outbox.forgetAside(outbox.now().aside[0]!)
  await settle()
  expect([outbox.now().aside.length, aside.size]).toEqual([0, 0])
})

const valueIn = (one: Entry | undefined) => (one?.door === 'deeds' ? one.body.changes[0]!.fields['typed'] : undefined)
const key = (id: string, value: string, saw: readonly string[]): Entry => ({
  door: 'deeds', body: { changes: [{ id, kind: 'draft', record: 'check', person: 'A', device: 'd', atIso: '2025-01-01T00:00:00Z', fields: { typed: { value, saw: [...saw] } } }], checks: [], events: [] },
})

test('keys of one record travel together: on the device at once, sent a moment later, and what was never sent is seen by nobody', async () => {
  const { outbox, log, kept, tick, settle } = bench()
  outbox.type(key('k1', '+', ['c0']))
  outbox.type(key('k2', '+3', ['k1']))
  await settle()
  outbox.type(key('k3', '+3.5', ['k2']))
  await settle()
  expect(log).toEqual(['write check', 'rewrite check'])
  expect([...kept.values()].map(valueIn)).toEqual([{ value: '+3.5', saw: ['c0'] }])
  await tick()
  expect(log.slice(2)).toEqual(['send check', 'drop check'])
  expect(kept.size).toBe(0)
})

test('a key does not take the place of one that was sent, for it may have arrived though no answer came', async () => {
  const { outbox, shop, kept, tick, settle } = bench()
  shop(() => ({ came: 'away' }))
  outbox.type(key('k1', '1', []))
  await tick()
  outbox.type(key('k2', '12', ['k1']))
  outbox.type(key('k3', '123', ['k2']))
  await settle()
  expect([...kept.values()].map(valueIn)).toEqual([{ value: '1', saw: [] }, { value: '123', saw: ['k1'] }])
})

test('what is done after typing goes after it and waits for no moment', async () => {
  const { outbox, log, settle } = bench()
  outbox.type(key('k1', '1', []))
  outbox.put(entry('a'))
  await settle()
  expect(log.filter((line) => line.startsWith('send'))).toEqual(['send check', 'send a'])
})

test('a device that keeps nothing still sends, and says so', async () => {
  const { outbox, fill, log, settle } = bench()
  fill()
  outbox.put(entry('a'))
  await settle()
  expect(log).toEqual(['send a'])
  expect(outbox.now()).toMatchObject({ unkept: true, waiting: [] })
})

test('a shop that does not let this device in gets nothing and loses nothing; once it does, all goes in order', async () => {
  const { outbox, shop, log, kept, aside, tick, settle } = bench()
  shop(() => ({ came: 'stranger' }))
  outbox.put(entry('a'))
  outbox.put(entry('b'))
  await settle()
  await tick()
  expect([outbox.now().trouble, outbox.now().waiting.length, kept.size, aside.size]).toEqual(['stranger', 2, 2, 0])
  expect(log).not.toContain('send b')
  shop(() => ({ came: 'taken' }))
  outbox.nudge()
  await settle()
  expect([outbox.now().trouble, kept.size]).toEqual([null, 0])
  expect(log.filter((line) => line.startsWith('drop'))).toEqual(['drop a', 'drop b'])
})
