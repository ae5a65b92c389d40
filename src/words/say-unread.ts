import type { Terms } from '#words/terms.ts'

/** Of setups that are not counted in the work of the shop; at least one. */
export function sayUnread(unread: number, { vise }: Terms): string {
  const one = unread === 1
  return `${unread} saved ${one ? 'setup lacks a size or does' : 'setups lack a size or do'} not go into the ${vise} as it is now: left out.`
}
