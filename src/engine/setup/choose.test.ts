// The stories of the Set up screen, worked by hand from the rules (common practice, no source).
import { describe, expect, test } from 'vitest'
import type { Bar } from '#model/bar.ts'
import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupQuestion } from '#model/setup.ts'
import { waysAroundHoles } from '#engine/setup/around-holes.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { defaultWishes } from '#engine/setup/read-wishes.ts'

const face = (depthMm: number): Cut => ({ kind: 'face', depthMm, overJaw: true, runThroughMm: 0.5 })
const hole = (xMm: number | null, yMm: number, diameterMm: number): Cut => ({ kind: 'hole', tool: 'drill', through: true, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4, xMm, yMm, diameterMm })
const block = (betweenJawsMm: number | null, alongJawsMm: number | null, heightMm: number): Part => ({ shape: 'block', betweenJawsMm, alongJawsMm, heightMm, hollows: [] })

const bar = (id: string, sizes: Pick<Bar, 'heightMm' | 'thicknessMm' | 'lengthMm'>, more: Partial<Bar> = {}): Bar =>
  ({ id, ...sizes, trust: 'trusted', standing: 'measured', thicknessStanding: 'marked', where: 'slot', ...more })
const pair = (name: string, heightMm: number, thicknessMm: number, lengthMm: number, more: Partial<Bar> = {}): readonly Bar[] =>
  ['a', 'b'].map((mate) => bar(name + mate, { heightMm, thicknessMm, lengthMm }, { mates: name, ...more }))

const metricSet = [10, 15, 20, 25, 30, 35, 40, 45].flatMap((mm) => pair(`${mm}`, mm, 8, 150))
const asked = (more: Partial<SetupQuestion>): SetupQuestion =>
  ({ vise: { jawHeightMm: 45, openingMm: 150 }, part: block(null, null, 19), cuts: [], wishes: defaultWishes, ways: ['on edge'], ...more })
const ask = (question: SetupQuestion, rack: readonly Bar[]) => chooseBars(question, indexRack(rack))

describe('jaws 45, part 19 high, 6 off the top, a set by 5', () => {
  const question = asked({ cuts: [face(6)] })

  test('the pair of 35 at once, before anything is known of the plan', () => {
    const answer = ask(question, metricSet)
    expect(answer.best).toEqual({ bars: ['35a', '35b'], stand: 'on edge' })
    expect(answer.choices).toMatchObject([{ seatMm: 35, gripMm: 10, stickOutMm: 9, airMm: 3, places: [], because: [{ code: 'nothing-else-serves' }] }])
    expect(answer.findings.map(({ code }) => code)).toEqual(['between-not-given', 'along-not-given', 'not-computed'])
  })

  test('30 is refused with the cutter 2 below the jaw tops, 40 with 5 of grip', () => {
    const { rejected } = ask(question, metricSet)
    expect(rejected.find(({ bars }) => bars[0] === '30a')).toMatchObject({ reasons: ['too-low'], airMm: -2, gripMm: 15 })
    expect(rejected.find(({ bars }) => bars[0] === '40a')).toMatchObject({ reasons: ['too-high'], airMm: 8, gripMm: 5 })
    // nearest to the window first: 30 is 3 below it, 40 is 5 above
    expect(rejected.slice(0, 2).map(({ bars }) => bars[0])).toEqual(['30a', '40a'])
  })

  const drilled = asked({ part: block(38, 60, 19), cuts: [face(6), hole(10, 6, 8.5), hole(50, 6, 8.5)] })

  test('two holes 6 from the fixed jaw: inboard from 6 + 4.25 + 0.5 = 10.75, and why', () => {
    const [choice] = ask(drilled, metricSet).choices
    expect(choice).toMatchObject({ status: 'inboard', places: [{ xMm: -45, yMm: 10.75 }, { xMm: -45, yMm: 30 }] })
    expect(choice!.because).toContainEqual(expect.objectContaining({ code: 'moved-inboard', facts: expect.objectContaining({ bar: '35a', from: 'fixed jaw', spacerMm: 10.75, holes: [1, 2], acrossMm: 6 }) }))
    // it stands by hand, 0.5 of air from both holes
    expect(choice!.findings).toContainEqual({ code: 'placed-by-hand', facts: { bar: '35a', airMm: 0.5, from: 'fixed jaw', spacerMm: 10.75 } })
    // both centres are at y 6, the base begins at 10.75
    expect(choice!.findings).toContainEqual({ code: 'hole-outside-base', facts: { holes: [1, 2] } })
  })

  test('at the jaw only up to 6 − 4.75 = 1.25 thick, or up to 45.25 − 14.75 = 30.5 long between the holes', () => {
    const [choice] = ask(drilled, metricSet).choices, [instead, ...more] = waysAroundHoles(drilled, choice!, indexRack(metricSet))
    expect(more).toEqual([{ code: 'drill-bar-instead', facts: { bars: ['35a'] } }])
    expect(instead!.facts).toMatchObject({ bar: '35a', from: 'fixed jaw', acrossMm: 8 })
    expect(instead!.facts['thickestMm']).toBeCloseTo(1.25, 9)
    expect(instead!.facts['longestMm']).toBeCloseTo(30.5, 9)
    for (const [thicknessMm, status] of [[1.25, 'at the jaws'], [1.26, 'inboard']] as const) expect(ask(drilled, pair('thin', 35, thicknessMm, 150)).choices[0]!.status).toBe(status)
    for (const [lengthMm, status] of [[30.5, 'at the jaws'], [30.6, 'inboard']] as const) expect(ask(drilled, pair('short', 35, 8, lengthMm)).choices[0]!.status).toBe(status)
  })

  test('a bar shorter than a quarter of the part is not worth telling of: three holes leave 10.5 between them', () => {
    const three = { ...drilled, cuts: [...drilled.cuts, hole(30, 6, 8.5)] }
    expect(waysAroundHoles(three, ask(three, metricSet).choices[0]!, indexRack(metricSet))[0]).toMatchObject({ code: 'at-jaw-instead', facts: { longestMm: null } })
  })

  test('short bars between the holes go before the long ones inboard', () => {
    const answer = ask(drilled, [...metricSet, ...pair('short', 35, 8, 25)])
    expect(answer.choices.map(({ bars, status, rank }) => [bars[0], status, rank])).toEqual([['shorta', 'at the jaws', 1], ['35a', 'inboard', 2]])
    expect(answer.choices[0]!.because).toEqual([{ code: 'next-placed-worse', facts: { bars: ['35a', '35b'], stand: 'on edge', status: 'at the jaws', nextStatus: 'inboard' } }])
  })

  test('where neither jaw nor inboard is left, a drill bar may be cut into, and what else would stand there is told', () => {
    // at the moving jaw too, and a row in the middle: the pair of 8 has no place, four of 8.5 with 0.5 of air stand in the way
    const full = { ...drilled, cuts: [...drilled.cuts, hole(10, 19, 8.5), hole(50, 19, 8.5), hole(10, 32, 8.5), hole(50, 32, 8.5)] }
    const none = ask(full, metricSet)
    expect(none.choices).toEqual([])
    expect(none.rejected[0]).toMatchObject({ bars: ['35a', '35b'], reasons: ['fouled'], fouledHoles: [1, 2, 5, 6] })
    const drillBars = ask(full, [...metricSet, ...pair('drill', 35, 8, 150, { trust: 'drill bar' })])
    expect(drillBars.choices).toMatchObject([{ bars: ['drilla', 'drillb'], status: 'fouled', trust: 'drill bar', fouledHoles: [1, 2, 5, 6] }])
    const around = waysAroundHoles(full, null, indexRack(metricSet))
    expect(around.map(({ code, facts }) => [code, facts['from'] ?? facts['bars']])).toEqual([['at-jaw-instead', 'fixed jaw'], ['at-jaw-instead', 'moving jaw'], ['drill-bar-instead', ['35a', '35b']]])
    expect(around[1]!.facts['thickestMm']).toBeCloseTo(1.25, 9)
    expect(waysAroundHoles(question, null, indexRack(metricSet))).toEqual([])
    expect(waysAroundHoles(question, ask(question, metricSet).choices[0]!, indexRack(metricSet))).toEqual([])
  })

  test('a hole whose place along is not known keeps every bar clear on its whole length', () => {
    const answer = ask({ ...drilled, cuts: [face(6), hole(null, 6, 8.5)] }, [...metricSet, ...pair('short', 35, 8, 25)])
    expect(answer.choices.map(({ bars, status }) => [bars[0], status])).toEqual([['35a', 'inboard'], ['shorta', 'inboard']])
    expect(answer.findings).toContainEqual({ code: 'hole-along-not-given', facts: { holes: [1] } })
  })
})

test('14 between the jaws: two 8s meet, two 6.35s leave 1.3, two 6s serve', () => {
  const rack = [...pair('8', 35, 8, 150), ...pair('6.35', 35, 6.35, 150), ...pair('6', 35, 6, 150)]
  const answer = ask(asked({ part: block(14, 60, 19), cuts: [face(6)] }), rack)
  expect(answer.choices.map(({ bars }) => bars[0])).toEqual(['6a'])
  expect(answer.rejected.map(({ bars, reasons }) => [bars[0], reasons])).toEqual([['6.35a', ['too-thick']], ['8a', ['too-thick']]])
})

test('the inch set, ½ to 1⅝ by ⅛: 1⅛ first, 1¼ legal with no grip to spare, 1 refused', () => {
  const inch = 25.4, rack = Array.from({ length: 10 }, (_, k) => pair(`${4 + k}/8`, ((4 + k) * inch) / 8, inch / 4, 6 * inch)).flat()
  const answer = ask(asked({ vise: { jawHeightMm: 1.75 * inch, openingMm: 6 * inch }, part: block(2 * inch, 3 * inch, (7 * inch) / 8), cuts: [face(3)], wishes: { ...defaultWishes, gripMm: inch / 2 } }), rack)
  expect([answer.window.lowMm, answer.window.highMm]).toEqual([expect.closeTo(26.225, 9), expect.closeTo(31.75, 9)])
  expect(answer.choices.map(({ bars, gripMm }) => [bars[0], gripMm])).toEqual([['9/8a', expect.closeTo((5 * inch) / 8, 9)], ['10/8a', expect.closeTo(inch / 2, 9)]])
  expect(answer.choices[0]!.because[0]).toMatchObject({ code: 'next-less-grip' })
  expect(answer.rejected.find(({ bars }) => bars[0] === '8/8a')).toMatchObject({ reasons: ['too-low'] })
})

describe('what is measured', () => {
  const question = asked({ part: block(38, 60, 19), cuts: [face(6)] })

  test('two bars marked alike never go before a pair that is measured, with or without a tolerance', () => {
    const rack = [...pair('marked', 34.8, 6, 150, { standing: 'marked' }), bar('ma', { heightMm: 34.804, thicknessMm: 12, lengthMm: 150 }, { mates: 'm' }), bar('mb', { heightMm: 34.8, thicknessMm: 12, lengthMm: 150 }, { mates: 'm' })]
    for (const toleranceUm of [null, 20]) {
      const { choices } = ask({ ...question, wishes: { ...defaultWishes, toleranceUm } }, rack)
      expect(choices.map(({ bars, matchUm, rank }) => [bars[0], matchUm, rank])).toEqual([['ma', 4, 1], ['markeda', null, 2]])
      expect(choices[0]!.because[0]!.code).toBe('next-not-measured')
      expect(choices[0]!.higher).toEqual({ bar: 'ma', byUm: 4 })
      expect(choices[1]).toMatchObject({ higher: null, findings: [{ code: 'match-not-measured' }] })
    }
  })

  test('equal choices share a rank and leave no best', () => {
    const answer = ask(question, [...pair('x', 35, 8, 150), ...pair('y', 35, 8, 150), ...pair('z', 34, 8, 150, { where: 'out', trust: 'look first' })])
    expect(answer.choices.map(({ bars, rank }) => [bars[0], rank])).toEqual([['xa', 1], ['ya', 1], ['za', 3]])
    expect([answer.best, answer.choices[0]!.because[0]!.code]).toEqual([null, 'next-as-good'])
    expect(answer.choices[2]!.findings).toMatchObject([{ code: 'look-first', facts: { bars: ['za', 'zb'] } }, { code: 'out', facts: { bars: ['za', 'zb'] } }])
  })

  test('only cuts the answer short: ranks, best and make are those of the whole rack', () => {
    const rack = [...metricSet, ...pair('y', 34, 8, 150)], whole = ask(question, rack)
    const some = ask({ ...question, only: ['ya', 'yb', '30a', '30b'] }, rack)
    expect(some.choices).toEqual(whole.choices.filter(({ bars }) => bars[0] === 'ya'))
    expect(some.rejected.map(({ bars }) => bars[0])).toEqual(['30a'])
    expect([some.best, some.make, some.choices[0]!.rank]).toEqual([whole.best, null, 1])
    // 34 grips 11 and comes before 35, which grips 10
    expect(ask({ ...question, only: ['35a', '35b'], most: 1 }, rack).choices.map(({ rank }) => rank)).toEqual([2])
  })
})

describe('two high', () => {
  // Jaws 45, part 19, 6 off: 33 to 35 serve. Lying flat 14 thick, on it 20 on edge, 8 thick: 34.
  const lower = pair('flat', 16, 14, 150, { thicknessStanding: 'measured' }), upper = pair('up', 20, 8, 150)
  const question = asked({ part: block(60, 80, 19), cuts: [face(6)], ways: ['on edge', 'stack'] })

  test('serves where one pair alone is too low; the columns are levelled by changing sides', () => {
    const [low, high] = lower as [Bar, Bar], [one, two] = upper as [Bar, Bar]
    const { choices } = ask(question, [{ ...low, thicknessMm: 14.003 }, high, { ...one, heightMm: 20.003 }, two])
    // flat a is 3 µm over b; up a, the higher by 3 too, goes on b
    expect(choices).toMatchObject([{ bars: ['flata', 'flatb', 'upb', 'upa'], stand: 'stack', stacked: ['lying flat', 'on edge'], matchUm: 0, higher: null }])
    expect(choices[0]!.seatMm).toBeCloseTo(34.003, 9)
  })

  test('never wider above than below, nor slimmer on edge than the ratio allows', () => {
    // lying flat 16 wide: 16.5 is too wide to stand on it, but carries it
    expect(ask(question, [...lower, ...pair('wide', 20, 16.5, 150)]).choices.map(({ bars }) => bars[0])).toEqual(['widea'])
    expect(ask(question, [...lower, ...pair('slim', 20, 6.6, 150)]).choices).toEqual([])
    expect(ask(question, [...lower, ...pair('just', 20, 20 / 3, 150)]).choices).toHaveLength(1)
  })

  test('told among rejections only of the bars that are asked about', () => {
    const rack = [...lower, ...pair('up', 24, 8, 150)]
    expect(ask(question, rack).rejected.map(({ stand }) => stand)).toEqual(['on edge', 'on edge'])
    expect(ask({ ...question, only: rack.map(({ id }) => id) }, rack).rejected).toContainEqual(expect.objectContaining({ stand: 'stack', seatMm: 38, reasons: ['too-high'] }))
  })
})

test('the bed serves a part as high as the jaws and more', () => {
  const answer = ask(asked({ part: block(38, 60, 52), cuts: [face(3)], ways: ['bed'] }), [])
  expect(answer.choices).toMatchObject([{ bars: [], stand: 'bed', status: 'on the bed', seatMm: 0, gripMm: 45, airMm: 4, matchUm: 0, rank: 1 }])
})

test('a drill that comes out below has air to the bed: 16 mm, 118°, run-through 1.5 on bars of 5', () => {
  // By hand: 8 / tan 59° = 4.807, + 1.5 = 6.307 below the part: 1.307 into the bed, 2.307 short of the wished air.
  const question = asked({ part: block(60, 80, 30), cuts: [hole(40, 30, 16)] }), answer = ask(question, pair('5', 5, 8, 150))
  expect(answer.rejected).toMatchObject([{ bars: ['5a', '5b'], reasons: ['too-low'] }])
  expect(answer.window.lowMm).toBeCloseTo(7.307, 3)
  expect(ask(question, pair('8', 8, 8, 150)).choices[0]!.bedAirMm).toBeCloseTo(8 - 6.307, 3)
})

test('of very many choices the first ten thousand are listed, and that is said', () => {
  const rack = Array.from({ length: 102 }, (_, k) => pair(`p${k}`, 17, 17, 100)).flat(), { choices, findings } = ask(asked({ ways: ['stack'] }), rack)
  // each of 102 pairs on edge on each of the other 101: 10 302
  expect([choices.length, findings.at(-1)]).toEqual([10_000, { code: 'cut-short', facts: { most: 10_000 } }])
  expect(ask(asked({ ways: ['stack'], most: 5 }), rack).findings.map(({ code }) => code)).not.toContain('cut-short')
})

test('mates by the thousand are refused, not listed for ever', () => {
  const many = Array.from({ length: 2100 }, (_, k) => bar(`b${k}`, { heightMm: 20, thicknessMm: 8, lengthMm: 100 }, { mates: 'all' }))
  expect(() => indexRack(many)).toThrow(Refusal)
})
