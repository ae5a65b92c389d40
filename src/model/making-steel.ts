import type { Cited } from '#model/cited.ts'

/** What routes and blanks have to know of a steel. */
export type MakingSteel = Cited & {
  readonly name: string
  readonly carbonPercent: number
  /** As it comes, where it comes hardened; null: soft. */
  readonly deliveredHrc: number | null
  /** Null: does not harden through. */
  readonly hardening: Hardening | null
}

export type Hardening = {
  readonly quench: 'air' | 'oil' | 'water'
  /** After a working temper, published. */
  readonly hrcFrom: number
  readonly hrcTo: number
  /** Change of every size in hardening: 0.15 is growth of 0.15 %, a negative one shrinkage. */
  readonly growthFromPercent: number
  readonly growthToPercent: number
}
