import type { BarEvent } from '#model/bar-event.ts'
import { addEvent, eventsOf } from '#store/events.ts'
import { inTransaction, type Store } from '#store/store.ts'
import { Refusal } from '#model/refusal.ts'
import type { Maker } from '#tasks/maker.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'

/**
 * Takes a bar out of the rack: it is `gone`, and stays in the history.
 *
 * @param idOrCode  the bar's id or the code of its label
 * @returns         the event, whose id `undoEvent` takes back
 * @throws Refusal `bar-not-known`
 */
export function retireBar(store: Store, idOrCode: string, by: Maker, note = ''): Promise<BarEvent> {
  return inTransaction(store, async (tx) => {
    const bar = await barNamed(tx, idOrCode)
    const gone: BarEvent = { id: by.newId(), bar: bar.id, kind: 'gone', undoes: null, note, person: by.person, device: by.device, atIso: by.atIso }
    await addEvent(tx, gone)
    return gone
  })
}

/** Takes back what happened to a bar, as if it had not been. @throws Refusal `event-not-known` */
export function undoEvent(store: Store, eventId: string, by: Maker): Promise<BarEvent> {
  return inTransaction(store, async (tx) => {
    const event = (await eventsOf(tx)).find((one) => one.id === eventId)
    if (!event) throw new Refusal('event-not-known', { field: 'undoes', given: eventId.slice(0, 60) })
    const undone: BarEvent = { id: by.newId(), bar: event.bar, kind: 'undone', undoes: eventId, note: '', person: by.person, device: by.device, atIso: by.atIso }
    await addEvent(tx, undone)
    return undone
  })
}
