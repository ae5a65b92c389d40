import { describe, expect, test } from 'vitest'
import type { HoleForm, MilledForm, SetupForm } from '#model/setup-form.ts'
import { setupFormSchema } from '#model/setup-form.ts'
import { Refusal } from '#model/refusal.ts'
import { emptyCutForm, emptySetupForm, questionFrom } from '#engine/setup/form.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { placesOf } from '#engine/setup/places.ts'
import { windowOf } from '#engine/setup/window.ts'

const vise = { jawHeightMm: 45, openingMm: 150 }
const mm = (more: Partial<SetupForm>): SetupForm => ({ ...emptySetupForm('mm'), ...more })
const inch = (more: Partial<SetupForm>): SetupForm => ({ ...emptySetupForm('in'), ...more })
const hole = (more: Partial<HoleForm>): HoleForm => ({ ...(emptyCutForm('hole') as HoleForm), diameter: '8.5', across: '6', ...more })
const slot = (more: Partial<MilledForm>): MilledForm => ({ ...(emptyCutForm('slot') as MilledForm), depth: '3', ...more })
const wishes = (more: Partial<SetupForm['wishes']>): SetupForm['wishes'] => ({ ...emptySetupForm('mm').wishes, ...more })

function refused(form: SetupForm): Refusal['facts'] & { readonly code: string } {
  try { questionFrom(form, vise) } catch (error) { if (error instanceof Refusal) return { code: error.code, ...error.facts } }
  throw new Error('was taken')
}

test('the empty form is one the schema knows, of every kind of line', () => {
  for (const unit of ['mm', 'in'] as const) expect(setupFormSchema.parse({ ...emptySetupForm(unit), cuts: (['hole', 'step', 'slot', 'end'] as const).map(emptyCutForm) })).toBeTruthy()
})

describe('two numbers, then a question', () => {
  test('a height is all that is needed', () => {
    const { part, cuts, wishes: wished, ways } = questionFrom(mm({ height: '19' }), vise)
    expect(part).toEqual({ shape: 'block', betweenJawsMm: null, alongJawsMm: null, heightMm: 19, hollows: [] })
    expect(cuts).toEqual([])
    expect(wished).toMatchObject({ gripMm: 'auto', airMm: 1, matchUm: 10, toleranceUm: null })
    expect(ways).toEqual(['on edge', 'lying flat', 'stack', 'single', 'bed'])
  })

  test('the height and what comes off the top', () => {
    expect(windowOf(questionFrom(mm({ height: '19', offTop: '6', wishes: wishes({ grip: '10' }) }), vise))).toMatchObject({ lowMm: 33, highMm: 35 })
    expect(questionFrom(mm({ height: '19', offTop: '0' }), vise).cuts).toEqual([])
  })

  test('an inch form with millimetres in it', () => {
    const form = inch({ height: '7/8', offTop: '3,0mm', between: '2', along: '3', wishes: wishes({ grip: '½', air: '1 mm' }) })
    expect(windowOf(questionFrom(form, { jawHeightMm: 1.75 * 25.4, openingMm: 200 }))).toMatchObject({ lowMm: expect.closeTo(26.225, 9), highMm: expect.closeTo(31.75, 9) })
  })

  test('a round part is typed by one size', () => {
    expect(questionFrom(mm({ shape: 'round', height: '30', between: 'x' }), vise).part).toMatchObject({ shape: 'round', heightMm: 30, betweenJawsMm: 30, alongJawsMm: null })
  })

  test('what the screen asks for is handed on', () => {
    expect(questionFrom(mm({ height: '19' }), vise, { ways: ['bed'], most: 30, rejectedMost: 0, only: ['A'] })).toMatchObject({ ways: ['bed'], most: 30, rejectedMost: 0, only: ['A'] })
  })
})

// An inch shop's round numbers; common practice, no source.
describe('an inch shop', () => {
  test('starts from its own wishes', () => {
    expect(questionFrom(inch({ height: '2' }), vise).wishes).toMatchObject({ gripMm: 9.525, airMm: 1.016, holeAirMm: 0.508, bedAirMm: 1.016, gapMm: 1.5875 })
    expect(questionFrom(inch({ height: '2', cuts: [hole({ diameter: '1/4', across: '1/2' })] }), vise).cuts[0]).toMatchObject({ diameterMm: 6.35, yMm: 12.7, runThroughMm: 1.5875 })
  })

  test('grips less of a thin part', () => {
    expect(questionFrom(inch({ height: '1/4', offTop: '.05' }), vise).wishes.gripMm).toBeCloseTo(0.6 * 0.2 * 25.4, 9)
  })

  test('names its tolerance as it is drawn', () => {
    expect(questionFrom(inch({ height: '2', wishes: wishes({ tolerance: '.0002"' }) }), vise).wishes.toleranceUm).toBeCloseTo(5.08, 9)
    expect(questionFrom(mm({ height: '20', wishes: wishes({ tolerance: '5 µm' }) }), vise).wishes.toleranceUm).toBeCloseTo(5, 9)
    expect(questionFrom(mm({ height: '20', wishes: wishes({ tolerance: '0,01' }) }), vise).wishes.toleranceUm).toBeCloseTo(10, 9)
  })
})

describe('to stand proud', () => {
  test('by a bare wish: a face of depth 0 with that air', () => {
    const { cuts, wishes: wished } = questionFrom(mm({ height: '3', proud: '0.8', wishes: wishes({ grip: '2' }) }), vise)
    expect([cuts, wished.airMm]).toEqual([[{ kind: 'face', depthMm: 0, overJaw: true, runThroughMm: 0.5 }], 0.8])
  })

  test('with something off the top: the air is raised to it, never lowered', () => {
    expect(questionFrom(mm({ height: '19', offTop: '6', proud: '3' }), vise).wishes.airMm).toBe(3)
    expect(questionFrom(mm({ height: '19', offTop: '6', proud: '0.2' }), vise).wishes.airMm).toBe(1)
    expect(questionFrom(mm({ height: '19', proud: '0.2', cuts: [slot({})] }), vise).wishes.airMm).toBe(1)
  })

  test('below nothing is refused, whatever else is asked for', () => expect(refused(mm({ height: '19', offTop: '6', proud: '-1' }))).toMatchObject({ code: 'wish-negative', field: 'proud' }))
})

describe('lines of cuts', () => {
  test('a hole from the moving jaw', () => {
    expect(questionFrom(mm({ height: '19', between: '38', cuts: [hole({ from: 'moving' })] }), vise).cuts[0]).toMatchObject({ yMm: 32, xMm: null })
    expect(refused(mm({ height: '19', cuts: [hole({ from: 'moving' })] }))).toMatchObject({ code: 'field-missing', field: 'between', for: 'cuts[0].across' })
  })

  test('two holes at the fixed jaw, story of the plain block: a short bar between them, a long one inboard', () => {
    const form = mm({ height: '19', offTop: '6', between: '38', along: '60', cuts: [hole({ along: '10' }), hole({ along: '50' })] })
    const { part, cuts, wishes: wished } = questionFrom(form, vise), obstacles = obstaclesOf(part, cuts, wished)
    expect(placesOf(obstacles, [{ acrossMm: 8, lengthMm: 150 }, { acrossMm: 8, lengthMm: 150 }])).toMatchObject({ status: 'inboard', places: [{ yMm: 10.75 }, { yMm: 30 }] })
    expect(placesOf(obstacles, [{ acrossMm: 8, lengthMm: 25 }, { acrossMm: 8, lengthMm: 25 }]).status).toBe('at the jaws')
    expect(placesOf(obstacles, [{ acrossMm: 1.25, lengthMm: 150 }, { acrossMm: 1.25, lengthMm: 150 }]).status).toBe('at the jaws')
  })

  test('taps, blind holes, spots, ends, slots and hollows', () => {
    const rect = { x0: '20', x1: '30', y0: '-5', y1: '45' }
    const { cuts, part } = questionFrom(mm({ height: '19', between: '40', along: '60', hollows: [{ x0: '1', x1: '2', y0: '3', y1: '4' }], cuts: [
      hole({ tool: 'tap', pitch: '1.25', leadThreads: '2' }), hole({ through: false, depth: '5', runThrough: 'nonsense left behind' }), hole({ tool: 'spot', depth: '2', through: true }),
      { kind: 'end', side: 'right', stock: '1.5' }, slot({ depth: '19', overJaw: false, runThrough: '2', rect }),
    ] }), vise)
    expect(cuts).toEqual([
      { kind: 'hole', tool: 'tap', through: true, diameterMm: 8.5, xMm: null, yMm: 6, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 2, pitchMm: 1.25 },
      { kind: 'hole', tool: 'drill', through: false, depthMm: 5, diameterMm: 8.5, xMm: null, yMm: 6, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4 },
      { kind: 'hole', tool: 'spot', through: false, depthMm: 2, diameterMm: 8.5, xMm: null, yMm: 6, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4 },
      { kind: 'end', side: 'right', stockMm: 1.5 },
      { kind: 'slot', depthMm: 19, overJaw: false, runThroughMm: 2, rect: { x0Mm: 20, x1Mm: 30, y0Mm: -5, y1Mm: 45 } },
    ])
    expect(part.hollows).toEqual([{ x0Mm: 1, x1Mm: 2, y0Mm: 3, y1Mm: 4 }])
  })
})

describe('a refusal names the field of the form', () => {
  test.each<[string, Partial<SetupForm>, string, string]>([
    ['no height', {}, 'field-missing', 'height'],
    ['a word for it', { height: 'tall' }, 'not-a-number', 'height'],
    ['nothing', { height: '0' }, 'size-not-positive', 'height'],
    ['a round part of nothing', { height: '0', shape: 'round' }, 'size-not-positive', 'height'],
    ['wider than the opening', { height: '19', between: '151' }, 'part-wider-than-opening', 'between'],
    ['a diameter wider than the opening', { height: '151', shape: 'round' }, 'part-wider-than-opening', 'height'],
    ['along below nothing', { height: '19', along: '-1' }, 'size-not-positive', 'along'],
    ['more off than there is', { height: '19', offTop: '20' }, 'cut-deeper-than-part', 'offTop'],
    ['less than nothing off', { height: '19', offTop: '-1' }, 'depth-negative', 'offTop'],
    ['two decimal marks', { height: '1.000,5' }, 'two-decimal-marks', 'height'],
    ['a hole without a diameter', { height: '19', cuts: [hole({}), hole({ diameter: '' })] }, 'field-missing', 'cuts[1].diameter'],
    ['a hole without its place', { height: '19', cuts: [hole({ across: '' })] }, 'field-missing', 'cuts[0].across'],
    ['a hole of nothing', { height: '19', cuts: [hole({ diameter: '0' })] }, 'size-not-positive', 'cuts[0].diameter'],
    ['a hole beside the part', { height: '19', between: '38', cuts: [hole({ across: '39' })] }, 'hole-off-part', 'cuts[0].across'],
    ['a hole past the end', { height: '19', along: '60', cuts: [hole({ along: '61' })] }, 'hole-off-part', 'cuts[0].along'],
    ['a hole past the moving jaw', { height: '19', between: '38', cuts: [hole({ from: 'moving', across: '39' })] }, 'hole-off-part', 'cuts[0].across'],
    ['a point of 190 degrees', { height: '19', cuts: [hole({ pointAngle: '190' })] }, 'angle-out-of-range', 'cuts[0].pointAngle'],
    ['a tap without pitch', { height: '19', cuts: [hole({ tool: 'tap' })] }, 'field-missing', 'cuts[0].pitch'],
    ['a lead below nothing', { height: '19', cuts: [hole({ tool: 'tap', pitch: '1', leadThreads: '-1' })] }, 'depth-negative', 'cuts[0].leadThreads'],
    ['a blind hole that comes out', { height: '10', cuts: [hole({ through: false, depth: '9' })] }, 'blind-hole-breaks-through', 'cuts[0].depth'],
    ['a rectangle turned round', { height: '19', cuts: [slot({ rect: { x0: '3', x1: '1', y0: '0', y1: '1' } })] }, 'size-not-positive', 'cuts[0].rect.x1'],
    ['a rectangle of three sides', { height: '19', cuts: [slot({ rect: { x0: '3', x1: '5', y0: '0', y1: '' } })] }, 'field-missing', 'cuts[0].rect.y1'],
    ['a hollow of nothing', { height: '19', hollows: [{ x0: '1', x1: '1', y0: '0', y1: '1' }] }, 'size-not-positive', 'hollows[0].x1'],
    ['a run-through below nothing', { height: '19', cuts: [slot({ runThrough: '-1' })] }, 'wish-negative', 'cuts[0].runThrough'],
    ['stock below nothing', { height: '19', cuts: [{ kind: 'end', side: 'left', stock: '-1' }] }, 'depth-negative', 'cuts[0].stock'],
    ['a wish below nothing', { height: '19', wishes: wishes({ holeAir: '-1' }) }, 'wish-negative', 'wishes.holeAir'],
    ['a grip by any other word', { height: '19', wishes: wishes({ grip: 'most' }) }, 'not-a-number', 'wishes.grip'],
    ['a length beyond reason', { height: '1' + '0'.repeat(30) }, 'too-large', 'height'],
  ])('%s', (_, form, code, field) => expect(refused(mm(form))).toMatchObject({ code, field }))

  test('and, of a size, where it stands in the question, so that it can be said in the person\'s units', () => {
    expect(refused(inch({ height: '1', between: '7' }))).toMatchObject({ code: 'part-wider-than-opening', field: 'between', of: 'part.betweenJawsMm', needed: 150 })
  })

  test('the vise keeps its own', () => {
    expect(() => questionFrom(mm({ height: '19' }), { ...vise, lowerJawHeightMm: 46 })).toThrow(expect.objectContaining({ code: 'lower-jaw-above-higher', facts: expect.objectContaining({ field: 'vise.lowerJawHeightMm' }) }))
  })
})
