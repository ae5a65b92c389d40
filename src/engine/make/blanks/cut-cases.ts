import type { BarCut, Blank, PlateCut, Taking } from '#model/blank.ts'
import type { StockLengthFields } from '#model/stock-length.ts'
import type { Begun } from '#engine/make/blanks/cut-list.ts'
import { turnedFor } from '#engine/make/blanks/pieces.ts'

/** By height, then by stock. */
export function takingsOf(begun: readonly Begun[]): readonly Taking[] {
  const all = new Map<string, Taking>()
  for (const { stock, form, blanks } of begun) {
    for (const [{ heightMm }, count] of blanks) {
      const key = JSON.stringify([stock.id, form, heightMm])
      all.set(key, { stockId: stock.id, form, heightMm, count: (all.get(key)?.count ?? 0) + count })
    }
  }
  return [...all.values()].toSorted((a, b) => a.heightMm - b.heightMm || (a.stockId < b.stockId ? -1 : 1))
}

type Piece = { readonly blank: Blank; readonly blanks: number; readonly count: number }

/** Lengths of one steel and section are cut together, whatever their own lengths; a pair is one piece, cut in two afterwards. */
export function barCutsOf(begun: readonly Begun[], kerfMm: number): readonly BarCut[] {
  const keyOf = ({ steel, condition, widthMm, thicknessMm }: StockLengthFields) => JSON.stringify([steel, condition, widthMm, thicknessMm])
  const lengths = begun.filter(({ form }) => form === 'length'), sections = [...new Set(lengths.map(({ stock }) => keyOf(stock)))]
  return sections.map((section) => {
    const own = lengths.filter(({ stock }) => keyOf(stock) === section), pieces = piecesOf(own), { steel, condition, widthMm, thicknessMm } = own[0]!.stock
    return {
      steel, condition, widthMm, thicknessMm, kerf: kerfMm,
      stock: [...new Map(own.map(({ stock }) => [stock.id, stock])).values()].map(({ id, lengthMm, count }) => ({ length: lengthMm, available: count, id })),
      pieces: pieces.map(({ blank, blanks, count }) => [blanks * blank.sawn.lengthMm + (blanks - 1) * kerfMm, count] as const),
      of: pieces.map(({ blank, blanks }) => ({ heightMm: blank.heightMm, blanks })),
    }
  })
}

function piecesOf(begun: readonly Begun[]): readonly Piece[] {
  const pieces = new Map<string, Piece>()
  for (const { blanks } of begun) {
    for (const [blank, count] of blanks) {
      for (const [size, times] of [[2, Math.floor(count / 2)], [1, count % 2]] as const) {
        const key = `${blank.heightMm} ${size}`
        if (times > 0) pieces.set(key, { blank, blanks: size, count: (pieces.get(key)?.count ?? 0) + times })
      }
    }
  }
  return [...pieces.values()]
}

/** Highest first. */
export function plateCutOf({ stock, blanks }: Begun, kerfMm: number): PlateCut {
  const { acrossMm, alongMm } = turnedFor(stock, [...blanks.keys()][0]!.sawn.lengthMm, kerfMm)
  return {
    stockId: stock.id, plateWidth: acrossMm, plateLength: alongMm, kerf: kerfMm,
    pieces: [...blanks].map(([{ sawn }, count]) => ({ length: sawn.lengthMm, height: sawn.heightMm, count })).toSorted((a, b) => b.height - a.height),
  }
}
