// The search finds its choices without listing what there is. Here all of it is listed, straight from the rules
// (docs/setup-rules.md; common practice, no source), and sorted; on thousands of small racks both must say the same.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { trusts, whereabouts, type Bar } from '#model/bar.ts'
import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import type { Offer, RejectionReason, SetupQuestion } from '#model/setup.ts'
import { ways, type Way, type Wishes } from '#model/wishes.ts'
import { atSeatOf } from '#engine/setup/at-seat.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { inTheWayAtPlain, isTooThick, placesOf } from '#engine/setup/places.ts'
import { commonMatchUm, commonWishes } from '#engine/setup/read-wishes.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { isInEndCut } from '#engine/setup/travel.ts'
import { lowLimitsOf, windowOf } from '#engine/setup/window.ts'

type Candidate = {
  readonly stand: Way
  readonly stacked: readonly string[] | null
  readonly bars: readonly Bar[]
  readonly seatMm: number
  readonly matchUm: number | null
  readonly reasons: readonly RejectionReason[]
  readonly key: readonly number[]
}

const touch = 1e-6

/** Every candidate with its reasons and what the order compares. */
function listAll(question: SetupQuestion, rack: readonly Bar[]): readonly Candidate[] {
  const { part, cuts, wishes } = question, window = windowOf(question), obstacles = obstaclesOf(part, cuts, wishes), round = part.shape === 'round'
  const sorted = rack.toSorted((a, b) => (a.id < b.id ? -1 : 1)), drilling = wishes.use === 'drilling'
  const upOf = (bar: Bar, stand: string) => (stand === 'lying flat' ? bar.thicknessMm : bar.heightMm)
  const acrossOf = (bar: Bar, stand: string) => (stand === 'lying flat' ? bar.heightMm : bar.thicknessMm)
  const placed = remembered((bars: readonly BarInPlan[]) => ({ places: bars.length === 0 ? null : placesOf(obstacles, bars), inTheWay: inTheWayAtPlain(obstacles, bars) }))
  const isMarked = (bar: Bar, stand: string) => (stand === 'lying flat' ? bar.thicknessStanding : bar.standing) === 'marked'

  const judge = (stand: Way, layers: readonly { readonly stand: string; readonly bars: readonly Bar[] }[], stacked: readonly string[] | null): Candidate => {
    const bars = layers.flatMap((layer) => layer.bars), [bottom] = layers
    const inPlan = (bottom?.bars ?? []).map((bar) => ({ acrossMm: acrossOf(bar, bottom!.stand), lengthMm: bar.lengthMm }))
    const seatMm = layers.reduce((sum, layer) => sum + layer.bars.reduce((up, bar) => up + upOf(bar, layer.stand), 0) / layer.bars.length, 0)
    const { places, inTheWay } = placed(inPlan)
    const differences = layers.map((layer) => (layer.bars.length < 2 ? 0 : (upOf(layer.bars[0]!, layer.stand) - upOf(layer.bars[1]!, layer.stand)) * 1000))
    const marked = layers.some((layer) => layer.bars.length === 2 && layer.bars.some((bar) => isMarked(bar, layer.stand)))
    const matchUm = marked ? null : Math.abs(differences.reduce((sum, one) => sum + one, 0))
    const unmatched = layers.some((layer, k) => layer.bars.length === 2 && !layer.bars.some((bar) => isMarked(bar, layer.stand)) && Math.abs(differences[k]!) > wishes.matchUm + 1e-3)
    const columns = inTheWay.map((holes, side) => ({ holes, bars: layers.map((layer) => layer.bars[side]!) }))
    const cutInto = columns.some((column) => column.holes.length > 0 && column.bars.some((bar) => bar.trust !== 'drill bar'))
    const reasons: (RejectionReason | false)[] = [
      bars.some((bar) => bar.trust === 'in work' || bar.trust === 'gone') && 'not-available',
      round && stand !== 'single' && stand !== 'bed' && 'round-on-two-bars',
      unmatched && 'not-matched',
      !drilling && layers.some((layer) => layer.stand === 'lying flat' && layer.bars.some((bar) => bar.thicknessStanding === 'marked')) && 'thickness-not-measured',
      inPlan.length > 0 && isTooThick(obstacles, inPlan) && 'too-thick',
      seatMm < window.lowMm - touch && 'too-low',
      seatMm > window.highMm + touch && 'too-high',
      inPlan.some((bar) => isInEndCut(obstacles, bar.lengthMm)) && 'bar-in-cut',
      places?.status === 'fouled' && cutInto && 'fouled',
      places?.offBalance === true && 'off-balance',
      places?.notCarried === true && 'not-carried',
    ]
    const { gripMm, stickOutMm } = atSeatOf(question, window, seatMm), acrossMm = Math.max(0, ...inPlan.map((bar) => bar.acrossMm))
    const worst = Math.max(0, ...bars.map((bar) => trusts.indexOf(bar.trust)))
    const goUp = (value: number) => Math.floor(value + 0.5 + 1e-6)
    const key = [
      seatMm <= window.advisedHighMm + touch ? 0 : 1,
      drilling && worst <= 2 ? 0 : worst,
      ways.indexOf(stand),
      ['at the jaws', 'in the middle', 'on the bed'].includes(places?.status ?? 'on the bed') ? 0 : places!.status === 'shifted' ? 1 : places!.status === 'fouled' ? 3 : 2,
      goUp(10 * Math.max(0, -stickOutMm)),
      -goUp(gripMm),
      Math.max(0, ...bars.map((bar) => whereabouts.indexOf(bar.where))),
      matchUm === null ? Infinity : wishes.toleranceUm === null ? 0 : goUp(10 * matchUm),
      Math.round(acrossMm * 1e5) * (stand === 'single' ? -1 : 1),
    ]
    return { stand, stacked, bars, seatMm, matchUm, reasons: reasons.filter((reason) => reason !== false), key }
  }

  const pairs = sorted.flatMap((a, k) => sorted.slice(k + 1).filter((b) => a.mates !== undefined && a.mates === b.mates).map((b) => [a, b] as const))
  const two = (['on edge', 'lying flat'] as const).flatMap((stand) => pairs.map((bars) => ({ stand, bars })))
  const found: Candidate[] = [
    ...two.map((layer) => judge(layer.stand, [layer], null)),
    ...sorted.filter((bar) => round || isTooThick(obstacles, [bar, bar].map(({ thicknessMm, lengthMm }) => ({ acrossMm: thicknessMm, lengthMm })))).map((bar) => judge('single', [{ stand: 'on edge', bars: [bar] }], null)),
    judge('bed', [], null),
  ]
  const inStack = two.filter(({ stand, bars }) => stand === 'lying flat' || bars.every((bar) => bar.thicknessMm >= bar.heightMm / wishes.stackRatio - touch))
  for (const lower of inStack) {
    for (const upper of inStack) {
      if (upper.bars.some((bar) => (lower.bars as readonly Bar[]).includes(bar))) continue
      if (Math.max(...upper.bars.map((bar) => acrossOf(bar, upper.stand))) > Math.min(...lower.bars.map((bar) => acrossOf(bar, lower.stand))) + touch) continue
      // the upper two change sides where that levels the columns better
      const [down, up] = [lower, upper].map((layer) => upOf(layer.bars[0], layer.stand) - upOf(layer.bars[1], layer.stand)) as [number, number]
      const crossed = ![lower, upper].some((layer) => layer.bars.some((bar) => isMarked(bar, layer.stand))) && Math.abs(down - up) < Math.abs(down + up) - 1e-9
      found.push(judge('stack', [lower, crossed ? { ...upper, bars: upper.bars.toReversed() } : upper], [lower.stand, upper.stand]))
    }
  }
  return found.filter(({ stand }) => question.ways.includes(stand))
}

function remembered<Asked, Told>(work: (asked: Asked) => Told): (asked: Asked) => Told {
  const known = new Map<string, Told>()
  return (asked) => {
    const name = JSON.stringify(asked), told = known.get(name) ?? work(asked)
    known.set(name, told)
    return told
  }
}

const idsOf = ({ bars }: Candidate) => bars.map((bar) => bar.id)

function compareLists(a: readonly (number | string)[], b: readonly (number | string)[]): number {
  const at = a.findIndex((value, k) => value !== b[k])
  return at < 0 ? a.length - b.length : b[at] === undefined || a[at]! > b[at] ? 1 : -1
}

/** What an answer must say, from the full list; ranks of the first `ranked` choices. */
function naive(question: SetupQuestion, rack: readonly Bar[], ranked = Infinity) {
  const all = listAll(question, rack), window = windowOf(question)
  const serve = all.filter(({ reasons }) => reasons.length === 0).toSorted((a, b) => compareLists(a.key, b.key) || compareLists(idsOf(a), idsOf(b)))
  const ranks = serve.slice(0, ranked).reduce<number[]>((all, { key }, k) => [...all, k > 0 && compareLists(serve[k - 1]!.key, key) === 0 ? all[k - 1]! : k + 1], [])
  const choices = serve.slice(0, ranked).map((one, k) => ({ name: nameOf({ ...one, bars: idsOf(one) }), rank: ranks[k]! }))
  const rejected = all.filter(({ reasons, stand }) => reasons.length > 0 && stand !== 'stack').map((one) => `${nameOf({ ...one, bars: idsOf(one) })}: ${one.reasons.join(' ')}`)
  return {
    choices, rejected: rejected.toSorted(), serve,
    best: choices.length > 0 && choices[1]?.rank !== 1 ? { bars: idsOf(serve[0]!), stand: serve[0]!.stand } : null,
    make: serve.length === 0 && window.widthMm >= -touch ? { lowMm: window.lowMm, highMm: window.highMm } : null,
    offers: serve.length > 0 ? undefined : offersFrom(question, all),
  }
}

function offersFrom(question: SetupQuestion, all: readonly Candidate[]): readonly string[] {
  const { wishes } = question, window = windowOf(question), limits = lowLimitsOf(question)
  return all.flatMap((one) => {
    const above = (['cutter-over-jaw', 'drill-tip', 'through-cut'] as const).filter((limit) => (limits[limit] ?? -Infinity) > one.seatMm + touch)
    const loss = (wish: Offer['wish'], from: number, d: number, least: number) => (from - d >= least ? [{ one, wish, toMm: from - d, d }] : [])
    if (one.reasons.length !== 1) return []
    if (one.reasons[0] === 'too-high') return window.gripWishMm === null ? [] : loss('gripMm', window.gripWishMm, one.seatMm - window.highMm, 1e-6)
    if (one.reasons[0] !== 'too-low' || above.length === 0) return []
    if (above.length === 1 && above[0] === 'cutter-over-jaw') return loss('airMm', wishes.airMm, limits['cutter-over-jaw']! - one.seatMm, -touch)
    if (above.includes('cutter-over-jaw')) return []
    return loss('bedAirMm', wishes.bedAirMm, Math.max(...above.map((limit) => limits[limit]!)) - one.seatMm, -touch)
  })
    .toSorted((a, b) => Math.round(a.d * 1e5) - Math.round(b.d * 1e5) || compareLists(idsOf(a.one), idsOf(b.one)) || ways.indexOf(a.one.stand) - ways.indexOf(b.one.stand))
    .slice(0, 5).map(({ one, wish, toMm }) => `${wish} ${toMm.toFixed(5)} ${nameOf({ ...one, bars: idsOf(one) })}`)
}

const nameOf = ({ stand, stacked, bars }: { stand: Way; stacked?: readonly string[] | null | undefined; bars: readonly string[] }) =>
  [stand, ...(stacked ? stacked.map((one) => one[0]) : []), ...bars].join(' ')

// Sizes on coarse rasters, so that ties, equal losses and exact fits are met often.
const raster = (from: number, to: number, step: number) => fc.integer({ min: 0, max: Math.round((to - from) / step) }).map((n) => Math.round((from + n * step) * 1e4) / 1e4)
const often = <const Value>(usual: Value, ...others: readonly Value[]) => fc.oneof({ weight: 3, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: fc.constantFrom(...others) })

const mates = fc.record({
  heightMm: fc.oneof(raster(4, 40, 1), raster(20, 30, 0.1)), thicknessMm: fc.constantFrom(4, 5, 6.35, 8, 10, 14), lengthMm: fc.constantFrom(30, 60, 100, 150), count: fc.integer({ min: 1, max: 3 }),
  apart: fc.array(fc.record({
    um: fc.constantFrom(0, 0, 0, 0.5, 1, 2, 4, 12), thicknessUm: fc.constantFrom(0, 0, 0, 3), trust: often(...trusts), where: often('slot' as const, 'here', 'out'),
    standing: often('measured' as const, 'marked'), thicknessStanding: often('measured' as const, 'marked'), odd: often(false, true),
  }), { minLength: 3, maxLength: 3 }),
})
const racks = fc.array(mates, { maxLength: 6 }).map((groups): readonly Bar[] => groups.flatMap(({ heightMm, thicknessMm, lengthMm, count, apart }, g) =>
  apart.slice(0, count).map(({ um, thicknessUm, odd, ...rest }, k): Bar => ({
    // ids against the order of the rack
    id: `${'gfedcb'[g]}${'231'[k]}`, heightMm: heightMm + um / 1000, thicknessMm: thicknessMm + thicknessUm / 1000, lengthMm, ...(odd && g > 3 ? {} : { mates: `m${g}` }), ...rest,
  }))))

const holes = fc.record({ xMm: fc.oneof(fc.constant(null), raster(0, 60, 5)), yMm: raster(0, 30, 2), diameterMm: fc.constantFrom(3, 6, 9) })
  .map((hole): Cut => ({ kind: 'hole', tool: 'drill', through: true, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4, ...hole }))
const cutsOf = fc.tuple(
  fc.oneof(fc.constant([]), fc.constantFrom(0, 2, 6).map((depthMm): Cut[] => [{ kind: 'face', depthMm, overJaw: true, runThroughMm: 0.5 }])),
  fc.oneof({ weight: 2, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.array(holes, { maxLength: 4 }) }),
  fc.oneof({ weight: 4, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.constant([{ kind: 'end', side: 'left', stockMm: 1 }] as Cut[]) }),
).map((parts) => parts.flat())

const parts = fc.record({
  shape: often('block' as const, 'round'), betweenJawsMm: fc.oneof(fc.constantFrom(12, 20, 38), fc.constant(null)), alongJawsMm: fc.oneof({ weight: 4, arbitrary: fc.constantFrom(60, 80) }, { weight: 1, arbitrary: fc.constant(null) }),
  heightMm: fc.oneof(raster(8, 30, 1), raster(8, 30, 0.25)), hollow: often(false, true),
}).map(({ shape, hollow, ...sizes }): Part => ({
  ...sizes, shape, ...(shape === 'round' ? { betweenJawsMm: sizes.heightMm } : {}), hollows: hollow ? [{ x0Mm: 20, x1Mm: 40, y0Mm: 0, y1Mm: 6 }] : [],
}))

const wishes = fc.record({
  use: often('milling' as const, 'drilling', 'grinding'), toleranceUm: often<number | null>(null, 20), gripMm: often<number | 'auto'>(10, 'auto', 3), airMm: fc.constantFrom(0, 1), stackRatio: often(3, 2),
}).map((given): Wishes => ({ ...commonWishes, ...given, matchUm: commonMatchUm[given.use] }))

const questions = fc.record({
  vise: fc.constantFrom({ jawHeightMm: 45, openingMm: 100 }, { jawHeightMm: 30, openingMm: 100 }, { jawHeightMm: 32, lowerJawHeightMm: 30, openingMm: 100 }),
  part: parts, cuts: cutsOf, wishes, ways: often<readonly Way[]>(ways, ['on edge', 'lying flat', 'single'], ['stack'], ['single', 'stack'], ['bed', 'lying flat']),
})

test('the search finds what a full list finds: choices and their ranks, rejections, best, make and offers', () => {
  let met = { choices: 0, stacks: 0, offers: 0, ties: 0 }
  fc.assert(fc.property(questions, racks, fc.nat(12), (question: SetupQuestion, rack, cut) => {
    const index = indexRack(rack), answer = chooseBars(question, index), expected = naive(question, rack)
    const named = (choices: typeof answer.choices) => choices.map((choice) => ({ name: nameOf(choice), rank: choice.rank }))
    expect(named(answer.choices)).toEqual(expected.choices)
    expect(answer.rejected.map((one) => `${nameOf(one)}: ${one.reasons.join(' ')}`).toSorted()).toEqual(expected.rejected)
    expect([answer.best, answer.make]).toEqual([expected.best, expected.make])
    expect(answer.offers?.map((offer) => `${offer.wish} ${offer.toMm.toFixed(5)} ${nameOf(offer)}`)).toEqual(expected.offers)
    // cut short, nothing but the length changes
    const short = chooseBars({ ...question, most: cut, rejectedMost: 0 }, index)
    expect(named(short.choices)).toEqual(expected.choices.slice(0, cut))
    expect([short.best, short.make, short.rejected]).toEqual([expected.best, expected.make, []])
    const only = rack.filter((_, k) => (k + cut) % 3 > 0).map((bar) => bar.id), some = chooseBars({ ...question, only, rejectedMost: 3 }, index)
    expect(named(some.choices)).toEqual(expected.choices.filter((_, k) => idsOf(expected.serve[k]!).every((id) => only.includes(id))))
    expect([some.best, some.offers, some.rejected.length <= 3]).toEqual([answer.best, answer.offers, true])
    met = {
      choices: met.choices + answer.choices.length, stacks: met.stacks + answer.choices.filter((choice) => choice.stand === 'stack').length,
      offers: met.offers + (answer.offers?.length ?? 0), ties: met.ties + answer.choices.filter((choice, k) => choice.rank !== k + 1).length,
    }
  }), { numRuns: 2000, seed: 1 })
  // the racks are worth the name: all of it was met, and often
  for (const [what, count] of Object.entries(met)) expect(count, what).toBeGreaterThan(300)
}, 120_000)

test('the same where one class of seats holds thousands of stacks', () => {
  const step = (um: number) => fc.integer({ min: 0, max: 400 / um }).map((n) => n * um), apart = fc.integer({ min: 0, max: 180 }).map((n) => n / 20)
  const many = fc.constantFrom(1, 1, 400).chain((um) => fc.array(fc.tuple(step(um), um === 1 ? apart : fc.constant(0), fc.constantFrom(9, 10), often('slot' as const, 'out'), fc.constantFrom('measured', 'measured', 'measured', 'measured', 'measured', 'marked' as const), often('trusted' as const, 'drill bar', 'look first')), { minLength: 160, maxLength: 170 }))
    .map((pairs): readonly Bar[] => pairs.flatMap(([um, by, thicknessMm, where, standing, trust], k) => [0, by].map((more, side): Bar => ({
      id: `${String((k * 7) % 173).padStart(3, '0')}${'ab'[side]}`, heightMm: 13.3 + (um + more) / 1000, thicknessMm, lengthMm: 60 + 30 * (k % 3), mates: `m${k}`,
      trust, standing, thicknessStanding: 'marked', where,
    }))))
  const part: Part = { shape: 'block', betweenJawsMm: 38, alongJawsMm: 80, heightMm: 19, hollows: [] }
  const asked = fc.record({ toleranceUm: often<number | null>(20, null), use: often('milling' as const, 'drilling'), jawHeightMm: fc.constantFrom(35, 38, 40), cuts: cutsOf })
  fc.assert(fc.property(asked, many, ({ toleranceUm, use, jawHeightMm, cuts }, rack) => {
    const question: SetupQuestion = { vise: { jawHeightMm, openingMm: 100 }, part, cuts, wishes: { ...commonWishes, toleranceUm, use, matchUm: 10 }, ways: ['stack'], most: 400, rejectedMost: 0 }
    const answer = chooseBars(question, indexRack(rack)), expected = naive(question, rack, 400)
    expect(answer.choices.map((choice) => ({ name: nameOf(choice), rank: choice.rank }))).toEqual(expected.choices)
    expect(answer.offers?.map((offer) => `${offer.wish} ${offer.toMm.toFixed(5)} ${nameOf(offer)}`)).toEqual(expected.offers)
  }), { numRuns: 5, seed: 6, endOnFailure: true })
}, 120_000)
