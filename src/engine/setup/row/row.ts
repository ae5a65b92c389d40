import { byId } from '#engine/setup/by-id.ts'
import { drawnTogether } from '#engine/setup/row/drawn-together.ts'
import { firstByIds } from '#engine/setup/row/first-by-ids.ts'
import { isOnlyWay } from '#engine/setup/row/is-only-way.ts'
import { longBarOf, type LongBar } from '#engine/setup/row/long-bar.ts'
import { sameUm, type RowPair, type RowQuestion } from '#engine/setup/row/row-question.ts'
import { tightWindowsOf } from '#engine/setup/row/tight-windows.ts'
import { topsOf } from '#engine/setup/row/tops.ts'

/** One pair for each vise, in the order of the vises. */
export type Row = {
  readonly assignment: readonly string[]
  /** Highest less lowest top. */
  readonly spreadUm: number
  /** Each top less the top of the first vise. */
  readonly zOffsetsUm: readonly number[]
  /** No other way has as small a spread; with a Z for each vise, as small a worst match. */
  readonly unique: boolean
  /** With a Z for each vise only; null where a pair has to be used whose match nobody measured. */
  readonly worstMatchUm?: number | null
  /** Where one was asked about. */
  readonly longBar?: LongBar
}

/**
 * Which pair in which vise.
 *
 * With one Z for all the tops (bed + mean of the pair) lie as close together as they can; of several ways the one with the
 * smallest sum of squares about their mean, then the first by ids in the order of the vises. With a Z for each vise the
 * worst match is as small as it can be, then the first by ids.
 *
 * @param question  at least one vise, at least as many pairs, each id once
 * @source SETUP-RULES
 */
export function rowOf(question: RowQuestion): Row {
  const row = question.oneZ ? rowWithOneZ(question) : rowWithEachZ(question), { longBar, vises } = question
  return longBar === null ? row : { ...row, longBar: longBarOf(longBar, vises[longBar.from]!.bedUm, vises[longBar.to]!.bedUm) }
}

function rowWithOneZ(question: RowQuestion): Row {
  const { vises, pairs } = question, tops = topsOf(vises, pairs), { spreadUm, windows } = tightWindowsOf(tops)
  const chosen = firstByIds(tops, pairs, drawnTogether(tops, windows, spreadUm)).map((k) => pairs[k]!)
  return { ...withTops(question, chosen), unique: isOnlyWay(windows, pairs.length) }
}

function rowWithEachZ(question: RowQuestion): Row {
  const { vises, pairs } = question, worst = pairs.map(matchOf).sort((a, b) => a - b)[vises.length - 1]!
  const goodEnough = pairs.filter((pair) => matchOf(pair) <= worst + sameUm), chosen = goodEnough.toSorted(byId).slice(0, vises.length)
  const worstMatchUm = chosen.reduce((most, pair) => Math.max(most, matchOf(pair)), 0)
  return { ...withTops(question, chosen), unique: vises.length === 1 && goodEnough.length === 1, worstMatchUm: worst === Infinity ? null : worstMatchUm }
}

/** Not measured comes after every number. */
const matchOf = (pair: RowPair): number => pair.matchUm ?? Infinity

function withTops({ vises }: RowQuestion, chosen: readonly RowPair[]): Pick<Row, 'assignment' | 'spreadUm' | 'zOffsetsUm'> {
  const firstMm = chosen[0]!.meanMm, firstUm = vises[0]!.bedUm
  const zOffsetsUm = chosen.map((pair, k) => withoutDust(vises[k]!.bedUm - firstUm + 1000 * (pair.meanMm - firstMm)))
  return { assignment: chosen.map((pair) => pair.id), spreadUm: withoutDust(Math.max(...zOffsetsUm) - Math.min(...zOffsetsUm)), zOffsetsUm }
}

/** Less what subtracting leaves behind: to the femtometre. */
const withoutDust = (um: number): number => Math.round(um * 1e9) / 1e9 + 0
