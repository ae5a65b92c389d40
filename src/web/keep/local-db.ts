import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Aside, Entry } from '#web/keep/entry.ts'
import type { Box } from '#web/keep/outbox.ts'

type Local = DBSchema & {
  snapshot: { key: 'shop'; value: ShopSnapshot }
  outbox: { key: number; value: Entry }
  aside: { key: number; value: Aside }
}

let opened: Promise<IDBPDatabase<Local>> | undefined

/** The database of this browser. Rejects where the browser keeps nothing (a private window, a full disk). */
function local(): Promise<IDBPDatabase<Local>> {
  opened ??= openDB<Local>('twinrest', 1, {
    upgrade(db) {
      db.createObjectStore('snapshot')
      db.createObjectStore('outbox', { autoIncrement: true })
      db.createObjectStore('aside')
    },
  })
  return opened
}

export async function keptSnapshot(): Promise<ShopSnapshot | null> {
  return await (await local()).get('snapshot', 'shop') ?? null
}

export async function keepSnapshot(snapshot: ShopSnapshot): Promise<void> {
  await (await local()).put('snapshot', snapshot, 'shop')
}

/** The outbox as it lies on this device. What is added has reached the disk when the promise is kept. */
export const localBox: Box = {
  async add(entry) {
    const tx = (await local()).transaction('outbox', 'readwrite', { durability: 'strict' })
    const [seq] = await Promise.all([tx.store.add(entry), tx.done])
    return seq
  },
  async replace({ seq, entry }) {
    const tx = (await local()).transaction('outbox', 'readwrite', { durability: 'strict' })
    await Promise.all([tx.store.put(entry, seq), tx.done])
  },
  async all() {
    const db = await local()
    const [entries, seqs, aside] = await Promise.all([db.getAll('outbox'), db.getAllKeys('outbox'), db.getAll('aside')])
    return { waiting: entries.map((entry, i) => ({ entry, seq: seqs[i]! })), aside }
  },
  async remove(seq) { await (await local()).delete('outbox', seq) },
  async putAside(aside) {
    const tx = (await local()).transaction(['outbox', 'aside'], 'readwrite', { durability: 'strict' })
    await Promise.all([tx.objectStore('outbox').delete(aside.seq), tx.objectStore('aside').put(aside, aside.seq), tx.done])
  },
  async forgetAside(seq) { await (await local()).delete('aside', seq) },
}
