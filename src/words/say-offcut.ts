import { stockNameLetters } from '#model/stock-length.ts'

/** What an offcut of a stock is called, and what its note says. `job`: the name of the job it was left by; empty: it has none. */
export function sayOffcut(stock: string, job: string): { readonly name: string; readonly note: string } {
  return { name: `${stock}, rest`.slice(0, stockNameLetters), note: `Left of ${stock}${job === '' ? '' : `, ${job}`}` }
}
