declare module 'edmonds-blossom' {
  /** Matching of greatest weight over edges of whole-number nodes; `manyFirst`: of those with the most pairs. @returns for each node its partner, −1: none */
  export default function edmondsBlossom(edges: readonly (readonly [a: number, b: number, weight: number])[], manyFirst: boolean): readonly number[]
}
