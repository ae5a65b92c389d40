import type { BarCut, Blank, CutList, PlateCut, Taking } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { StockLength } from '#model/stock-length.ts'
import type { StockPlate } from '#model/stock-plate.ts'
import { lengthPiece, type Piece, platePiece, turnedFor } from '#engine/make/blanks/pieces.ts'
import { isThickEnough, isWideEnough } from '#engine/make/blanks/stock-fits.ts'

/** Blanks of one height as they would come out of a stock length and out of a plate. */
export type Wanted = { readonly fromLength: Blank; readonly fromPlate: Blank }

export type CutQuestion = {
  readonly wanted: readonly Wanted[]
  readonly lengths: readonly StockLength[]
  readonly plates: readonly StockPlate[]
  readonly kerfMm: number
  readonly faces: boolean
  /** The height is the width as it comes. */
  readonly isCutOnly: boolean
}

/** A piece of stock that is opened when nothing begun will do; `left` null: as many as are bought. */
type Source = { readonly stock: StockLength | StockPlate; readonly form: 'length' | 'plate'; left: number | null; readonly pieces: Piece[] }

/** For stock of which there is no end, a bound that nobody reaches. */
const mostPieces = 10_000

/**
 * Which blanks to cut from which stock, both mates of a pair from one piece, and the cases of `cut-bars` and `cut-plate` that say how.
 *
 * Highest blanks first; for each pair offcuts before whole stock, stock at hand before stock to be bought, the narrowest that will do, the
 * first that still has room. That finds a way, not the best one: `cut-bars` and `cut-plate` find that.
 */
export function cutListOf(question: CutQuestion): CutList {
  const { lengths, plates, kerfMm } = question
  const sources: Source[] = [
    ...lengths.map((stock) => ({ stock, form: 'length' as const, left: stock.count, pieces: [] })),
    ...plates.map((stock) => ({ stock, form: 'plate' as const, left: stock.count, pieces: [] })),
  ].toSorted(beforeOthers)
  const taken = new Map<Piece, { readonly source: Source; readonly blanks: Map<Blank, number> }>(), short = new Map<Blank, number>()
  for (const wanted of question.wanted.toSorted((a, b) => b.fromLength.heightMm - a.fromLength.heightMm)) {
    for (let left = wanted.fromLength.count; left > 0; left -= 2) {
      const pair = Math.min(2, left), found = pieceFor(question, sources, wanted, pair)
      if (found === null) short.set(wanted.fromPlate, (short.get(wanted.fromPlate) ?? 0) + pair)
      else {
        const { source, piece } = found, blank = source.form === 'length' ? wanted.fromLength : wanted.fromPlate
        const { blanks } = taken.get(piece) ?? { blanks: new Map<Blank, number>() }
        taken.set(piece, { source, blanks: blanks.set(blank, (blanks.get(blank) ?? 0) + pair) })
      }
    }
  }
  const begun = [...taken.entries()]
  return {
    takings: takingsOf(begun.map(([, { source, blanks }]) => ({ source, blanks }))),
    bars: barCutsOf(begun.map(([, one]) => one), kerfMm),
    plates: begun.flatMap(([, { source, blanks }]) => (source.form === 'plate' ? [plateCutOf(source.stock, blanks, kerfMm)] : [])),
    short: [...short].map(([{ heightMm, sawn }, count]) => ({ heightMm, count, widthMm: sawn.heightMm, thicknessMm: sawn.thicknessMm, lengthMm: sawn.lengthMm })),
    cost: short.size > 0 ? null : begun.reduce<number | null>((sum, [{ price }]) => (sum === null || price === null ? null : sum + price), 0),
    findings: findingsOf(question, begun.map(([, one]) => one), short.size > 0),
  }
}

type Begun = { readonly source: Source; readonly blanks: ReadonlyMap<Blank, number> }

function pieceFor(question: CutQuestion, sources: readonly Source[], { fromLength, fromPlate }: Wanted, count: number): { readonly source: Source; readonly piece: Piece } | null {
  const { faces, isCutOnly, kerfMm } = question
  for (const source of sources) {
    const { stock, form } = source, blank = form === 'length' ? fromLength : fromPlate
    const fits = isThickEnough(blank, faces, stock.thicknessMm) && (form === 'plate' ? !isCutOnly : isWideEnough(blank, isCutOnly, stock))
    if (!fits) continue
    const begun = source.pieces.find(({ take }) => take(blank.sawn, count))
    if (begun !== undefined) return { source, piece: begun }
    if (source.left === 0 || source.pieces.length >= mostPieces) continue
    const fresh = form === 'length' ? lengthPiece(stock, kerfMm) : freshPlate(stock, blank, kerfMm)
    if (!fresh.take(blank.sawn, count)) continue
    source.pieces.push(fresh)
    if (source.left !== null) source.left -= 1
    return { source, piece: fresh }
  }
  return null
}

function freshPlate(stock: StockPlate, { sawn }: Blank, kerfMm: number): Piece {
  const { acrossMm, alongMm } = turnedFor(stock, sawn.lengthMm, kerfMm)
  return platePiece(stock, acrossMm, alongMm, kerfMm)
}

function beforeOthers(a: Source, b: Source): number {
  const rank = ({ stock }: Source) => (stock.offcut ? 0 : stock.count !== null ? 1 : 2), inOrder = (one: Source) => (one.form === 'length' ? 0 : 1)
  return rank(a) - rank(b) || inOrder(a) - inOrder(b) || a.stock.widthMm - b.stock.widthMm || a.stock.lengthMm - b.stock.lengthMm || (a.stock.id < b.stock.id ? -1 : 1)
}

function takingsOf(begun: readonly Begun[]): readonly Taking[] {
  const all = new Map<string, Taking>()
  for (const { source, blanks } of begun) {
    for (const [{ heightMm }, count] of blanks) {
      const key = `${source.stock.id} ${heightMm}`, before = all.get(key)?.count ?? 0
      all.set(key, { stockId: source.stock.id, form: source.form, heightMm, count: before + count })
    }
  }
  return [...all.values()].toSorted((a, b) => a.heightMm - b.heightMm || (a.stockId < b.stockId ? -1 : 1))
}

/** Lengths of one steel and section are cut together, whatever their own lengths; a pair is one piece, cut in two afterwards. */
function barCutsOf(begun: readonly Begun[], kerfMm: number): readonly BarCut[] {
  const sections = new Map<string, { readonly stock: StockLength; readonly sources: Set<Source>; readonly pieces: Map<string, { readonly blank: Blank; readonly blanks: number; count: number }> }>()
  for (const { source, blanks } of begun) {
    if (source.form !== 'length') continue
    const { stock } = source, key = JSON.stringify([stock.steel, stock.condition, stock.widthMm, stock.thicknessMm])
    const section = sections.get(key) ?? { stock, sources: new Set<Source>(), pieces: new Map() }
    sections.set(key, section)
    section.sources.add(source)
    for (const [blank, count] of blanks) {
      for (const [size, times] of [[2, Math.floor(count / 2)], [1, count % 2]] as const) {
        if (times === 0) continue
        const name = `${blank.heightMm} ${size}`, piece = section.pieces.get(name) ?? { blank, blanks: size, count: 0 }
        section.pieces.set(name, { ...piece, count: piece.count + times })
      }
    }
  }
  return [...sections.values()].map(({ stock, sources, pieces }) => ({
    steel: stock.steel, condition: stock.condition, widthMm: stock.widthMm, thicknessMm: stock.thicknessMm, kerf: kerfMm,
    stock: [...sources].map(({ stock: { id, lengthMm, count } }) => ({ length: lengthMm, available: count, id })),
    pieces: [...pieces.values()].map(({ blank, blanks, count }) => [blanks * blank.sawn.lengthMm + (blanks - 1) * kerfMm, count] as const),
    of: [...pieces.values()].map(({ blank, blanks }) => ({ heightMm: blank.heightMm, blanks })),
  }))
}

function plateCutOf(stock: StockPlate, blanks: ReadonlyMap<Blank, number>, kerfMm: number): PlateCut {
  const { acrossMm, alongMm } = turnedFor(stock, [...blanks.keys()][0]!.sawn.lengthMm, kerfMm)
  return {
    stockId: stock.id, plateWidth: acrossMm, plateLength: alongMm, kerf: kerfMm,
    pieces: [...blanks].map(([{ sawn }, count]) => ({ length: sawn.lengthMm, height: sawn.heightMm, count })).toSorted((a, b) => b.height - a.height),
  }
}

function findingsOf({ faces, isCutOnly }: CutQuestion, begun: readonly Begun[], isShort: boolean): readonly Finding[] {
  const rolled = [...new Set(begun.filter(({ source }) => source.stock.condition === 'rolled').map(({ source }) => source.stock.id))]
  const lengths = begun.filter(({ source }) => source.form === 'length').map(({ source }) => source.stock.id)
  return [
    ...(lengths.length > 0 ? [{ code: 'pair-is-one-piece', facts: {} }] : []),
    ...(rolled.length > 0 && !faces && !isCutOnly ? [{ code: 'rolled-skin-stays', facts: { stock: rolled } }] : []),
    ...(isShort ? [{ code: 'stock-short', facts: {} }] : []),
  ]
}
