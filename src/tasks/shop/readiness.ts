import { Refusal } from '#model/refusal.ts'
import { roomOf } from '#store/room-left.ts'
import { inTransaction, type Store } from '#store/store.ts'

/** Below this much room a shop should be looked after before it stands still. */
const leastFreeBytes = 32 * 1024 * 1024

/** @throws Refusal `disk-nearly-full`, `database-busy`, and whatever else keeps the shop from being written */
export async function mindReady(store: Store): Promise<void> {
  await inTransaction(store, async () => {})
  const room = roomOf(store)
  if (room !== null && room.freeBytes < leastFreeBytes) throw new Refusal('disk-nearly-full', { givenBytes: room.freeBytes, neededBytes: leastFreeBytes })
}
