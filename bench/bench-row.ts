/** One line of `npm run bench`: what was measured, as a ratio where a peer ran in the same run. */
export type BenchRow = {
  readonly name: string
  readonly figure: string
  readonly target: string
  readonly ratio: number | null
  readonly met: boolean
}
