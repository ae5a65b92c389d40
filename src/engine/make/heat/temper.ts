import type { HeatTable, Tempered } from '#model/heat-table.ts'
import { Refusal } from '#model/refusal.ts'

/** A temper for a hardness. Between two rows both are named; `atEdge`: softer or harder than the middle of every row, inside its band. */
export type Temper = {
  readonly atC: number
  readonly fromHrc: number
  readonly toHrc: number
  readonly atEdge: boolean
  readonly rows: readonly [low: Tempered, high: Tempered]
}

/**
 * The coolest temper that gives a hardness, straight between the middles of two neighbouring bands.
 *
 * Nothing is told beyond the bands that are published: there the curve is anybody's guess.
 *
 * @throws Refusal `no-tempering-rows`; `hardness-outside-table` with what was asked, and the lowest and highest published with its source
 */
export function temperFor(table: HeatTable, hrc: number): Temper {
  const rows = table.tempering.toSorted((a, b) => a.atC - b.atC)
  if (rows.length === 0) throw new Refusal('no-tempering-rows', { field: 'hrc', given: hrc, needed: 'rows of your own', steel: table.steel })
  const highest = rows.reduce((most, row) => (row.toHrc > most.toHrc ? row : most)), lowest = rows.reduce((least, row) => (row.fromHrc < least.fromHrc ? row : least))
  if (hrc > highest.toHrc || hrc < lowest.fromHrc) {
    const { source, standing } = hrc > highest.toHrc ? highest : lowest
    throw new Refusal('hardness-outside-table', { field: 'hrc', given: hrc, needed: { least: lowest.fromHrc, most: highest.toHrc }, steel: table.steel, source, standing, asQuenchedHrc: table.asQuenchedHrc?.to ?? null })
  }
  for (const [k, high] of rows.entries()) {
    const low = rows[k - 1] ?? high
    if ((middle(low) - hrc) * (middle(high) - hrc) <= 0) return between(low, high, hrc)
  }
  // harder (or softer) than every middle: the hardest (softest) row, the coolest of them
  const row = hrc > middle(highest) ? highest : lowest
  return { atC: row.atC, fromHrc: row.fromHrc, toHrc: row.toHrc, atEdge: true, rows: [row, row] }
}

const middle = ({ fromHrc, toHrc }: Tempered): number => (fromHrc + toHrc) / 2

function between(low: Tempered, high: Tempered, hrc: number): Temper {
  const fall = middle(high) - middle(low), share = fall === 0 ? 0 : (hrc - middle(low)) / fall, at = (from: number, to: number) => from + share * (to - from)
  return { atC: at(low.atC, high.atC), fromHrc: at(low.fromHrc, high.fromHrc), toHrc: at(low.toHrc, high.toHrc), atEdge: false, rows: [low, high] }
}
