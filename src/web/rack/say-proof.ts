import { wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { WhyNot } from '#web/rack/proof.ts'
import { sayEvent } from '#web/rack/say-bar.ts'
import { sayDay } from '#web/today.ts'

/** Why a bar is not proved for a use, in a few words beside it. */
export function sayWhyNot(whyNot: WhyNot, { decimalMark }: Units): string {
  const um = (value: number) => `${wordNumber(value, decimalMark, null, 1)} µm`
  switch (whyNot.why) {
    case 'never read': return 'never checked: the height is only marked'
    case 'since then': return `${sayEvent(whyNot.event.kind)} ${sayDay(whyNot.event.atIso)}, after its check`
    case 'rocks': return 'it rocked at its last check'
    case 'wants the plate': return 'wants a check on the plate, both ends and the middle'
    case 'wants a look': return 'wants a quick look: wiped, stoned, no rock, two readings'
    case 'out': return `out: further from parallel than ${um(whyNot.limitUm)}`
    case 'not proved': return whyNot.provedToUm === null ? `not proved to ${um(whyNot.limitUm)}: nobody knows with what it was read` : `proved to ${um(whyNot.provedToUm)}, the limit is ${um(whyNot.limitUm)}`
  }
}
