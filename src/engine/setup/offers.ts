import type { Offer } from '#model/setup.ts'
import { ways } from '#model/wishes.ts'
import { concessionAt, lossMm } from '#engine/setup/concession.ts'
import { stands } from '#engine/setup/footings.ts'
import { footingsOffered } from '#engine/setup/footings-offered.ts'
import { foundFooting, foundStack, theBed, type Found } from '#engine/setup/found.ts'
import { lengthClassOf } from '#engine/setup/order.ts'
import { reasonsOfSeat } from '#engine/setup/reasons.ts'
import { restsOnBars, type Search } from '#engine/setup/search.ts'
import { stacksOffered } from '#engine/setup/stacks-offered.ts'

/**
 * When nothing serves: what a single wish would have to become for bars to serve that fail for their height alone; the
 * smallest losses, at most five, equal ones by ids and then by way.
 *
 * @source SETUP-RULES
 */
export function offersOf(search: Search): readonly Offer[] {
  const { question, rack } = search
  const standing = stands.filter((stand) => question.ways.includes(stand) && restsOnBars(search, stand))
  const footings = standing.flatMap((stand) => sides.flatMap((side) => firstOf(footingsOffered(search, stand, rack.bySeat[stand].all, side), mostOffers)))
  let offered = nearestFirst(search, [...footings.map((k) => foundFooting(search, k)), ...(question.ways.includes('bed') ? [theBed] : [])])
  for (const side of question.ways.includes('stack') && restsOnBars(search, 'on edge') ? sides : []) {
    // farther than the last of those so far no stack is worth looking for
    const mostMm = offered.length < mostOffers ? Infinity : lossOf(search, offered[mostOffers - 1]!.found)
    const stacks = stacksOffered(search, side, mostOffers, mostMm).map((stack) => foundStack(search, stack))
    offered = nearestFirst(search, [...offered.map(({ found }) => found), ...stacks])
  }
  return offered.slice(0, mostOffers).map(({ found, wish, toMm }) => ({
    wish, toMm, bars: found.bars.map((bar) => bar.id), stand: found.stand, ...(found.stacked === null ? {} : { stacked: found.stacked }),
  }))
}

const mostOffers = 5
const sides = ['above', 'below'] as const

const lossOf = (search: Search, { seatMm }: Found): number =>
  lossMm(search.window, reasonsOfSeat(search, seatMm).includes('too-high') ? 'above' : 'below', seatMm)

function nearestFirst(search: Search, all: readonly Found[]): readonly (Pick<Offer, 'wish' | 'toMm'> & { readonly found: Found })[] {
  const idsOf = ({ bars }: Found) => bars.map((bar) => bar.id)
  return all
    .flatMap((found) => {
      const concession = concessionAt(search, found.seatMm)
      return concession === null ? [] : [{ ...concession, found, loss: lengthClassOf(lossOf(search, found)) }]
    })
    .toSorted((a, b) => a.loss - b.loss || compareIds(idsOf(a.found), idsOf(b.found)) || ways.indexOf(a.found.stand) - ways.indexOf(b.found.stand))
}

function compareIds(a: readonly string[], b: readonly string[]): number {
  const at = a.findIndex((id, k) => id !== b[k])
  if (at < 0) return a.length - b.length
  return b[at] === undefined || a[at]! > b[at] ? 1 : -1
}

function firstOf<Entry>(entries: Generator<Entry, void>, most: number): readonly Entry[] {
  const first: Entry[] = []
  for (const entry of entries) if (first.push(entry) >= most) break
  return first
}
