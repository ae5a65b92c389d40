import { describe, expect, it } from 'vitest'
import type { Units } from '#model/shop-record.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayOffer } from '#words/say-offer.ts'
import { plainUnits } from '#words/terms.ts'

const inch: Units = { length: 'in', decimalMark: '.', words: 'US' }
const comma: Units = { length: 'mm', decimalMark: ',', words: 'UK' }
const nameOf = (id: string) => ({ 'c-1': '35 C', 'c-2': '35 C', 'a-1': '34 A' })[id] ?? id

describe('a finding as a sentence', () => {
  it.each([
    [{ code: 'too-high', facts: { gripMm: 5, underMm: 5 } }, plainUnits, 'Grip 5, 5 under your wish.'],
    [{ code: 'too-high', facts: { gripMm: 6.9, underMm: 0.9 } }, comma, 'Grip 6,9; 0,9 under your wish.'],
    [{ code: 'too-high', facts: {} }, plainUnits, 'Too little grip.'],
    [{ code: 'too-low', facts: { limit: 'cutter-over-jaw', belowMm: 2 } }, plainUnits, 'Cutter 2 below the jaw tops.'],
    [{ code: 'too-low', facts: { limit: 'cutter-over-jaw', airMm: 0, underMm: 1 } }, plainUnits, 'Cutter level with the jaw tops, 1 under your wish.'],
    [{ code: 'too-low', facts: { limit: 'cutter-over-jaw', airMm: 0.5, underMm: 0.5 } }, comma, 'Cutter only 0,5 clear of the jaws, 0,5 under your wish.'],
    [{ code: 'too-low', facts: { limit: 'drill-tip', underMm: 2.307 } }, plainUnits, 'The drill would come 2.307 too near the bed.'],
    [{ code: 'not-matched', facts: { matchUm: 12.34, limitUm: 10 } }, plainUnits, 'The two differ by 12.3 µm, more than 10 µm for this use.'],
    [{ code: 'moved-inboard', facts: { bar: 'c-1', from: 'fixed jaw', spacerMm: 10.75, holes: [1, 2], acrossMm: 6, diameterMm: 8.5 } }, plainUnits,
      'The bar toward the fixed jaw stands 10.75 off it: two 8.5 holes, 6 from the jaw, would meet it where it belongs. Put 10.75 between jaw and bar.'],
    [{ code: 'moved-inboard', facts: { bar: 'c-2', from: 'moving jaw', spacerMm: 12.7, holes: [0], acrossMm: null, diameterMm: null } }, inch,
      'The bar toward the movable jaw stands 1/2 off it: cut 1 would meet it where it belongs. Put 1/2 between jaw and bar.'],
    [{ code: 'moved-along', facts: { bar: 'c-1', from: 'right end', spacerMm: 4.5, holes: [0, 1] } }, plainUnits, "35 C is moved along, clear of cuts 1 and 2: set it 4.5 from the part's right end."],
    [{ code: 'next-less-grip', facts: { bars: ['a-1', 'a-1'], stand: 'on edge', gripMm: 10, nextMm: 9 } }, plainUnits, 'Before 34 A on edge: more grip, 10 against 9.'],
    [{ code: 'next-not-measured', facts: { bars: ['c-1', 'c-2'], stand: 'lying flat' } }, plainUnits, 'Before 35 C lying flat: this is measured, that is only marked.'],
    [{ code: 'next-further-away', facts: { bars: [], stand: 'bed', where: 'here', nextWhere: 'out' } }, comma, 'Before the bare bed: this is in this vice, that is out.'],
    [{ code: 'next-as-good', facts: { bars: ['a-1'], stand: 'single' } }, plainUnits, 'As good: 34 A alone. Take either.'],
    [{ code: 'placed-by-hand', facts: { bar: 'c-1', airMm: 0.8, from: 'left end', spacerMm: 12 } }, plainUnits, "35 C is set by hand, 0.8 from a hole or cut: keep 12 to the part's left end."],
    [{ code: 'at-jaw-instead', facts: { bar: 'c-1', from: 'fixed jaw', thickestMm: 1.25, longestMm: 30.5, acrossMm: 8 } }, plainUnits,
      'At the fixed jaw would stand: bars up to 1.25 thick; bars 8 thick, up to 30.5 long.'],
    [{ code: 'at-jaw-instead', facts: { bar: 'c-1', from: 'moving jaw', thickestMm: null, longestMm: 25.4, acrossMm: 6.35 } }, inch, 'At the movable jaw would stand: bars 1/4 thick, up to 1 long.'],
    [{ code: 'drill-bar-instead', facts: { bars: ['c-1', 'c-2'] } }, plainUnits, 'Drill bars, which may be cut into, where 35 C would stand.'],
    [{ code: 'adjustable-parallels', facts: { lowMm: 33, highMm: 37.2 } }, plainUnits, 'Adjustable parallels, both set by micrometer to one height between 33 and 37.2.'],
    [{ code: 'adjustable-parallels', facts: { lowMm: 33, highMm: 33 } }, plainUnits, 'Adjustable parallels, both set by micrometer to 33.'],
    [{ code: 'pair-on-strips', facts: { bars: ['a-1', 'a-1'], fromMm: 3, toMm: 4.5 } }, plainUnits, 'The next lower pair, 34 A, on two strips of one thickness between 3 and 4.5, as long as the bars: for drilling or milling only.'],
    [{ code: 'pair-on-strips', facts: { bars: ['a-1', 'a-1'], fromMm: 1, toMm: 1 } }, plainUnits, 'The next lower pair, 34 A, on two strips 1 thick, as long as the bars: for drilling or milling only.'],
    [{ code: 'not-computed', facts: { what: ['holding force', 'overhang', 'bending'] } }, plainUnits, 'Not computed: holding force, overhang and bending.'],
    [{ code: 'look-first', facts: { bars: ['c-1', 'c-2'] } }, plainUnits, 'Look first at 35 C: new here, knocked, drilled or reground, and not looked over since. Wipe, feel for burrs, check at the plate.'],
    [{ code: 'from-a-newer-engine', facts: {} }, plainUnits, 'Note: from-a-newer-engine.'],
    [{ code: 'toString', facts: {} }, plainUnits, 'Note: toString.'],
  ])('%j', (finding, units, said) => {
    expect(sayFinding(finding, units, nameOf)).toBe(said)
  })
})

describe('an offer as a sentence', () => {
  it('never promises more than there is', () => {
    expect(sayOffer({ wish: 'gripMm', toMm: 10.0075, bars: ['c-1', 'c-2'], stand: 'on edge' }, plainUnits, nameOf)).toBe('With a grip of 10, 35 C on edge would serve.')
    expect(sayOffer({ wish: 'airMm', toMm: 0, bars: ['a-1', 'a-1'], stand: 'lying flat' }, plainUnits, nameOf)).toBe('With the cutter level with the jaw tops, 34 A lying flat would serve.')
    expect(sayOffer({ wish: 'bedAirMm', toMm: 12.7, bars: [], stand: 'bed' }, inch)).toBe('With only 1/2 above the bed, the bare bed would serve.')
  })
})
