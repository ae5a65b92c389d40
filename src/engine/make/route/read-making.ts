import { citedAs } from '#model/cited.ts'
import { type Machine, machineKinds } from '#model/machine.ts'
import type { GrindingAllowance } from '#model/grinding-allowance.ts'
import type { Bought, Infeeds, Leave, Making, MakingBooks, Outside } from '#model/making.ts'
import type { Hardening, MakingSteel } from '#model/making-steel.ts'
import { stepKinds } from '#model/make-step.ts'
import { type Experience, routeKinds, type StepTime } from '#model/route.ts'
import { conditions, type StockLength } from '#model/stock-length.ts'
import type { StockLimit } from '#model/stock-limit.ts'
import { newShop } from '#model/shop-record.ts'
import { longestUm } from '#engine/inspect/reading-limits.ts'
import { useLimits } from '#engine/rack/use-limits.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { usualLeave } from '#engine/make/blanks/leave.ts'
import { usualSparkOut, usualStages } from '#engine/make/grind/read-grind.ts'
import { usualTimes } from '#engine/make/route/times.ts'

const mostRows = 1000, mostMoney = 1e9, mostHours = 1e5, mostPercent = 100, mostMinutes = 1e6

/** Infeeds and shop hours where nobody says, as `grind` has them: 0.010, the last 0.02 by 0.002, three sweeps of spark-out. Common practice, no source. */
const usualInfeeds: Infeeds = { stages: usualStages, sparkOut: usualSparkOut }
export const usualHoursPerDay = 6

/** The shop as it stands in a raw case. What is left out is not there, or as usual; steels and tables of the shop's own stand before those of the books. */
export function readMaking(raw: RawObject, books: MakingBooks): Making {
  return {
    lengths: raw.listOrEmpty('lengths', readStock, mostRows), plates: raw.listOrEmpty('plates', readStock, mostRows),
    steels: withBooks(raw.listOrEmpty('steels', readSteel, mostRows), books.steels), machines: raw.listOrEmpty('machines', readMachine, mostRows),
    handPerHour: raw.numberOr('handPerHour', null, mostMoney), hoursPerDay: raw.numberOr('hoursPerDay', usualHoursPerDay, 24),
    hardening: raw.objectOr('hardening', readOutside, null), bought: raw.objectOr('bought', readBought, null), cutterCost: raw.numberOr('cutterCost', null, mostMoney),
    limitsUm: raw.objectOr('limitsUm', readLimits, null) ?? usualLimits(), stockLimits: [...raw.listOrEmpty('stockLimits', readStockLimit, mostRows), ...books.stockLimits],
    allowances: [...raw.listOrEmpty('allowances', readAllowance, mostRows), ...books.allowances], blackBars: books.blackBars,
    times: withUsual(raw.listOrEmpty('times', readTime, mostRows)), experience: raw.listOrEmpty('experience', readExperience, mostRows),
    leave: raw.objectOr('leave', readLeave, usualLeave), infeeds: raw.objectOr('infeeds', readInfeeds, usualInfeeds),
    faces: raw.yesNoOr('faces', false), daysLeft: raw.numberOr('daysLeft', null, 1e5),
  }
}

function readStock(raw: RawObject): StockLength {
  return {
    id: raw.text('id'), name: raw.has('name') ? raw.text('name') : raw.text('id'), steel: raw.text('steel'), condition: raw.word('condition', conditions) ?? 'drawn',
    lengthMm: raw.number('lengthMm'), widthMm: raw.number('widthMm'), thicknessMm: raw.number('thicknessMm'),
    count: raw.countOr('count', null), price: raw.numberOr('price', null, mostMoney), offcut: raw.yesNoOr('offcut', false),
  }
}

function readSteel(raw: RawObject): MakingSteel {
  return {
    name: raw.text('name'), carbonPercent: raw.number('carbonPercent', mostPercent), deliveredHrc: raw.numberOr('deliveredHrc', null, mostPercent), hardening: raw.objectOr('hardening', readHardening, null),
    ...readCited(raw),
  }
}

const readHardening = (raw: RawObject): Hardening => ({
  quench: raw.word('quench', ['air', 'oil', 'water']) ?? 'oil', hrcFrom: raw.number('hrcFrom', mostPercent), hrcTo: raw.number('hrcTo', mostPercent),
  growthFromPercent: raw.number('growthFromPercent', 5), growthToPercent: raw.number('growthToPercent', 5),
})

function readMachine(raw: RawObject): Machine {
  return {
    id: raw.text('id'), name: raw.has('name') ? raw.text('name') : raw.text('id'), kind: raw.word('kind', machineKinds) ?? 'saw', perHour: raw.numberOr('perHour', null, mostMoney),
    longestMm: raw.numberOr('longestMm', null), kerfMm: raw.numberOr('kerfMm', null, 20), sawnFaceMm: raw.numberOr('sawnFaceMm', null, 20), hardMilling: raw.yesNoOr('hardMilling', false),
  }
}

const readOutside = (raw: RawObject): Outside => ({ cost: raw.numberOr('cost', null, mostMoney), days: raw.number('days', 1e5) })
const readBought = (raw: RawObject): Bought => ({ ...readOutside(raw), matchUm: raw.numberOr('matchUm', null, longestUm), parallelUm: raw.numberOr('parallelUm', null, longestUm) })

const usualLimits = (): Making['limitsUm'] => useLimits(newShop.limitsUm)

const readLimits = (raw: RawObject): Making['limitsUm'] =>
  ({ drilling: raw.number('drilling', longestUm), milling: raw.number('milling', longestUm), 'fine milling': raw.number('fineMilling', longestUm), grinding: raw.number('grinding', longestUm) })

function readStockLimit(raw: RawObject): StockLimit {
  return {
    condition: raw.word('condition', conditions) ?? 'drawn', dimension: raw.word('dimension', ['width', 'thickness']) ?? 'width',
    carbonOverPercent: raw.numberOr('carbonOverPercent', -1, mostPercent), carbonToPercent: raw.numberOr('carbonToPercent', mostPercent, mostPercent),
    overMm: raw.number('overMm'), toMm: raw.number('toMm'), lowerMm: raw.number('lowerMm'), upperMm: raw.number('upperMm'), grade: raw.has('grade') ? raw.text('grade') : null,
    ...readCited(raw),
  }
}

/** The shop's steel of a name before the book's. */
const withBooks = (own: readonly MakingSteel[], books: readonly MakingSteel[]): readonly MakingSteel[] => [...own, ...books.filter(({ name }) => !own.some((one) => one.name === name))]

const mostLeftMm = 100

function readAllowance(raw: RawObject): GrindingAllowance {
  const range = (key: string): readonly [number, number] => {
    const [least = NaN, most = NaN] = raw.numbers(key, mostLeftMm, 2)
    return [least, most]
  }
  return { overLengthMm: raw.number('overLengthMm'), toLengthMm: raw.number('toLengthMm'), thinFaceMm: range('thinFaceMm'), thickFaceMm: range('thickFaceMm'), edgeMm: range('edgeMm'), ...readCited(raw) }
}

/** A row without its source is the shop's own. */
const readCited = (raw: RawObject) => ({ source: raw.has('source') ? raw.text('source') : 'SHOP', standing: raw.wordOr('standing', citedAs, 'shop') })

const readTime = (raw: RawObject): StepTime | null => {
  const step = raw.word('step', stepKinds), minutes = (key: string) => raw.numberOr(key, 0, mostMinutes)
  return step === null ? null : { step, orderMin: minutes('orderMin'), heightMin: minutes('heightMin'), barMin: minutes('barMin'), unattendedMin: minutes('unattendedMin') }
}

/** The shop's own times before the usual ones. */
const withUsual = (own: readonly StepTime[]): readonly StepTime[] => [...own, ...usualTimes.filter(({ step }) => !own.some((one) => one.step === step))]

const readExperience = (raw: RawObject): Experience | null => {
  const route = raw.word('route', routeKinds), hours = raw.objectOr('hours', (inside) => ({ planned: inside.number('planned', mostHours), taken: inside.number('taken', mostHours) }), null)
  return route === null ? null : { route, matchUm: raw.numbersOr('matchUm', [], longestUm), parallelUm: raw.numbersOr('parallelUm', [], longestUm), hours }
}

function readLeave(raw: RawObject): Leave {
  const mm = (key: keyof Leave) => raw.numberOr(key, usualLeave[key], 100)
  return { edgeMm: mm('edgeMm'), endMm: mm('endMm'), cutEndMm: mm('cutEndMm'), faceMm: mm('faceMm'), rubMm: mm('rubMm'), bowMm: mm('bowMm'), cleanUpMm: mm('cleanUpMm'), skinMm: mm('skinMm') }
}

const readInfeeds = (raw: RawObject): Infeeds => ({
  stages: raw.list('stages', (one) => ({ infeedUm: one.number('infeedUm', longestUm), takesUm: one.path.endsWith('[0]') ? one.numberOr('takesUm', 0, longestUm) : one.number('takesUm', longestUm) }), 20),
  sparkOut: raw.countOr('sparkOut', usualInfeeds.sparkOut),
})
