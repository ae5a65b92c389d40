import { Refusal } from '#model/refusal.ts'
import { wholeScale } from '#engine/make/cut-list/whole.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'

/** Stock lengths to be cut, all lengths in whole steps of `1 / scale`. */
export type CutBarsQuestion = {
  /** `lengths`: of several lengths, the least length together; `count`: one length, the fewest. */
  readonly form: 'count' | 'lengths'
  readonly kerf: number
  readonly stock: readonly { readonly length: number; readonly most: number }[]
  readonly pieces: readonly { readonly length: number; readonly count: number }[]
  readonly scale: number
  readonly secondsMost: number
}

const mostKinds = 500, mostStocks = 50, mostPieces = 20_000, mostLength = 1e7
const commonSeconds = 10, mostSeconds = 600

/**
 * Either form of the case: `capacity` and `items`, or `kerf`, `stock` and `pieces`.
 *
 * @throws Refusal with a malformed code, then `size-not-positive`, `wish-negative`, `too-many`, `length-too-fine`, `piece-longer-than-stock`
 */
export function readCutBars(raw: unknown): { readonly value: CutBarsQuestion } & Ignored {
  const { value: read, ignored } = readCase(raw, (object) => {
    const secondsMost = object.numberOr('secondsMost', commonSeconds, mostSeconds)
    if (object.has('capacity') || object.has('items')) return { ...oneLength(object), secondsMost }
    return {
      form: 'lengths' as const, kerf: object.numberOr('kerf', 0, mostLength), names: names.lengths, secondsMost,
      stock: object.list('stock', (one) => ({ length: one.number('length', mostLength), most: one.countOr('available', Infinity) }), mostStocks),
      pieces: object.rows('pieces', [mostLength, mostPieces], mostKinds),
    }
  })
  const stock = read.stock.map(({ length }, k) => [read.names.stock(k), length] as const), pieces = read.pieces.map(([length], k) => [read.names.piece(k), length!] as const)
  refuseCounts(read.pieces, read.names.list)
  for (const [field, given] of [...stock, ...pieces]) if (given <= 0) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  for (const [field, given] of [['kerf', read.kerf], ['secondsMost', read.secondsMost]] as const) if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  const scale = wholeScale([['kerf', read.kerf], ...stock, ...pieces]), whole = (length: number) => Math.round(length * scale)
  const longest = Math.max(0, ...read.stock.map(({ length }) => length))
  read.pieces.forEach(([length, count], k) => { if (count! > 0 && length! > longest) throw new Refusal('piece-longer-than-stock', { field: read.names.piece(k), given: length!, needed: longest }) })
  return {
    ignored, value: {
      form: read.form, scale, secondsMost: read.secondsMost, kerf: whole(read.kerf), stock: read.stock.map(({ length, most }) => ({ length: whole(length), most })),
      pieces: read.pieces.map(([length, count]) => ({ length: whole(length!), count: count! })),
    },
  }
}

const names = {
  count: { stock: () => 'capacity', piece: (k: number) => `items[${k}][0]`, list: 'items' },
  lengths: { stock: (k: number) => `stock[${k}].length`, piece: (k: number) => `pieces[${k}][0]`, list: 'pieces' },
}

const oneLength = (object: RawObject) => ({
  form: 'count' as const, kerf: 0, names: names.count,
  stock: [{ length: object.number('capacity', mostLength), most: Infinity }], pieces: object.rows('items', [mostLength, mostPieces], mostKinds),
})

function refuseCounts(pieces: readonly (readonly number[])[], list: string): void {
  pieces.forEach(([, count], k) => { if (!Number.isInteger(count) || count! < 0) throw new Refusal('not-a-number', { field: `${list}[${k}][1]`, given: count!, needed: 'a whole number from 0' }) })
  const all = pieces.reduce((sum, [, count]) => sum + count!, 0)
  if (all > mostPieces) throw new Refusal('too-many', { field: list, given: all, needed: mostPieces })
}
