import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerPlaces } from '#engine/setup/answer-places.ts'
import { answerWindow } from '#engine/setup/answer-window.ts'
import { readPlacesCase, readSetupCase, readWindowCase } from '#engine/setup/read-question.ts'

const vise = { jawHeightMm: 45, openingMm: 150 }, part = { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }
const plain = { vise, part }
const hole = { kind: 'hole', xMm: 10, yMm: 6, diameterMm: 8.5 }, bar = { id: 'A', heightMm: 30, thicknessMm: 8, lengthMm: 150 }

function refusal(read: (raw: unknown) => unknown, raw: unknown): { code: string; field: unknown; given: unknown; needed: unknown } | null {
  try { read(raw) } catch (error) {
    if (error instanceof Refusal) return { code: error.code, field: error.facts.field, given: error.facts.given, needed: error.facts.needed }
    throw error
  }
  return null
}

// Defaults: common practice, no source.
describe('what is left out', () => {
  test('gets the common wishes, the match from the use', () => {
    expect(readWindowCase(plain).question.wishes).toEqual({
      gripMm: 10, airMm: 1, holeAirMm: 0.5, bedAirMm: 1, gapMm: 2, gripLineMm: 2, carryMm: 10, stickOutPerGrip: 3, stickOutPerThickness: 2, stackRatio: 3,
      toleranceUm: null, use: 'milling', matchUm: 10,
    })
    expect((['drilling', 'milling', 'fine milling', 'grinding'] as const).map((use) => readWindowCase({ ...plain, wishes: { use } }).question.wishes.matchUm)).toEqual([25, 10, 5, 2])
    expect(readWindowCase({ ...plain, wishes: { use: 'grinding', matchUm: 7, gripMm: 'auto' } }).question.wishes).toMatchObject({ matchUm: 7, gripMm: 'auto' })
  })

  test('gets the common cuts: over a jaw, a little run-through, a drill of 118 degrees', () => {
    expect(readWindowCase({ ...plain, cuts: [{ kind: 'slot', depthMm: 3 }, hole, { ...hole, tool: 'countersink', depthMm: 3 }] }).question.cuts).toEqual([
      { kind: 'slot', depthMm: 3, overJaw: true, runThroughMm: 0.5 },
      { ...hole, tool: 'drill', through: true, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4 },
      { ...hole, tool: 'countersink', through: false, depthMm: 3, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4 },
    ])
  })

  test('gets a trusted bar in its slot, its height measured, its thickness marked', () => {
    expect(readSetupCase({ ...plain, bars: [bar] })).toEqual({
      question: { vise, part: { ...part, shape: 'block', hollows: [] }, cuts: [], wishes: readWindowCase(plain).question.wishes, ways: ['on edge', 'lying flat', 'stack', 'single', 'bed'] },
      bars: [{ ...bar, trust: 'trusted', standing: 'measured', thicknessStanding: 'marked', where: 'slot' }],
      ignored: [],
    })
  })

  test('may be given as null', () => {
    const nulls = { ...plain, part: { ...part, shape: null, hollows: null }, cuts: [{ ...hole, tool: null, through: null, rect: null }], wishes: null, seatMm: null, unheardOf: null }
    expect(readWindowCase(nulls)).toEqual(readWindowCase({ ...plain, cuts: [hole] }))
    expect(refusal(readWindowCase, { ...plain, part: { ...part, heightMm: null } })).toMatchObject({ code: 'field-missing', field: 'part.heightMm' })
  })

  test('of a round part: one size for three', () => {
    expect(readWindowCase({ vise, part: { shape: 'round', diameterMm: 30, alongJawsMm: 60 } }).question.part).toEqual({ shape: 'round', betweenJawsMm: 30, alongJawsMm: 60, heightMm: 30, hollows: [] })
  })
})

describe('keys nobody knows', () => {
  test('are listed by their paths and stop nothing', () => {
    const raw = JSON.parse('{"vise": {"jawHeightMm": 45, "openingMm": 150, "maker": 1}, "part": {"betweenJawsMm": 38, "alongJawsMm": 60, "heightMm": 19, "colour": "grey", "__proto__": {"heightMm": 1}}, "cuts": [{"kind": "face", "depthMm": 1, "x": {}}], "constructor": 2}')
    expect(readWindowCase(raw).ignored).toEqual(['vise.maker', 'part.colour', 'part.__proto__', 'cuts[0].x', 'constructor'])
    expect(readWindowCase(raw).question.part.heightMm).toBe(19)
  })

  test('of one calculation are unknown to another', () => {
    expect(readSetupCase({ ...plain, bars: [], seatMm: 3, most: 30, rejectedMost: 0, only: ['A'] })).toMatchObject({ ignored: ['seatMm'], question: { most: 30, rejectedMost: 0, only: ['A'] } })
    expect(readWindowCase({ ...plain, bars: [1, 2] }).ignored).toEqual(['bars'])
  })

  test('inherited ones do not count', () => {
    expect(refusal(readWindowCase, { vise, part: Object.create(part) })).toMatchObject({ code: 'field-missing' })
  })
})

describe('what is malformed', () => {
  const cut = (one: object) => ({ ...plain, cuts: [one] })
  test.each<[string, unknown, string, string, unknown]>([
    ['no case', 7, 'field-missing', '', 'an object'],
    ['a list for a case', [plain], 'field-missing', '', 'an object'],
    ['no vise', { part }, 'field-missing', 'vise', 'an object'],
    ['a word for a vise', { vise: 'large', part }, 'field-missing', 'vise', 'an object'],
    ['a list for a part', { vise, part: [1] }, 'field-missing', 'part', 'an object'],
    ['an object for the cuts', { ...plain, cuts: {} }, 'field-missing', 'cuts', 'a list'],
    ['a number for a cut', { ...plain, cuts: [7] }, 'field-missing', 'cuts[0]', 'an object'],
    ['null for a cut', { ...plain, cuts: [null] }, 'field-missing', 'cuts[0]', 'an object'],
    ['a cut of no kind', cut({ depthMm: 3 }), 'field-missing', 'cuts[0].kind', ['face', 'step', 'slot', 'hole', 'end']],
    ['a blind hole without its depth', cut({ ...hole, through: false }), 'field-missing', 'cuts[0].depthMm', 'number'],
    ['a blind tap without its pitch', cut({ ...hole, tool: 'tap', through: false, depthMm: 3 }), 'field-missing', 'cuts[0].pitchMm', 'number'],
    ['an end without its side', cut({ kind: 'end', stockMm: 1 }), 'field-missing', 'cuts[0].side', ['left', 'right']],
    ['a rectangle of three sides', cut({ kind: 'slot', depthMm: 1, rect: { x0Mm: 0, x1Mm: 1, y0Mm: 2 } }), 'field-missing', 'cuts[0].rect.y1Mm', 'number'],
    ['a hollow of three sides', { vise, part: { ...part, hollows: [{ x0Mm: 0, x1Mm: 1, y0Mm: 2 }] } }, 'field-missing', 'part.hollows[0].y1Mm', 'number'],
    ['a number as text', cut({ kind: 'face', depthMm: '6' }), 'not-a-number', 'cuts[0].depthMm', 'number'],
    ['yes for a number', cut({ kind: 'face', depthMm: true }), 'not-a-number', 'cuts[0].depthMm', 'number'],
    ['a list for a number', cut({ kind: 'face', depthMm: [6] }), 'not-a-number', 'cuts[0].depthMm', 'number'],
    ['NaN', cut({ kind: 'face', depthMm: NaN }), 'not-a-number', 'cuts[0].depthMm', 'number'],
    ['Infinity', { vise: { ...vise, openingMm: Infinity }, part }, 'not-a-number', 'vise.openingMm', 'number'],
    ['a grip by any other word', { ...plain, wishes: { gripMm: 'Auto' } }, 'not-a-number', 'wishes.gripMm', ['a number', 'auto']],
    ['a tolerance in words', { ...plain, wishes: { toleranceUm: 'none' } }, 'not-a-number', 'wishes.toleranceUm', 'number'],
    ['a yes/no that is neither', cut({ kind: 'face', depthMm: 1, overJaw: 'yes' }), 'unknown-word', 'cuts[0].overJaw', [true, false]],
    ['0 for no', cut({ ...hole, through: 0 }), 'unknown-word', 'cuts[0].through', [true, false]],
    ['an unknown kind, nothing else looked at', cut({ kind: 'Face', depthMm: 'x', tool: 3 }), 'unknown-word', 'cuts[0].kind', ['face', 'step', 'slot', 'hole', 'end']],
    ['a kind that is no text', cut({ kind: 3 }), 'unknown-word', 'cuts[0].kind', ['face', 'step', 'slot', 'hole', 'end']],
    ['a kind that every object has', cut({ kind: 'toString' }), 'unknown-word', 'cuts[0].kind', ['face', 'step', 'slot', 'hole', 'end']],
    ['a side', cut({ kind: 'end', side: 'top', stockMm: 1 }), 'unknown-word', 'cuts[0].side', ['left', 'right']],
    ['1e308', { vise, part: { ...part, heightMm: 1e308 } }, 'too-large', 'part.heightMm', { mostMm: 1e6 }],
    ['-1e7, before its sign', { ...plain, wishes: { airMm: -1e7 } }, 'too-large', 'wishes.airMm', { mostMm: 1e6 }],
    ['1001 cuts', { ...plain, cuts: Array(1001).fill({ kind: 'face', depthMm: 1 }) }, 'too-many', 'cuts', 1000],
  ])('%s', (_, raw, code, field, needed) => {
    expect(refusal(readWindowCase, raw)).toMatchObject({ code, field, needed })
  })

  test('is named by the first code of the order that applies anywhere', () => {
    const all = { vise: { ...vise, openingMm: 2e6 }, part: { ...part, alongJawsMm: '60', heightMm: null }, cuts: [{ kind: 'thread' }, ...Array(1001).fill({ kind: 'face', depthMm: -1 })] }
    const next = (raw: unknown) => refusal(readWindowCase, raw)?.code
    expect(next(all)).toBe('field-missing')
    expect(next({ ...all, part: { ...all.part, heightMm: 19 } })).toBe('not-a-number')
    expect(next({ ...all, part })).toBe('unknown-word')
    expect(next({ ...all, part, cuts: all.cuts.slice(1) })).toBe('too-large')
    expect(next({ vise, part, cuts: all.cuts.slice(1) })).toBe('too-many')
    expect(next({ vise, part, cuts: all.cuts.slice(1, 4) })).toBe('depth-negative')
  })

  test('a kilometre and a thousand cuts are taken', () => {
    expect(readWindowCase({ vise: { ...vise, openingMm: 1e6 }, part: { ...part, alongJawsMm: 1e6 }, cuts: Array(1000).fill({ kind: 'face', depthMm: 1 }) }).question.cuts).toHaveLength(1000)
  })

  test.each<[string, object, string, string]>([
    ['a bar without id', { heightMm: 30, thicknessMm: 8, lengthMm: 150 }, 'field-missing', 'bars[0].id'],
    ['a number for an id', { ...bar, id: 7 }, 'field-missing', 'bars[0].id'],
    ['mates by number', { ...bar, mates: 7 }, 'field-missing', 'bars[0].mates'],
    ['trust', { ...bar, trust: 'proved' }, 'unknown-word', 'bars[0].trust'],
    ['standing', { ...bar, thicknessStanding: 'guessed' }, 'unknown-word', 'bars[0].thicknessStanding'],
    ['whereabouts', { ...bar, where: 'home' }, 'unknown-word', 'bars[0].where'],
    ['heights that are no pairs', { ...bar, heightsUm: [[1, 2, 3]] }, 'field-missing', 'bars[0].heightsUm[0]'],
    ['heights in words', { ...bar, heightsUm: [[1, '2']] }, 'not-a-number', 'bars[0].heightsUm[0][1]'],
  ])('of a bar: %s', (_, one, code, field) => {
    expect(refusal(readSetupCase, { ...plain, bars: [one] })).toMatchObject({ code, field })
  })

  test.each<[string, object, string, string]>([
    ['no bars at all', {}, 'field-missing', 'bars'],
    ['a way', { bars: [], ways: ['on edge', 'standing'] }, 'unknown-word', 'ways[1]'],
    ['half a choice', { bars: [], most: 1.5 }, 'not-a-number', 'most'],
    ['fewer than none', { bars: [], rejectedMost: -1 }, 'not-a-number', 'rejectedMost'],
    ['bars to look at by number', { bars: [], only: [1] }, 'field-missing', 'only[0]'],
  ])('of a setup: %s', (_, more, code, field) => {
    expect(refusal(readSetupCase, { ...plain, ...more })).toMatchObject({ code, field })
  })
})

describe('what cannot be', () => {
  const windowOf = (more: object) => refusal(readWindowCase, { ...plain, ...more })
  test.each<[string, object, string, string]>([
    ['an opening of nothing', { vise: { ...vise, openingMm: 0 } }, 'size-not-positive', 'vise.openingMm'],
    ['a jaw without width', { vise: { ...vise, jawWidthMm: 0 } }, 'size-not-positive', 'vise.jawWidthMm'],
    ['a lower jaw of nothing', { vise: { ...vise, lowerJawHeightMm: 0 } }, 'size-not-positive', 'vise.lowerJawHeightMm'],
    ['a lower jaw above the higher', { vise: { ...vise, lowerJawHeightMm: 45.1 } }, 'lower-jaw-above-higher', 'vise.lowerJawHeightMm'],
    ['a round part of nothing', { part: { shape: 'round', diameterMm: 0, alongJawsMm: 10 } }, 'size-not-positive', 'part.diameterMm'],
    ['a rectangle without width', { cuts: [{ kind: 'slot', depthMm: 1, rect: { x0Mm: 3, x1Mm: 3, y0Mm: 0, y1Mm: 1 } }] }, 'size-not-positive', 'cuts[0].rect.x1Mm'],
    ['a hollow turned round', { part: { ...part, hollows: [{ x0Mm: 0, x1Mm: 3, y0Mm: 2, y1Mm: 1 }] } }, 'size-not-positive', 'part.hollows[0].y1Mm'],
    ['a pitch of nothing', { cuts: [{ ...hole, tool: 'tap', pitchMm: 0 }] }, 'size-not-positive', 'cuts[0].pitchMm'],
    ['a lead below nothing', { cuts: [{ ...hole, tool: 'tap', pitchMm: 1, leadThreads: -1 }] }, 'depth-negative', 'cuts[0].leadThreads'],
    ['stock below nothing', { cuts: [{ kind: 'end', side: 'left', stockMm: -1 }] }, 'depth-negative', 'cuts[0].stockMm'],
    ['a run-through below nothing', { cuts: [{ ...hole, runThroughMm: -0.1 }] }, 'wish-negative', 'cuts[0].runThroughMm'],
    ['a ratio below nothing', { wishes: { stickOutPerGrip: -3 } }, 'wish-negative', 'wishes.stickOutPerGrip'],
    ['a point of 0 degrees', { cuts: [{ ...hole, pointAngleDeg: 0 }] }, 'angle-out-of-range', 'cuts[0].pointAngleDeg'],
    ['a countersink through', { cuts: [{ ...hole, tool: 'countersink', through: true }] }, 'spot-through', 'cuts[0].through'],
    ['a through hole said to be deeper than the part', { cuts: [{ ...hole, depthMm: 20 }] }, 'cut-deeper-than-part', 'cuts[0].depthMm'],
    ['a hole before the fixed jaw', { cuts: [{ ...hole, yMm: -0.1 }] }, 'hole-off-part', 'cuts[0].yMm'],
    ['a blind hole beside the part', { cuts: [{ ...hole, xMm: 61, through: false, depthMm: 3 }] }, 'hole-off-part', 'cuts[0].xMm'],
  ])('%s', (_, more, code, field) => expect(windowOf(more)).toMatchObject({ code, field }))

  test('is taken where it only touches', () => {
    expect(windowOf({ vise: { ...vise, openingMm: 38, lowerJawHeightMm: 45 }, cuts: [{ kind: 'slot', depthMm: 19 }, { ...hole, xMm: 60, yMm: 38 }, { ...hole, through: false, depthMm: 19, pointAngleDeg: 180 }, { ...hole, pointAngleDeg: 180 }] })).toBeNull()
    expect(windowOf({ cuts: [{ kind: 'slot', depthMm: 0 }, { kind: 'end', side: 'right', stockMm: 0 }], wishes: { airMm: 0, gripMm: 0 } })).toBeNull()
  })

  test('two bars of one id', () => expect(refusal(readSetupCase, { ...plain, bars: [bar, { ...bar, heightMm: 31 }] })).toMatchObject({ code: 'bar-id-twice', field: 'bars[1].id', given: 'A' }))
})

describe('places', () => {
  const places = { part: { betweenJawsMm: 38, alongJawsMm: 60 }, bars: [{ thicknessMm: 8, lengthMm: 100 }] }
  test.each<[string, object, string, string]>([
    ['no bar', { bars: [] }, 'too-few-bars', 'bars'],
    ['three bars', { bars: [1, 2, 3].map(() => places.bars[0]!) }, 'too-many-bars', 'bars'],
    ['1001 holes', { holes: Array(1001).fill({ xMm: 1, yMm: 1, diameterMm: 1 }) }, 'too-many', 'holes'],
    ['a hole off the part', { holes: [{ xMm: 1, yMm: 39, diameterMm: 1 }] }, 'hole-off-part', 'holes[0].yMm'],
    ['a through cut of three sides', { holes: [{ rect: { x0Mm: 1, x1Mm: 2, y0Mm: 3 } }] }, 'field-missing', 'holes[0].rect.y1Mm'],
    ['an end without stock', { holes: [{ side: 'left' }] }, 'field-missing', 'holes[0].stockMm'],
    ['a wish below nothing', { wishes: { gapMm: -1 } }, 'wish-negative', 'wishes.gapMm'],
  ])('refuse %s', (_, more, code, field) => expect(refusal(readPlacesCase, { ...places, ...more })).toMatchObject({ code, field }))

  test('need no height, and no holes', () => expect(readPlacesCase(places)).toMatchObject({ holes: [], part: { heightMm: null } }))
})

test('whatever is handed in, a case is answered or refused', () => {
  const value = fc.letrec((tie) => ({
    any: fc.oneof({ depthSize: 'small' }, fc.constantFrom(null, true, false, 0, -1, 5, 1e308, NaN, Infinity, '', 'auto', 'hole', 'left', 'round'), tie('object'), fc.array(tie('any'), { maxLength: 3 })),
    object: fc.dictionary(fc.constantFrom('kind', 'depthMm', 'xMm', 'rect', 'x0Mm', 'tool', 'through', 'id', 'side', '__proto__', 'heightMm', 'diameterMm', 'yMm', 'gripMm', 'hollows', 'shape'), tie('any'), { maxKeys: 6 }),
  })).any
  const spoiled = fc.tuple(fc.constantFrom('vise', 'part', 'cuts', 'holes', 'bars', 'wishes', 'seatMm'), value, fc.boolean())
  fc.assert(fc.property(spoiled, ([key, bad, asList]) => {
    for (const answer of [answerWindow, answerPlaces, readSetupCase]) {
      const found = refusal(answer, { ...plain, bars: [bar], [key]: asList ? [bad] : bad })
      if (found) expect(found.code).toMatch(/^[a-z]+(-[a-z]+)+$/)
    }
  }), { numRuns: 2000 })
})
