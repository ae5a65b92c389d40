import type { SortedBox } from '#engine/inspect/used-box.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** What is written on each bar, by its id; mates share the letter. */
export type NamesToWrite = { readonly [bar: string]: string }

/**
 * Names that nobody in the rack has yet: pairs by letters with 1 and 2, bars to be ground and to be drilled into by number.
 *
 * @param typed  what the person would rather write, by bar; empty texts do not count
 */
export function namesToWrite({ pairs, regrind, drillBars }: Pick<SortedBox, 'pairs' | 'regrind' | 'drillBars'>, { bars, mates }: Pick<ShopSnapshot, 'bars' | 'mates'>, typed: NamesToWrite): NamesToWrite {
  const taken = new Set([...bars.map(({ name }) => name), ...mates.map(({ name }) => name)].map((name) => name.toUpperCase().replace(/ \d+$/, '')))
  const letters = freshLetters(taken), names: { [bar: string]: string } = {}
  for (const { bars: two } of [...pairs, ...regrind.filter((one) => one.bars.length > 1)]) {
    const letter = letters.next().value as string
    two.forEach((bar, at) => { names[bar] = `${letter} ${at + 1}` })
  }
  for (const bar of [...regrind.filter((one) => one.bars.length === 1).map((one) => one.bars[0]!), ...drillBars.map((one) => one.bar)]) names[bar] = letters.next().value as string
  for (const [bar, name] of Object.entries(typed)) if (name.trim() !== '' && bar in names) names[bar] = name.trim()
  return names
}

/** What two names have in common before their number, as the name of the mates. */
export function nameOfMates(first: string, second: string): string {
  const [one, two] = [first, second].map((name) => name.replace(/ ?\d+$/, ''))
  return one === two ? one! : ''
}

/** A to Z, then AA, AB and so on; I and O are left out, they read as figures. */
function* freshLetters(taken: ReadonlySet<string>): Generator<string, never> {
  const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ'
  for (let count = 0; ; count += 1) {
    const name = count < letters.length ? letters[count]! : `${letters[Math.floor(count / letters.length) - 1] ?? `Z${count}`}${letters[count % letters.length]}`
    if (!taken.has(name)) yield name
  }
}
