import type { Facts } from '#model/refusal.ts'
import type { Aside, Entry, Sent, Waiting, Written } from '#web/keep/entry.ts'
import { joinedEntry } from '#web/keep/joined-entry.ts'

/** Where the outbox is written down on the device. */
export type Box = {
  readonly add: (entry: Entry) => Promise<number>
  /** Writes a newer version in an entry's place. */
  readonly replace: (written: Written) => Promise<void>
  readonly all: () => Promise<{ readonly waiting: readonly Written[]; readonly aside: readonly Aside[] }>
  readonly remove: (seq: number) => Promise<void>
  readonly putAside: (aside: Aside) => Promise<void>
  readonly forgetAside: (seq: number) => Promise<void>
}

export type OutboxState = {
  /** Not yet in the shop, oldest first. */
  readonly waiting: readonly Waiting[]
  readonly aside: readonly Aside[]
  /** What keeps the oldest from being sent: the server is away, it does not know this device, its machine cannot, or its fault. */
  readonly trouble: 'away' | 'stranger' | { readonly unable: { readonly code: string; readonly facts: Facts } } | { readonly fault: string } | null
  /** This browser could not write down an entry: it is only in memory. */
  readonly unkept: boolean
}

export type Outbox = {
  readonly now: () => OutboxState
  readonly onChange: (tell: () => void) => () => void
  /** Reads what was left on the device by an earlier visit. */
  readonly open: () => Promise<void>
  /** Writes an entry down and sends it when its turn comes. Never waits for the server. */
  readonly put: (entry: Entry) => void
  /**
   * The same for what is being typed: written down at once, sent a moment later. Until it is sent, the next key of the
   * same record takes its place.
   */
  readonly type: (entry: Entry) => void
  /** Tries at once instead of at the end of the pause. */
  readonly nudge: () => void
  readonly forgetAside: (aside: Aside) => void
}

type Ports = {
  readonly box: Box
  readonly send: (entry: Entry) => Promise<Sent>
  /** Called when the shop has an entry, before it leaves the box. */
  readonly taken: (entry: Entry) => void
  readonly after: (ms: number, run: () => void) => void
}

const firstPauseMs = 1000, longestPauseMs = 30_000
/** Keys that come faster than this after each other travel together. */
const typingMs = 250

/**
 * What was done here, kept here until the shop has it: written down first, sent oldest first, taken out after the
 * answer. A refused entry is put aside with its reason and the next one goes; sending twice is harmless, ids are ours.
 */
export function outboxOf({ box, send, taken, after }: Ports): Outbox {
  let state: OutboxState = { waiting: [], aside: [], trouble: null, unkept: false }
  let sending = false, typing = false, pauseMs = firstPauseMs, pause = 0, keys = 0
  /** The last entry that stands in line to be written down. */
  let unwritten = 0
  let written: Promise<unknown> = Promise.resolve()
  const listeners = new Set<() => void>()
  const set = (part: Partial<OutboxState>) => { state = { ...state, ...part }; for (const tell of listeners) tell() }
  const without = (gone: Waiting) => state.waiting.filter(({ key }) => key !== gone.key)
  const patch = (key: number, part: Partial<Waiting>) => set({ waiting: state.waiting.map((one) => (one.key === key ? { ...one, ...part } : one)) })

  /** A write that this browser cannot make does not stop the work; the person is told that it is kept in memory only. */
  const write = (what: () => Promise<unknown>) => {
    written = written.then(what).catch(() => set({ unkept: true }))
    return written
  }

  async function sendAll(): Promise<void> {
    if (sending) return
    sending = true
    pause += 1
    try {
      while (state.waiting.length > 0 && !isTyped()) {
        await written
        const oldest = state.waiting[0]!
        // What was sent may have arrived even if no answer comes: nothing takes its place from here on.
        patch(oldest.key, { open: false })
        const sent = await send(oldest.entry)
        if (sent.came === 'away' || sent.came === 'stranger') return tryLater(sent.came)
        if (sent.came === 'unable') return tryLater({ unable: { code: sent.code, facts: sent.facts } })
        if (sent.came === 'fault') return tryLater({ fault: sent.id })
        await (sent.came === 'taken' ? settle(oldest) : setAside(oldest, sent))
        pauseMs = firstPauseMs
      }
      set({ trouble: null })
    } finally { sending = false }
  }

  /** All that is left is still being typed. */
  function isTyped(): boolean {
    return typing && state.waiting.length === 1 && state.waiting[0]!.open
  }

  function add(entry: Entry, open: boolean): void {
    keys += 1
    const key = keys
    set({ waiting: [...state.waiting, { key, entry, seq: null, open }] })
    writeDown(key)
  }

  /** Writes an entry as it stands when its turn comes: keys typed meanwhile are in it, and need no turn of their own. */
  function writeDown(key: number): void {
    if (unwritten === key) return
    unwritten = key
    void write(async () => {
      if (unwritten === key) unwritten = 0
      const now = state.waiting.find((one) => one.key === key)
      if (now === undefined) return
      if (now.seq === null) patch(key, { seq: await box.add(now.entry) })
      else await box.replace({ seq: now.seq, entry: now.entry })
    })
  }

  async function settle(done: Waiting): Promise<void> {
    taken(done.entry)
    set({ waiting: without(done), trouble: null })
    if (done.seq !== null) await write(() => box.remove(done.seq!))
    await written
  }

  async function setAside(refused: Waiting, { code, facts }: Sent & { came: 'refused' }): Promise<void> {
    const aside: Aside = { seq: refused.seq ?? -1 - state.aside.length, entry: refused.entry, refusal: { code, facts } }
    set({ waiting: without(refused), aside: [...state.aside, aside], trouble: null })
    await write(() => box.putAside(aside))
  }

  function tryLater(trouble: OutboxState['trouble']): void {
    set({ trouble })
    const mine = pause
    after(pauseMs, () => { if (mine === pause) void sendAll() })
    pauseMs = Math.min(pauseMs * 2, longestPauseMs)
  }

  return {
    now: () => state,
    onChange: (tell) => { listeners.add(tell); return () => listeners.delete(tell) },
    async open() {
      const reading = box.all().then((left) => set({ waiting: [...left.waiting.map(({ seq, entry }) => ({ key: -seq, seq, entry, open: false })), ...state.waiting], aside: left.aside }))
      await reading.catch(() => set({ unkept: true }))
      void sendAll()
    },
    put(entry) {
      add(entry, false)
      void sendAll()
    },
    type(entry) {
      const last = state.waiting.at(-1), joined = last?.open ? joinedEntry(last.entry, entry) : null
      if (last && joined) { patch(last.key, { entry: joined }); writeDown(last.key) } else add(entry, true)
      if (typing) return
      typing = true
      after(typingMs, () => { typing = false; if (state.trouble === null) void sendAll() })
    },
    nudge: () => { pauseMs = firstPauseMs; void sendAll() },
    forgetAside(aside) {
      set({ aside: state.aside.filter((other) => other !== aside) })
      void write(() => box.forgetAside(aside.seq))
    },
  }
}
