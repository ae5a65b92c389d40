import type { SumWords } from '#words/say-sum.ts'

/** The sums of cut lists. */
export const cutListSums: { readonly [formula: string]: SumWords } = {
  'cut-bars-count': { title: 'Fewest stock lengths', says: 'for {pieceCount} pieces; fewer than {bound} cannot do' },
  'cut-bars-length': { title: 'Least length of stock', says: 'for {pieceCount} pieces; less than {bound} cannot do' },
  'cut-plate-length': { title: 'Least length of plate', says: 'for {pieceCount} pieces in strips; less than {bound} cannot do' },
}
