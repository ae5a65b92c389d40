import { describe, expect, it } from 'vitest'
import { readLengthMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { plainUnits } from '#words/terms.ts'

const inch: Units = { length: 'in', decimalMark: '.', words: 'US' }
const comma: Units = { length: 'mm', decimalMark: ',', words: 'UK' }

describe('a refusal as a sentence', () => {
  it.each([
    [{ code: 'not-a-number', facts: { field: 'part.heightMm', given: 'abc', needed: 'number' } }, plainUnits, "Part height: 'abc' is no length; type a number such as 25.4, 7/8 or 1 3/8."],
    [{ code: 'not-a-number', facts: { field: 'cuts[0].pointAngleDeg', given: 'steep', needed: 'number' } }, plainUnits, "Hole 1, point angle: 'steep' is no number; type a number such as 25.4, 7/8 or 1 3/8."],
    [{ code: 'too-large', facts: { field: 'part.heightMm', given: 1e99, needed: { mostMm: 1e6 } } }, plainUnits, 'Part height: 1e+99 is too large; give at most 1000000 and check the unit.'],
    [{ code: 'size-not-positive', facts: { field: 'part.heightMm', given: -25.4, needed: { above: 0 } } }, inch, 'Part height: −1 given; it must be more than 0.'],
    [{ code: 'size-not-positive', facts: { field: 'height', of: 'part.heightMm', given: -25.4, needed: { aboveMm: 0 } } }, inch, 'Height: −1 given; it must be more than 0.'],
    [{ code: 'part-wider-than-opening', facts: { field: 'part.betweenJawsMm', given: 200.5, needed: 150 } }, comma, 'Part, between jaws: the part is 200,5 between the jaws and the vice opens 150; turn the part or take a larger vice.'],
    [{ code: 'unknown-word', facts: { field: 'cuts[0].tool', given: 'laser', needed: ['drill', 'tap'] } }, plainUnits, "Hole 1, tool: 'laser' is not known here; use drill or tap."],
    [{ code: 'unknown-key', facts: { keys: ['part.colour', 'wishes.hope'] } }, plainUnits, "'part.colour' and 'wishes.hope' are not known here; check the spelling."],
    [{ code: 'unknown-calculation', facts: { given: 'guess', needed: ['window', 'places', 'setup'] } }, plainUnits, "There is no calculation named 'guess'; known are window, places and setup."],
  ])('%o', (refusal, units, said) => {
    expect(sayRefusal(refusal, units)).toBe(said)
  })

  it('says a refusal of the length reader with its field', () => {
    let said = ''
    try { readLengthMm('1.000,5', 'mm', 'cuts[1].diameter') } catch (error) { if (error instanceof Refusal) said = sayRefusal(error, plainUnits) }
    expect(said).toBe("Hole 2, diameter: '1.000,5' has two decimal marks; type one, and no mark for thousands.")
  })

  it('names a code it has no words for, and is not fooled by names every object has', () => {
    expect(sayRefusal({ code: 'from-a-newer-server', facts: {} }, plainUnits)).toBe('Refused: from-a-newer-server.')
    expect(sayRefusal({ code: 'constructor', facts: {} }, plainUnits)).toBe('Refused: constructor.')
  })

  it('keeps what was typed short and never runs it', () => {
    expect(sayRefusal({ code: 'not-a-number', facts: { field: 'part.heightMm', given: `<script>${'x'.repeat(500)}`, needed: 'number' } }, plainUnits).length).toBeLessThan(160)
  })
})
