import type { Blank, CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { StockLength } from '#model/stock-length.ts'
import type { StockPlate } from '#model/stock-plate.ts'
import { barCutsOf, plateCutOf, takingsOf } from '#engine/make/blanks/cut-cases.ts'
import { lengthPiece, type Piece, platePiece, turnedFor } from '#engine/make/blanks/pieces.ts'
import { isOfWidth, isThickEnough } from '#engine/make/blanks/stock-fits.ts'

/** So many blanks of one height, and their sizes by the stock they come out of; null: whatever will be bought. */
export type Wanted = { readonly heightMm: number; readonly count: number; readonly blankFrom: (stock: StockLength | StockPlate | null, form: 'length' | 'plate') => Blank }

export type CutQuestion = {
  readonly wanted: readonly Wanted[]
  readonly lengths: readonly StockLength[]
  readonly plates: readonly StockPlate[]
  readonly kerfMm: number
  readonly faces: boolean
  /** The height is the width as it comes. */
  readonly isCutOnly: boolean
}

/** A piece of stock that was begun, and what comes out of it. */
export type Begun = { readonly stock: StockLength | StockPlate; readonly form: 'length' | 'plate'; readonly blanks: Map<Blank, number> }

/** Stock, opened when nothing begun will do; `left` null: as many as are bought. */
type Source = { readonly stock: StockLength | StockPlate; readonly isLength: boolean; left: number | null; readonly opened: { readonly piece: Piece; readonly begun: Begun }[] }

/** For stock of which there is no end, a bound that nobody reaches. */
const mostPieces = 10_000

/**
 * Which blanks to cut from which stock, both mates of a pair from one piece, and the cases of `cut-bars` and `cut-plate` that say how.
 *
 * Highest blanks first; for each pair offcuts before whole stock, stock at hand before stock to be bought, the narrowest that will do, the
 * first that still has room. A length too wide for a blank is cut into strips like a plate. That finds a way, not the best one: `cut-bars`
 * and `cut-plate` find that.
 *
 * @returns beside the list, the blanks with how many of each
 */
export function cutListOf(question: CutQuestion): { readonly cuts: CutList; readonly blanks: readonly Blank[] } {
  const { lengths, plates, kerfMm, isCutOnly } = question
  const sources: readonly Source[] = [
    ...lengths.map((stock): Source => ({ stock, isLength: true, left: stock.count, opened: [] })),
    ...plates.map((stock): Source => ({ stock, isLength: false, left: stock.count, opened: [] })),
  ].toSorted(inTurn)
  const short = new Map<Blank, number>()
  for (const wanted of question.wanted.toSorted((a, b) => b.heightMm - a.heightMm)) {
    for (let left = wanted.count; left > 0; left -= 2) {
      const pair = Math.min(2, left)
      if (isTaken(question, sources, wanted, pair)) continue
      const blank = wanted.blankFrom(null, isCutOnly ? 'length' : 'plate')
      short.set(blank, (short.get(blank) ?? 0) + pair)
    }
  }
  const begun = sources.flatMap(({ opened }) => opened.map((one) => one.begun))
  const cuts: CutList = {
    takings: takingsOf(begun), begun: sources.flatMap(({ stock, opened }) => (opened.length > 0 ? [{ stockId: stock.id, count: opened.length }] : [])), bars: barCutsOf(begun, kerfMm), plates: begun.filter(({ form }) => form === 'plate').map((one) => plateCutOf(one, kerfMm)),
    short: [...short].map(([{ heightMm, sawn }, count]) => ({ heightMm, count, widthMm: sawn.heightMm, thicknessMm: sawn.thicknessMm, lengthMm: sawn.lengthMm })),
    cost: short.size > 0 ? null : begun.reduce<number | null>((sum, { stock: { price } }) => (sum === null || price === null ? null : sum + price), 0),
    findings: findingsOf(begun, short.size > 0),
  }
  return { cuts, blanks: counted([...begun.map(({ blanks }) => blanks), short]) }
}

function isTaken({ faces, isCutOnly, kerfMm }: CutQuestion, sources: readonly Source[], { blankFrom }: Wanted, count: number): boolean {
  for (const source of sources) {
    const { stock, opened } = source, form = source.isLength && isOfWidth(blankFrom(stock, 'length'), isCutOnly, stock) ? 'length' : 'plate', blank = blankFrom(stock, form)
    if ((form === 'plate' && isCutOnly) || !isThickEnough(blank, faces || blank.sawn.thicknessMm > blank.finished.thicknessMm, stock.thicknessMm)) continue
    let into = opened.find(({ piece, begun }) => begun.form === form && piece.take(blank.sawn, count))
    if (into === undefined && source.left !== 0 && opened.length < mostPieces) {
      const { acrossMm, alongMm } = turnedFor(stock, blank.sawn.lengthMm, kerfMm), piece = form === 'length' ? lengthPiece(stock.lengthMm, kerfMm) : platePiece(acrossMm, alongMm, kerfMm)
      if (!piece.take(blank.sawn, count)) continue
      into = { piece, begun: { stock, form, blanks: new Map() } }
      opened.push(into)
      if (source.left !== null) source.left -= 1
    }
    if (into === undefined) continue
    into.begun.blanks.set(blank, (into.begun.blanks.get(blank) ?? 0) + count)
    return true
  }
  return false
}

function inTurn(a: Source, b: Source): number {
  const rank = ({ stock }: Source) => (stock.offcut ? 0 : stock.count !== null ? 1 : 2)
  return rank(a) - rank(b) || Number(b.isLength) - Number(a.isLength) || a.stock.widthMm - b.stock.widthMm || a.stock.lengthMm - b.stock.lengthMm || (a.stock.id < b.stock.id ? -1 : 1)
}

function counted(taken: readonly ReadonlyMap<Blank, number>[]): readonly Blank[] {
  const counts = new Map<Blank, number>()
  for (const blanks of taken) for (const [blank, count] of blanks) counts.set(blank, (counts.get(blank) ?? 0) + count)
  return [...counts].map(([blank, count]) => ({ ...blank, count })).toSorted((a, b) => a.heightMm - b.heightMm || a.sawn.heightMm - b.sawn.heightMm)
}

function findingsOf(begun: readonly Begun[], isShort: boolean): readonly Finding[] {
  const rolled = [...new Set(begun.filter(({ stock }) => stock.condition === 'rolled').map(({ stock }) => stock.id))]
  return [
    ...(begun.some(({ form }) => form === 'length') ? [{ code: 'pair-is-one-piece', facts: {} }] : []),
    ...(rolled.length > 0 ? [{ code: 'rolled-skin-comes-off', facts: { stock: rolled } }] : []),
    ...(isShort ? [{ code: 'stock-short', facts: {} }] : []),
  ]
}
