import { describe, expect, it } from 'vitest'
import type { Window } from '#model/setup.ts'
import { sayGiveUp, sayWindow } from '#words/say-window.ts'
import { plainUnits } from '#words/terms.ts'

const window: Window = {
  lowMm: 33, highMm: 35, widthMm: 2, lowBecause: 'cutter-over-jaw', highBecause: 'grip', advisedHighMm: 35, gripWishMm: 10, giveUp: null,
  stickOut: { maxSeatMmByGrip: 40.25, maxSeatMmByThickness: 102 },
}

describe('the heights that work', () => {
  it('are said with what sets each end', () => {
    expect(sayWindow(window, plainUnits)).toBe('Heights that work: 33 (the cutter over the jaws) to 35 (the grip).')
    expect(sayWindow({ ...window, lowMm: 35, widthMm: 0 }, plainUnits)).toBe('One height works: 35, set by the cutter over the jaws and by the grip.')
  })

  it('and where none does, what would have to give', () => {
    const giveUp = { gripMm: 2, airMm: null, bedAirMm: null, runThroughMm: null }
    expect(sayWindow({ ...window, lowMm: 43, widthMm: -8, giveUp }, plainUnits)).toBe('No height works: the cutter over the jaws asks for at least 43, the grip for at most 35.')
    expect(sayGiveUp(giveUp, plainUnits)).toEqual(['Grip 2 instead.'])
  })
})
