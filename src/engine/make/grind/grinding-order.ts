import type { Finding } from '#model/finding.ts'
import type { Grind, GrindQuestion } from '#engine/make/grind/grinding-job.ts'

type Question = Pick<GrindQuestion, 'sides' | 'bars' | 'sparkOut'>
type Plan = Pick<Grind, 'passesPerSide' | 'turns' | 'shimUm' | 'blockMm'> & { readonly stages: readonly { readonly takesUm: number }[] }

/** The order of grinding a pair: one side of all bars, each bar let down by itself, then the other side of all in the same pass. @source GRIND-RULES */
export function grindingOrder({ sides, bars, sparkOut }: Question, { passesPerSide, turns, shimUm, blockMm, stages }: Plan): readonly Finding[] {
  const onEdge = sides === 'edges', lastUm = stages.at(-1)!.takesUm
  return [
    { code: 'grind-clean-chuck', facts: {} },
    ...(onEdge && bars > 1 ? [{ code: 'grind-pack', facts: { bars } }] : []),
    ...(shimUm === null ? [] : [{ code: 'grind-shim-hollow', facts: { shimUm } }]),
    ...(onEdge ? [{ code: 'grind-block-in', facts: { leastMm: blockMm.leastMm, belowMm: blockMm.belowMm } }] : []),
    { code: 'grind-first-side', facts: { passes: passesPerSide } },
    ...(onEdge && bars > 1 ? [{ code: 'grind-loosen-pack', facts: { bars } }] : []),
    { code: 'grind-turn', facts: { turns } },
    { code: 'grind-second-side', facts: { passes: passesPerSide, bars } },
    { code: 'grind-last-dress', facts: { lastUm } },
    { code: 'grind-spark-out', facts: { sparkOut } },
    { code: 'grind-cool', facts: {} },
    { code: 'grind-break-edges', facts: {} },
  ]
}
