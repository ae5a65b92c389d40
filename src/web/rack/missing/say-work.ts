import type { WorkLine, WorkOfShop } from '#engine/rack/coverage/work-of-shop.ts'
import { sayUnread } from '#words/say-unread.ts'
import type { Terms } from '#words/terms.ts'
import { listOf } from '#words/wording.ts'

/** What was counted, so that nobody takes a typical mix for the shop's own work. `away`: what the shop keeps alone is not at hand. */
export function sayWork({ lines, unread, unfinished }: WorkOfShop, away: boolean, terms: Terms): string {
  const of = (from: WorkLine['from']) => lines.filter((line) => line.from === from).length
  const parts = [
    [of('setup'), 'saved setup', 'saved setups'], [of('unserved'), 'question that nothing served', 'questions that nothing served'], [of('typical'), 'typical part', 'typical parts, since there are few of your own yet'],
  ] as const
  const counted = parts.filter(([count]) => count > 0).map(([count, one, many]) => `${count} ${count === 1 ? one : many}`)
  return [
    `Counted: ${listOf(counted) || 'nothing yet'}.`,
    ...(unfinished > 0 ? [`${unfinished} of them ${unfinished === 1 ? 'has a cut that lacks' : 'have cuts that lack'} a size, and ${unfinished === 1 ? 'is' : 'are'} counted without.`] : []),
    ...(away ? ['Questions that nothing served are kept by the shop’s server and not counted until it answers.'] : []),
    ...(unread > 0 ? [sayUnread(unread, terms)] : []),
    'Only heights that keep the rules for stick-out, and places among the holes.',
  ].join(' ')
}
