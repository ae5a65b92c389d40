import type { Say } from '#words/wording.ts'

/** Which of bars, block, bed and closing is behind what the indicator shows. Facts: shareUm (moving side less fixed side), uUm. */
export const guiltyWords: { readonly [code: string]: Say } = {
  'guilty-bars': (facts, w) => `The bars: where they lay first, the one at the ${w.movingJaw} is ${upOrDown(facts, w)}. Wipe and stone them, then check the pair at the plate.`,
  'guilty-block': (facts, w) => `The block itself: the side first at the ${w.movingJaw} is ${upOrDown(facts, w)}. Use a better block.`,
  'guilty-bed': (facts, w) => `The bed, or how the ${w.vise} sits: at the ${w.movingJaw} it is ${upOrDown(facts, w)}. Clean under the ${w.vise} and indicate the bed itself.`,
  'guilty-closing': (facts, w) => `Tightening: the side at the ${w.movingJaw} goes ${rises(facts) ? 'up' : 'down'} by ${size(facts, w)}, lift and lean together. Note it with the ${w.vise}.`,
  'guilty-none': (facts, w) => `Nothing is shown: every share is within twice its uncertainty (${w.micrometres(facts.uUm)} for bars, block and bed).`,
  'guilty-not-known': (facts, w) => `The largest share is that of ${name(facts)}, ${w.micrometres(facts.shareUm)}. Whether it is real, nobody can say without the uncertainty of a reading.`,
}

const rises = (facts: Parameters<Say>[0]): boolean => typeof facts.shareUm === 'number' && facts.shareUm > 0

const size = (...[facts, w]: Parameters<Say>): string => `${w.micrometres(typeof facts.shareUm === 'number' ? Math.abs(facts.shareUm) : undefined)} (standard uncertainty ${w.micrometres(facts.uUm)})`

const upOrDown = (...[facts, w]: Parameters<Say>): string => `${rises(facts) ? 'higher' : 'lower'} by ${size(facts, w)}`

const name = (facts: Parameters<Say>[0]): string => (facts.largest === 'closing' ? 'tightening' : `the ${typeof facts.largest === 'string' ? facts.largest : '?'}`)
