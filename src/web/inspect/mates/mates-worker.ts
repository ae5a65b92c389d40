import { findMates, type MatesAsked, type MatesSaid } from '#web/inspect/mates/find-mates.ts'

/** Finds mates beside the screen, so that a large rack does not hold it up. */
addEventListener('message', ({ data }: MessageEvent<MatesAsked>) => {
  const say = (said: MatesSaid) => postMessage(said)
  say(findMates(data, (done, of) => say({ lots: [done, of] })))
})
