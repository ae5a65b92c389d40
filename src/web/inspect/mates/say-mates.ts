import { listOf, type NameOf } from '#words/wording.ts'
import type { Accepting } from '#web/inspect/mates/accept.ts'

/** Said before mates are taken: who leaves whom, and who is then left without a mate. Null: nobody. */
export function sayLeaving({ leaves, orphans }: Pick<Accepting, 'leaves' | 'orphans'>, nameOf: NameOf): string | null {
  if (leaves.length === 0) return null
  const left = leaves.length > 6 ? `${leaves.length} bars leave the mates they have` : listOf(leaves.map(({ bar, behind }) => `${nameOf(bar)} leaves ${listOf(behind.map(nameOf))}`))
  return `${left}.${orphans.length === 0 ? '' : ` ${orphans.length > 6 ? `${orphans.length} bars are` : `${listOf(orphans.map(nameOf))} ${orphans.length === 1 ? 'is' : 'are'}`} then without a mate, and no pair any more.`}`
}
