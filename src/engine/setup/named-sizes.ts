import type { Bar } from '#model/bar.ts'
import type { Hole } from '#model/cut.ts'
import type { Rect } from '#model/part.ts'
import type { Vise } from '#model/vise.ts'
import type { Wishes } from '#model/wishes.ts'
import type { InTheWay, PartInPlan } from '#engine/setup/obstacles.ts'
import type { BarInPlan } from '#engine/setup/support.ts'

/** What can be refused about a question that is well formed. `listedAs` names the list of cuts in the facts. */
export type Refusable = {
  readonly vise?: Vise
  readonly part: PartInPlan
  readonly cuts: readonly InTheWay[]
  readonly listedAs?: 'cuts' | 'holes'
  readonly wishes: Wishes
  readonly bars?: readonly (Bar | BarInPlan)[]
}

/** A number of a question and the path of its field. */
export type Named = readonly [field: string, given: number]
/** A size, and what it has to be more than. */
export type Size = readonly [field: string, given: number, above: number]

/** A round part has one field for its two sizes. */
export const sizeField = (part: PartInPlan, name: 'betweenJawsMm' | 'heightMm'): string => (part.shape === 'round' ? 'part.diameterMm' : `part.${name}`)

export const holesOf = (question: Refusable): readonly { readonly hole: Hole; readonly path: string }[] =>
  listed(question).flatMap(({ cut, path }) => (cut.kind === 'hole' ? [{ hole: cut, path }] : []))

/** Every size that has to be more than nothing, in the order of the case. */
export function sizesOf(question: Refusable): readonly Size[] {
  const { vise, part, bars = [] } = question
  return [
    ...sizes([['vise.jawHeightMm', vise?.jawHeightMm], ['vise.lowerJawHeightMm', vise?.lowerJawHeightMm], ['vise.jawWidthMm', vise?.jawWidthMm], ['vise.openingMm', vise?.openingMm]]),
    ...sizes([[sizeField(part, 'heightMm'), part.heightMm], [sizeField(part, 'betweenJawsMm'), part.betweenJawsMm], ['part.alongJawsMm', part.alongJawsMm]]),
    ...part.hollows.flatMap((hollow, k) => rectSizes(`part.hollows[${k}]`, hollow)),
    ...listed(question).flatMap(({ cut, path }) => {
      if (cut.kind === 'hole') return sizes([[`${path}.diameterMm`, cut.diameterMm], [`${path}.pitchMm`, cut.pitchMm]])
      return cut.kind !== 'end' && cut.rect ? rectSizes(`${path}.rect`, cut.rect) : []
    }),
    ...bars.flatMap((bar, k) => sizes('id' in bar
      ? [[`bars[${k}].heightMm`, bar.heightMm], [`bars[${k}].thicknessMm`, bar.thicknessMm], [`bars[${k}].lengthMm`, bar.lengthMm]]
      : [[`bars[${k}].thicknessMm`, bar.acrossMm], [`bars[${k}].lengthMm`, bar.lengthMm]])),
  ]
}

/** Depths below the raw top, of through holes too where one was given. */
export const depthsOf = (question: Refusable): readonly Named[] =>
  listed(question).flatMap(({ cut, path }) => ('depthMm' in cut && cut.depthMm !== undefined ? [[`${path}.depthMm`, cut.depthMm] as const] : []))

export const stocksAndLeadsOf = (question: Refusable): readonly Named[] => listed(question).flatMap(({ cut, path }): readonly Named[] =>
  cut.kind === 'end' ? [[`${path}.stockMm`, cut.stockMm]] : cut.kind === 'hole' ? [[`${path}.leadThreads`, cut.leadThreads]] : [])

/** Every wish that is a number, and every run-through. */
export const wishesOf = (question: Refusable): readonly Named[] => [
  ...Object.entries(question.wishes).flatMap(([name, wish]): readonly Named[] => (typeof wish === 'number' ? [[`wishes.${name}`, wish]] : [])),
  ...listed(question).flatMap(({ cut, path }): readonly Named[] => ('runThroughMm' in cut ? [[`${path}.runThroughMm`, cut.runThroughMm]] : [])),
]

const listed = ({ cuts, listedAs = 'cuts' }: Refusable): readonly { readonly cut: InTheWay; readonly path: string }[] =>
  cuts.map((cut, k) => ({ cut, path: `${listedAs}[${k}]` }))

/** Sizes that have to be more than 0; what was not given is left out. */
const sizes = (named: readonly (readonly [field: string, given: number | null | undefined])[]): readonly Size[] =>
  named.flatMap(([field, given]): readonly Size[] => (typeof given === 'number' ? [[field, given, 0]] : []))

const rectSizes = (path: string, rect: Rect): readonly Size[] => [[`${path}.x1Mm`, rect.x1Mm, rect.x0Mm], [`${path}.y1Mm`, rect.y1Mm, rect.y0Mm]]
