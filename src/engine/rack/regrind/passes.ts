/** A stage of grinding: what one pass takes, and what the stage takes in all; the first stage takes whatever remains. */
export type Stage = { readonly infeedPm: number; readonly takesPm: number }

/**
 * Passes of each stage for what has to come off: the last, finest stage is filled first, then the one before it, and the first takes
 * the rest. A stage with nothing to take has none.
 *
 * All in whole picometres; the millionth of a micrometre that decimals may be off starts no pass.
 */
export function passesOf(stages: readonly Stage[], removalPm: number): readonly number[] {
  let restPm = removalPm
  const passes = stages.toReversed().map(({ infeedPm, takesPm }, fromLast) => {
    const sharePm = fromLast === stages.length - 1 ? restPm : Math.min(takesPm, restPm)
    restPm -= sharePm
    return Math.max(0, Math.ceil((sharePm - slackPm) / infeedPm))
  })
  return passes.reverse()
}

const slackPm = 1
