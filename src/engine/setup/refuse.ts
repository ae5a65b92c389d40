import type { Bar } from '#model/bar.ts'
import type { Hole } from '#model/cut.ts'
import type { Rect } from '#model/part.ts'
import { Refusal, type Facts } from '#model/refusal.ts'
import type { Vise } from '#model/vise.ts'
import type { Wishes } from '#model/wishes.ts'
import type { InTheWay, PartInPlan } from '#engine/setup/obstacles.ts'
import { tipLengthMm } from '#engine/setup/reach.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** What can be refused about a question that is well formed. `listedAs` names the list of cuts in the facts. */
export type Refusable = {
  readonly vise?: Vise
  readonly part: PartInPlan
  readonly cuts: readonly InTheWay[]
  readonly listedAs?: 'cuts' | 'holes'
  readonly wishes: Wishes
  readonly bars?: readonly (Bar | BarInPlan)[]
}

/**
 * Refuses what cannot be: the first code of the order that applies anywhere. Sizes that are null are left out.
 *
 * @throws Refusal `size-not-positive`, `lower-jaw-above-higher`, `depth-negative`, `wish-negative`,
 * `angle-out-of-range`, `spot-through`, `part-wider-than-opening`, `cut-deeper-than-part`, `hole-off-part`,
 * `blind-hole-breaks-through`, `bar-id-twice`, each with field, given and needed
 */
export function refuseImpossible(question: Refusable): void {
  for (const [code, find] of inOrder) {
    const [facts] = find(question)
    if (facts) throw new Refusal(code, facts)
  }
}

type Find = (question: Refusable) => readonly Facts[]

/** In the order in which they are named. */
const inOrder: readonly (readonly [code: string, find: Find])[] = [
  ['size-not-positive', (question) => sizesOf(question).filter(([, given]) => given <= touchMm).map(([field, given]) => ({ field, given, needed: 0 }))],
  ['lower-jaw-above-higher', ({ vise }) => {
    const given = vise?.lowerJawHeightMm
    return vise && given !== undefined && given > vise.jawHeightMm + touchMm ? [{ field: 'vise.lowerJawHeightMm', given, needed: vise.jawHeightMm }] : []
  }],
  ['depth-negative', (question) => negative(depthsOf(question))],
  ['wish-negative', (question) => negative(wishesOf(question))],
  ['angle-out-of-range', (question) => holesOf(question).filter(({ hole: { tool, pointAngleDeg: deg } }) => tool === 'drill' && !(deg > leastPointDeg && deg <= 180))
    .map(({ hole, path }) => ({ field: `${path}.pointAngleDeg`, given: hole.pointAngleDeg, needed: 180 }))],
  ['spot-through', (question) => holesOf(question).filter(({ hole }) => hole.through && (hole.tool === 'spot' || hole.tool === 'countersink'))
    .map(({ path }) => ({ field: `${path}.through`, given: true, needed: false }))],
  ['part-wider-than-opening', ({ vise, part }) => {
    const given = part.betweenJawsMm
    return vise && given !== null && given > vise.openingMm + touchMm ? [{ field: sizeField(part, 'betweenJawsMm'), given, needed: vise.openingMm }] : []
  }],
  ['cut-deeper-than-part', (question) => depthsOf(question, 'depthMm').filter(([, given]) => question.part.heightMm !== null && given > question.part.heightMm + touchMm)
    .map(([field, given]) => ({ field, given, needed: question.part.heightMm }))],
  ['hole-off-part', (question) => holesOf(question).flatMap(({ hole, path }) => [
    ...offPart(`${path}.xMm`, hole.xMm, question.part.alongJawsMm), ...offPart(`${path}.yMm`, hole.yMm, question.part.betweenJawsMm),
  ])],
  ['blind-hole-breaks-through', ({ part, ...question }) => holesOf({ part, ...question }).flatMap(({ hole, path }) => {
    const tipMm = tipLengthMm(hole)
    if (hole.through || hole.depthMm === undefined || part.heightMm === null || hole.depthMm + tipMm <= part.heightMm + touchMm) return []
    return [{ field: `${path}.depthMm`, given: hole.depthMm, needed: part.heightMm - tipMm, tipMm }]
  })],
  ['bar-id-twice', ({ bars = [] }) => {
    const seen = new Map<string, number>()
    return bars.flatMap((bar, k) => {
      if (!('id' in bar)) return []
      const first = seen.get(bar.id)
      if (first === undefined) seen.set(bar.id, k)
      return first === undefined ? [] : [{ field: `bars[${k}].id`, given: bar.id, needed: 'another id', first: `bars[${first}].id` }]
    })
  }],
]

/** Degrees. A point sharper than this is no angle but a slip, and its length no number. */
const leastPointDeg = 1e-6

type Named = readonly [field: string, given: number]

const negative = (named: readonly Named[]): readonly Facts[] =>
  named.filter(([, given]) => given < -touchMm).map(([field, given]) => ({ field, given, needed: 0 }))

/** A round part has one field for its two sizes. */
const sizeField = (part: PartInPlan, name: 'betweenJawsMm' | 'heightMm') => (part.shape === 'round' ? 'part.diameterMm' : `part.${name}`)

const offPart = (field: string, given: number | null, sizeMm: number | null): readonly Facts[] =>
  given !== null && sizeMm !== null && (given < -touchMm || given > sizeMm + touchMm) ? [{ field, given, needed: sizeMm }] : []

/** Only what was given: a name with undefined or null is left out. */
const given = (...named: readonly (readonly [field: string, given: number | null | undefined])[]): readonly Named[] =>
  named.filter((one): one is Named => typeof one[1] === 'number')

function listOf({ cuts, listedAs = 'cuts' }: Refusable): readonly { readonly cut: InTheWay; readonly path: string }[] {
  return cuts.map((cut, k) => ({ cut, path: `${listedAs}[${k}]` }))
}

const holesOf = (question: Refusable): readonly { readonly hole: Hole; readonly path: string }[] =>
  listOf(question).flatMap(({ cut, path }) => (cut.kind === 'hole' ? [{ hole: cut, path }] : []))

function sizesOf(question: Refusable): readonly Named[] {
  const { vise, part, bars = [] } = question
  return [
    ...given(['vise.jawHeightMm', vise?.jawHeightMm], ['vise.lowerJawHeightMm', vise?.lowerJawHeightMm], ['vise.jawWidthMm', vise?.jawWidthMm], ['vise.openingMm', vise?.openingMm]),
    ...given([sizeField(part, 'heightMm'), part.heightMm], [sizeField(part, 'betweenJawsMm'), part.betweenJawsMm], ['part.alongJawsMm', part.alongJawsMm]),
    ...part.hollows.flatMap((hollow, k) => rectSizes(`part.hollows[${k}]`, hollow)),
    ...listOf(question).flatMap(({ cut, path }) => {
      if (cut.kind === 'hole') return given([`${path}.diameterMm`, cut.diameterMm], [`${path}.pitchMm`, cut.pitchMm])
      return cut.kind !== 'end' && cut.rect ? rectSizes(`${path}.rect`, cut.rect) : []
    }),
    ...bars.flatMap((bar, k) => 'id' in bar
      ? given([`bars[${k}].heightMm`, bar.heightMm], [`bars[${k}].thicknessMm`, bar.thicknessMm], [`bars[${k}].lengthMm`, bar.lengthMm])
      : given([`bars[${k}].thicknessMm`, bar.acrossMm], [`bars[${k}].lengthMm`, bar.lengthMm])),
  ]
}

const rectSizes = (path: string, rect: Rect): readonly Named[] =>
  given([`${path}.x1Mm`, rect.x1Mm - rect.x0Mm], [`${path}.y1Mm`, rect.y1Mm - rect.y0Mm])

/** Depths as given; `only` the depths below the raw top. */
function depthsOf(question: Refusable, only?: 'depthMm'): readonly Named[] {
  const named = listOf(question).flatMap(({ cut, path }): readonly Named[] => {
    if (cut.kind === 'hole') return given([`${path}.depthMm`, cut.depthMm], [`${path}.leadThreads`, cut.leadThreads])
    if (cut.kind === 'end') return given([`${path}.stockMm`, cut.stockMm])
    return cut.kind === 'through' ? [] : given([`${path}.depthMm`, cut.depthMm])
  })
  return only ? named.filter(([field]) => field.endsWith(`.${only}`)) : named
}

/** Every wish that is a number, and every run-through. */
function wishesOf(question: Refusable): readonly Named[] {
  return [
    ...given(...Object.entries(question.wishes).map(([name, wish]) => [`wishes.${name}`, typeof wish === 'number' ? wish : null] as const)),
    ...listOf(question).flatMap(({ cut, path }) => ('runThroughMm' in cut ? given([`${path}.runThroughMm`, cut.runThroughMm]) : [])),
  ]
}
