import { type KernelLists, pairBytes } from '#engine/kernel/lists.ts'

/** A height or slope as it is mixed from draws of each trial: base + Σ factor · draw. */
export type Mix = { readonly base: number; readonly terms: readonly { readonly factor: number; readonly draws: Float64Array }[] }

/** Of a mix as the kernel reads it: base, and two terms. */
const rowLength = 5

/** Mixes as many places as there are mixes, for a whole batch, anew each time it is called: pair of trials by pair, place by place. */
export function mixerOf(mixes: readonly Mix[], lists: KernelLists, into: Float64Array): () => void {
  const { kernel } = lists, trials = into.length / mixes.length, pairs = trials / 2, step = pairBytes * mixes.length, start = into.byteOffset
  const rows = lists.floats(rowLength * mixes.length), nothing = { factor: 0, draws: lists.floats(trials).fill(0) }
  // most have two terms: a bar's error and a point's own
  mixes.forEach(({ base, terms: [one = nothing, two = nothing] }, place) => rows.set([base, one.draws.byteOffset, one.factor, two.draws.byteOffset, two.factor], rowLength * place))
  const more = mixes.flatMap(({ terms }, place) => terms.slice(2).map(({ factor, draws }) => ({ at: start + pairBytes * place, factor, from: draws.byteOffset })))
  return () => {
    kernel.mixTwo(rows.byteOffset, mixes.length, start, step, pairs)
    for (const { at, factor, from } of more) kernel.mixMore(at, step, pairs, from, factor)
  }
}
