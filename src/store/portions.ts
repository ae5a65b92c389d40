const most = 500

/** Lists are asked for and written a portion at a time: a statement takes 32 766 values at most. */
export function inPortions<One>(all: readonly One[]): One[][] {
  const portions: One[][] = []
  for (let from = 0; from < all.length; from += most) portions.push(all.slice(from, from + most))
  return portions
}
