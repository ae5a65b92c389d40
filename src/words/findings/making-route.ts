import type { Facts } from '#model/refusal.ts'
import { listOf, type Say, type Wording } from '#words/wording.ts'

/** What is odd about an order, why a route stands where it does, and what speaks against it. */
export const makingRouteWords: { readonly [code: string]: Say } = {
  'ladder-ends-short': (facts, w) => `The steps end at ${w.length(facts.topMm)}, not at ${w.length(facts.toMm)}.`,
  'bars-slender': (facts, w) => `From ${w.length(facts.fromMm)} up the bars are more than ${w.number(facts.ratio)} times as high as their ${w.length(facts.thicknessMm)} of thickness: they topple while they are made and used, so block them in.`,
  'bars-not-higher-than-thick': (facts, w) => `Up to ${w.length(facts.toMm)} the bars are no higher than they are thick (${w.length(facts.thicknessMm)}): mark which way up they stand.`,
  'bars-higher-than-long': (facts, w) => `The highest, ${w.length(facts.topMm)}, are higher than they are long (${w.length(facts.lengthMm)}).`,
  'bars-flush-with-jaws': (facts, w) => `At ${w.length(facts.lengthMm)} the bars end flush with the jaws: about ${w.length(1)} shorter they do not stand out.`,
  'expected-not-guaranteed': () => 'What a route comes to is expected, not guaranteed: common practice until the shop\'s own checks say more. Bars are in work until the plate has proved them.',

  'route-serves': (facts, w) => `Serves ${w.text(facts.use)}: count on ${w.micrometres(facts.countOnUm)}, the limit is ${w.micrometres(facts.limitUm)}.`,
  'route-with-care': (facts, w) => `Serves ${w.text(facts.use)} with careful work: it reaches ${w.micrometres(facts.carefulUm)} of ${w.micrometres(facts.limitUm)}${facts.countOnUm === null ? '' : `, count on ${w.micrometres(facts.countOnUm)}`}.`,
  'route-falls-short': (facts, w) => `Does not give all that is asked for ${w.text(facts.use)}.`,
  'route-not-open': () => 'Cannot be gone as things stand: see what is missing.',
  'route-cheapest': (facts, w) => `The cheapest that can be gone: ${money(facts.cost, w)}.`,
  'route-dearer': (facts, w) => `${money(facts.cost, w)}, ${money(facts.byCost, w)} more than ${w.text(facts.than)}.`,
  'own-experience': (facts, w) => `Out of ${w.number(facts.checks)} checks of this shop's own.`,

  'not-offered': () => 'Nobody has given a price for bought ones.',
  'machine-missing': (facts, w) => `There is no ${w.text(facts.machine)} in the shop.`,
  'machine-too-short': (facts, w) => `${w.text(facts.machine)} takes ${w.length(facts.longestMm)}, the blanks are ${w.length(facts.lengthMm)} long.`,
  'mill-not-for-hard': () => 'No mill of the shop is meant for hardened steel.',
  'no-steel-to-harden': () => 'No stock at hand is of a steel that hardens.',
  'harder-than-published': (facts, w) => `${w.number(facts.askedHrc)} HRC is asked, ${w.number(facts.highestHrc)} is the most published for ${w.text(facts.steel)} after tempering (${w.text(facts.source)}).`,
  'stock-missing': (facts, w) => `No stock for ${w.number(facts.bars)} bars of ${heights(facts.heightsMm, w)}: buy it, or name other stock.`,
  'accuracy-not-known': (facts, w) => `How parallel and how equal they come is not known, ${w.text(facts.use)} asks for ${w.micrometres(facts.limitUm)}: measure a delivery.`,
  'use-not-reached': (facts, w) => `Careful work reaches ${w.micrometres(facts.worstUm)}; ${w.text(facts.use)} asks for ${w.micrometres(facts.limitUm)}.`,
  'softer-than-asked': (facts, w) => `${facts.givenHrc === 0 ? 'The bars are soft' : `The bars are ${w.number(facts.givenHrc)} HRC`}, ${w.number(facts.askedHrc)} HRC is asked.`,
  'too-late': (facts, w) => `Takes ${w.number(facts.days)} days, there are ${w.number(facts.daysLeft)}.`,
  'only-with-care': (facts, w) => `Only careful work comes within the ${w.micrometres(facts.limitUm)} of ${w.text(facts.use)}${facts.countOnUm === null ? '' : `; count on ${w.micrometres(facts.countOnUm)}`}.`,
  'stock-dearer-than-set': (facts, w) => `One stock length for each of ${w.number(facts.sections)} heights costs ${money(facts.stockCost, w)}, more than buying the set (${money(facts.boughtCost, w)}).`,
  'section-for-each-height': (facts, w) => `A section of stock for each of ${w.number(facts.sections)} heights.`,
  'dearer-than-buying': (facts, w) => `${money(facts.cost, w)}; bought they are ${money(facts.boughtCost, w)}.`,
  'mates-from-one-bar-only': () => 'Mates must come out of one bar, next to each other: two deliveries may differ by the whole tolerance and both be right.',
  'soft-bars-dent': () => 'Soft bars dent and wear, and a drill that hits one spoils the bar, not the drill: for drilling and rough work that is what one wants.',
  'drawn-steel-bows': () => 'Cold drawn steel bows when one skin comes off: let it lie between roughing and finishing.',
  'rubbing-rounds-ends': () => 'Rubbing takes the peaks off, rounds the ends and corrects no size; a hollow of the clamped shape may stay in the middle.',
  'thin-bars-bow': (facts, w) => `${w.length(facts.thicknessMm)} thick and ${w.length(facts.lengthMm)} long bows in hardening and may break when it is straightened.`,
  'goes-back-to-temper': () => 'Hardened outside: after straightening the bars go back for the second temper.',
  'faces-only-straightened': (_facts, w) => `The faces are straightened only, to some ${w.length(0.02)} to ${w.length(0.03)}: do not use the thickness for anything.`,
  'no-certificate': () => 'The offer says nothing about match and parallelism: check on receipt and record as found.',
  'few-own-checks': (facts, w) => `${w.number(facts.checks)} of the shop's own checks are too few to go by yet.`,
  'not-priced': (facts, w) => `Not priced: ${w.text(facts.what)}.`,
}

/** In the shop's own money, which has no name here. */
const money = (amount: Facts[string] | undefined, w: Wording): string => (typeof amount === 'number' ? w.number(Math.round(amount * 100) / 100) : '?')

/** A few one by one, many by the ends. */
function heights(list: Facts[string] | undefined, w: Wording): string {
  const all = (Array.isArray(list) ? list : [list]).filter((mm): mm is number => typeof mm === 'number').toSorted((a, b) => a - b)
  return all.length > mostListed ? `${w.number(all.length)} heights from ${w.length(all[0])} to ${w.length(all.at(-1))}` : `height ${listOf(all.map((mm) => w.length(mm)))}`
}

const mostListed = 6
