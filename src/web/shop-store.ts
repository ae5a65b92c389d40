import { useSyncExternalStore } from 'react'
import { Refusal } from '#model/refusal.ts'
import { shopAfter, type ShopNews } from '#model/shop-news.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { ask, Away, Fault, Unable } from '#web/api.ts'
import type { Entry, Sent } from '#web/keep/entry.ts'
import { keepSnapshot, keptSnapshot, localBox } from '#web/keep/local-db.ts'
import { type OutboxState, outboxOf } from '#web/keep/outbox.ts'
import { snapshotWith } from '#web/keep/snapshot-with.ts'
import { listenTo } from '#web/live.ts'

/** The shop as this device knows it, with all that was done here already in it. */
export type ShopState = {
  /** Null: nothing was ever heard of this shop, `server` says why: `stranger` where it does not let this device in. */
  readonly shop: ShopSnapshot | null
  readonly server: 'asking' | 'here' | 'away' | 'stranger' | { readonly fault: string }
  readonly outbox: OutboxState
}

const refreshMs = 15_000, refreshTypedMs = 3000
const listeners = new Set<() => void>()
const otherTabs = new BroadcastChannel('twinrest')

/** What the shop last told, at which revision; and the same with what of ours it has taken since. */
let heard: { readonly shop: ShopSnapshot; readonly revision: string } | null = null
let told: ShopSnapshot | null = null
let server: ShopState['server'] = 'asking'

export const outbox = outboxOf({
  box: localBox,
  send,
  taken(entry) {
    if (told !== null) setTold(snapshotWith(told, entry))
    // While somebody types, the keys of others can wait a moment; an answer that was asked for before this one came does not know it.
    if (isTyped(entry)) { asked += 1; refreshSoon() } else void refresh()
  },
  after: (ms, run) => { setTimeout(run, ms) },
})

let state: ShopState = { shop: null, server, outbox: outbox.now() }
outbox.onChange(show)

export function shopNow(): ShopState {
  return state
}

export function useShop(): ShopState {
  return useSyncExternalStore((tell) => { listeners.add(tell); return () => listeners.delete(tell) }, shopNow)
}

/** What is on the device first, then the server, and from then on whatever is new as long as somebody looks. */
export async function openShop(): Promise<void> {
  const kept = await keptSnapshot().catch(() => null)
  if (told === null && kept !== null) { told = kept; show() }
  await outbox.open()
  await refresh()
  const look = () => { if (document.visibilityState === 'visible') { outbox.nudge(); void refresh() }; live.look() }
  live.look()
  // Whatever the stream brings is not asked for; without one this is how the shop is followed.
  setInterval(() => { if (live.isOpen() && server === 'here') live.look(); else look() }, refreshMs)
  addEventListener('online', look)
  document.addEventListener('visibilitychange', look)
  otherTabs.addEventListener('message', () => void refresh())
}

let asked = 0
/** Asks the server what became of the shop. An answer that was overtaken by a later question is dropped; nothing new changes nothing. */
export async function refresh(): Promise<void> {
  asked += 1
  const mine = asked
  try {
    const news = await ask<ShopNews>(`/api/shop/since/${heard?.revision ?? 'none'}`)
    if (mine !== asked) return
    if (news.revision === heard?.revision && server === 'here' && told === heard.shop) return
    server = 'here'
    heard = { shop: heard === null || 'whole' in news ? wholeIn(news) : shopAfter(heard.shop, news), revision: news.revision }
    setTold(heard.shop)
  } catch (error) {
    if (mine !== asked) return
    server = error instanceof Fault ? { fault: error.id } : cameOf(error) ?? 'away'
    show()
    if (!(error instanceof Fault || cameOf(error))) throw error
  }
}

const live = listenTo({ onRevision(revision) {
  if (revision !== heard?.revision && !soon) void refresh()
} })

let soon = false
function refreshSoon(): void {
  if (soon) return
  soon = true
  setTimeout(() => { soon = false; void refresh() }, refreshTypedMs)
}

const isTyped = ({ door, body }: Entry): boolean => door === 'deeds' && body.checks.length + body.events.length === 0 && body.changes.every(({ kind }) => kind === 'draft' || kind === 'job')

function wholeIn(news: ShopNews): ShopSnapshot {
  if ('whole' in news) return news.whole
  throw new Away('an answer that is not ours')
}

function setTold(snapshot: ShopSnapshot): void {
  told = snapshot
  show()
  keepSnapshot(snapshot).catch(() => { /* The next answer is kept or not in the same way; the outbox tells the person. */ })
}

function show(): void {
  const now = outbox.now()
  const shop = told === null ? null : now.waiting.reduce((shop, { entry }) => snapshotWith(shop, entry), told)
  state = { shop, server, outbox: now }
  for (const tell of listeners) tell()
}

async function send({ door, body }: Entry): Promise<Sent> {
  try {
    await ask(`/api/${door}`, body)
    otherTabs.postMessage('taken')
    return { came: 'taken' }
  } catch (error) {
    if (error instanceof Unable) return { came: 'unable', code: error.refusal.code, facts: error.refusal.facts }
    const came = cameOf(error)
    if (came === 'stranger') { server = came; show() }
    if (came) return { came }
    if (error instanceof Refusal) return { came: 'refused', code: error.code, facts: error.facts }
    if (error instanceof Fault) return { came: 'fault', id: error.id }
    throw error
  }
}

/** Refusals on the way to the shop, not of what was sent: it is to be sent again when the way is free. */
const onTheWay: readonly string[] = ['too-many-tries', 'unknown-host', 'foreign-origin', 'forwarded-unexpected', 'https-needed']

function cameOf(error: unknown): 'away' | 'stranger' | null {
  if (error instanceof Away) return 'away'
  if (!(error instanceof Refusal)) return null
  return error.code === 'device-not-enrolled' ? 'stranger' : onTheWay.includes(error.code) ? 'away' : null
}
