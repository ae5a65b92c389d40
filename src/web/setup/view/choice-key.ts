import { ways } from '#model/wishes.ts'
import type { Choice } from '#model/setup.ts'

/** Names one way of resting the part for as long as the question stands: `on edge:a,b`. */
export function choiceKey({ stand, stacked, bars }: Pick<Choice, 'stand' | 'stacked' | 'bars'>): string {
  return `${[stand, ...stacked ?? []].join(' ')}:${bars.join(',')}`
}

/** The same bars standing the same way; of a stack nothing is said of how its pairs stand, which a kept setup does not tell. */
export function isSameRest(a: Pick<Choice, 'stand' | 'bars'>, b: Pick<Choice, 'stand' | 'bars'>): boolean {
  return a.stand === b.stand && a.bars.join() === b.bars.join()
}

/** The bars of a key and how they stand; of a stack that it is one. */
export function fromKey(key: string): Pick<Choice, 'bars' | 'stand'> {
  const [named = '', ids = ''] = key.split(':')
  return { stand: ways.find((way) => named.startsWith(way)) ?? 'on edge', bars: ids.split(',').filter((id) => id !== '') }
}
