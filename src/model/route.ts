import type { Blank, CutList } from '#model/blank.ts'
import type { Cited } from '#model/cited.ts'
import type { Finding } from '#model/finding.ts'
import type { MakeStep, StepKind } from '#model/make-step.ts'
import type { Sum } from '#model/sum.ts'
import type { Use } from '#model/wishes.ts'

export const routeKinds = ['as drawn', 'as delivered', 'milled', 'rubbed', 'milled prehardened', 'hard milled', 'ground', 'bought'] as const
/** The trade's ways to a pair: as drawn; flat ground or prehardened as delivered; milled soft in pairs; the same rubbed; prehardened and milled; hardened and hard milled; hardened and ground in pairs; bought. */
export type RouteKind = (typeof routeKinds)[number]

/** What a job may be: a way to new bars, or worn ones ground to one new height. */
export const jobRoutes = [...routeKinds, 'regrind'] as const
export type JobRoute = (typeof jobRoutes)[number]

/** What comes out, in µm: of a pair the difference of its mates, of a bar its parallelism. Null: not known. */
export type Band = Cited & { readonly fromUm: number | null; readonly toUm: number | null }

/** `countOn`: what one may count on; `careful`: what careful work reaches, null where nobody says. Of the shop's own checks: `checks` of them. */
export type Expected = {
  readonly match: { readonly countOn: Band; readonly careful: Band | null }
  readonly parallel: { readonly countOn: Band; readonly careful: Band | null }
  readonly checks: number
}

/** What one route came to in this shop before: each value one proven pair or bar. */
export type Experience = {
  readonly route: RouteKind
  readonly matchUm: readonly number[]
  readonly parallelUm: readonly number[]
  /** Hours that were planned and that it took, of all together; null: not noted. */
  readonly hours: { readonly planned: number; readonly taken: number } | null
}

/** Minutes of a step: once for the order, again for each height, for each bar; and how long the machine goes on by itself. */
export type StepTime = { readonly step: StepKind; readonly orderMin: number; readonly heightMin: number; readonly barMin: number; readonly unattendedMin: number }

/** `serves`: nothing stands in the way and it may be counted on for the use; `careful`: with careful work; `short`: it falls short of the use; `blocked`: something is missing. */
export type RouteStatus = 'serves' | 'careful' | 'short' | 'blocked'

export type Route<Kind extends JobRoute = RouteKind> = {
  readonly kind: Kind
  readonly rank: number
  readonly status: RouteStatus
  /** The steel that is hardened; null where none is, or none is there. */
  readonly steel: string | null
  readonly expected: Expected
  /** The finest use it may be counted on for, and with careful work; null: none. */
  readonly use: { readonly countOn: Use | null; readonly careful: Use | null }
  readonly steps: readonly MakeStep[]
  readonly blanks: readonly Blank[]
  readonly cuts: CutList | null
  readonly hours: number
  readonly machineHours: number
  /** Days until it can be there at the earliest. */
  readonly days: number
  readonly cost: Cost
  readonly because: readonly Finding[]
  /** What speaks against it. */
  readonly against: readonly Finding[]
}

/** In the shop's money. `total` null: one of `unpriced` is not known. */
export type Cost = {
  readonly total: number | null
  readonly stock: number | null
  readonly work: number | null
  readonly outside: number | null
  readonly tools: number | null
  readonly unpriced: readonly string[]
}

export type RouteAnswer = { readonly routes: readonly Route[]; readonly best: RouteKind | null; readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }
