import type { Offer } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import { type NameOf, wordingFor } from '#words/wording.ts'

const wishWords: { readonly [wish in Offer['wish']]: string } = {
  gripMm: 'a grip of', airMm: 'clear of the jaws by only', bedAirMm: 'air above the bed of only',
}

/** What would have to be given up for a candidate to serve: `A grip of 5 would let 40 A and 40 B serve on edge.` */
export function sayOffer(offer: Offer, units: Units, nameOf?: NameOf): string {
  const w = wordingFor(units, nameOf)
  const who = offer.bars.length === 0 ? 'the bed' : `${w.bars(offer.bars)} ${offer.stand}`
  return `With ${wishWords[offer.wish]} ${w.length(offer.toMm)}, ${who} would serve.`
}
