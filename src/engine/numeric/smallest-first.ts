/**
 * Gives the entries of a list in order, each only when asked for: the first few of many cost little more than looking
 * at all once. The list is rearranged. Equal entries come in no certain order.
 */
export function* smallestFirst<Entry>(entries: Entry[], compare: (a: Entry, b: Entry) => number): Generator<Entry, void> {
  for (let at = (entries.length >> 1) - 1; at >= 0; at -= 1) sink(entries, at, entries.length, compare)
  for (let count = entries.length; count > 0; count -= 1) {
    const smallest = entries[0]!
    entries[0] = entries[count - 1]!
    sink(entries, 0, count - 1, compare)
    yield smallest
  }
}

/** Lets one entry of a heap sink below those that are smaller. */
function sink<Entry>(heap: Entry[], from: number, count: number, compare: (a: Entry, b: Entry) => number): void {
  const entry = heap[from]!
  let at = from
  for (;;) {
    let child = 2 * at + 1
    if (child >= count) break
    if (child + 1 < count && compare(heap[child + 1]!, heap[child]!) < 0) child += 1
    if (compare(entry, heap[child]!) <= 0) break
    heap[at] = heap[child]!
    at = child
  }
  heap[at] = entry
}
