import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerBlock } from '#engine/setup/block/answer-block.ts'
import { faces, oppositeOf } from '#engine/setup/block/orders.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

const vise = { jawHeightMm: 45, openingMm: 150 }
const plain = { vise, raw: { lengthMm: 84, widthMm: 43, heightMm: 28 }, finish: { lengthMm: 80, widthMm: 40, heightMm: 25 } }
const orderOf = (raw: object, name: string) => answerBlock(raw).orders.find(({ order }) => order === name)!

describe('the orders', () => {
  // Common practice, no source: first face, both sides with it at the fixed jaw, its opposite last; a rod until the moving
  // jaw has a cut face; nothing but cut faces in the jaws for the ends.
  test('one face stays', () => {
    expect(orderOf(plain, 'one face stays').steps.map(({ cut, fixed, down, rod }) => [cut, fixed, down, rod])).toEqual([
      ['A', 'B', 'D', false], ['B', 'A', 'C', true], ['C', 'A', 'B', true], ['D', 'B', 'A', false], ['E', 'A', 'F', false], ['F', 'A', 'E', false],
    ])
  })

  // Modern Machine-Shop Practice, 1887-88, figs. 1514 and 1515: the second face is one at a right angle to the first, with the
  // first at the fixed jaw and a narrow piece at the sliding jaw; the third the one opposite the first, which then lies
  // below, the second at the fixed jaw, again with a piece at the sliding jaw.
  test('roll round, as printed up to the third face', () => {
    const [first, second, third] = orderOf(plain, 'roll round').steps
    expect(second).toMatchObject({ fixed: first!.cut, rod: true })
    expect([first!.cut, oppositeOf(first!.cut)]).not.toContain(second!.cut)
    expect(third).toMatchObject({ cut: oppositeOf(first!.cut), down: first!.cut, fixed: second!.cut, rod: true })
  })

  // Worked by hand: half of 3 comes off A, so the block is 28 high for A and 26.5 for D. Low = 45 + 1.5 + 1 − height, high = 45 − 10.
  test('windows, pair, grip and stick-out', () => {
    const { steps, one, changes } = orderOf({ ...plain, heights: [{ id: 'P20', heightMm: 20 }, { id: 'P30', heightMm: 30 }] }, 'one face stays')
    expect(steps.map(({ lowMm, highMm }) => [lowMm, highMm])).toEqual([[19.5, 35], [4.5, 35], [6, 35], [21, 35], [0, 35], [0, 35]])
    expect(one).toEqual(['P30'])
    expect(steps[0]).toMatchObject({ pair: 'P30', seatMm: 30, gripMm: 15, stickOutMm: 13, betweenJawsMm: 43, heightMm: 28, depthMm: 1.5 })
    // 30 under an end 84 high would stand out more than 3 times its grip: the ends go on the bed
    expect(steps.slice(4).map(({ how, rest, seatMm, gripMm }) => [how, rest, seatMm, gripMm])).toEqual([['standing', 'bed', 0, 45], ['standing', 'bed', 0, 45]])
    expect(changes).toBe(1)
  })

  test('a long block has its ends cut past the jaw, on the same pair', () => {
    const { steps, changes } = orderOf({ ...plain, raw: { ...plain.raw, lengthMm: 260 }, finish: { ...plain.finish, lengthMm: 250 }, heights: [{ id: 'P30', heightMm: 30 }] }, 'one face stays')
    expect(steps.slice(4).map(({ cut, how, up, fixed, pair }) => [cut, how, up, fixed, pair])).toEqual([['E', 'past the jaw', 'D', 'B', 'P30'], ['F', 'past the jaw', 'D', 'B', 'P30']])
    expect(changes).toBe(0)
  })

  test('where no pair was named, one of the lowest height that does', () => {
    expect(orderOf(plain, 'one face stays').steps.map(({ rest, pair, seatMm }) => [rest, pair, seatMm])).toEqual([
      ['any pair', null, 21], ['any pair', null, 21], ['any pair', null, 21], ['any pair', null, 21], ['bed', null, 0], ['bed', null, 0],
    ])
  })

  test('a pair too thick to go under is left out', () => {
    const heights = [{ id: 'thick', heightMm: 25, thicknessMm: 12.5 }, { id: 'thin', heightMm: 26, thicknessMm: 12.25 }]
    // 26.5 between the jaws for the sides, 2 of gap between the bars
    expect(orderOf({ ...plain, heights }, 'one face stays').one).toEqual(['thin'])
  })
})

const size = fc.integer({ min: 8, max: 140 }), off = fc.integer({ min: 0, max: 6 })
const block = fc.record({ length: size, width: size, height: size, offs: fc.tuple(off, off, off), heights: fc.option(fc.array(fc.integer({ min: 3, max: 44 }), { maxLength: 6 })) })
  .map(({ length, width, height, offs, heights }) => ({
    vise, raw: { lengthMm: length + offs[0], widthMm: width + offs[1], heightMm: height + offs[2] }, finish: { lengthMm: length, widthMm: width, heightMm: height },
    ...(heights === null ? {} : { heights: heights.map((heightMm, k) => ({ id: `P${k}`, heightMm })) }),
  }))

test('every face is cut once, on bars that were there, between faces that lie opposite', () => {
  fc.assert(fc.property(block, (raw) => {
    for (const { steps, one } of answerBlock(raw).orders) {
      expect(steps.map(({ cut }) => cut).sort()).toEqual([...faces])
      const seen = new Set<string>()
      for (const { cut, how, up, down, fixed, moving, rod, pair, seatMm, lowMm, highMm, gripMm } of steps) {
        expect([oppositeOf(up), oppositeOf(fixed)]).toEqual([down, moving])
        expect(up === cut).toBe(how !== 'past the jaw')
        expect(rod).toBe(seen.has(fixed) && !seen.has(moving))
        if (pair !== null) expect(raw.heights).toContainEqual({ id: pair, heightMm: seatMm })
        if (seatMm !== null) { expect(seatMm).toBeGreaterThanOrEqual(lowMm); expect(seatMm).toBeLessThanOrEqual(highMm); expect(gripMm).toBeGreaterThan(0) }
        seen.add(cut)
      }
      // what comes off in each direction is the raw less the finished size
      const offIn = (one: string, other: string) => steps.filter(({ cut }) => cut === one || cut === other).reduce((sum, { depthMm }) => sum + depthMm, 0)
      expect(offIn('E', 'F')).toBeCloseTo(raw.raw.lengthMm - raw.finish.lengthMm, 9)
      expect(offIn('A', 'D') + offIn('B', 'C')).toBeCloseTo(raw.raw.widthMm - raw.finish.widthMm + raw.raw.heightMm - raw.finish.heightMm, 9)
      for (const id of one) expect(steps.slice(0, 4).every(({ lowMm, highMm }) => { const mm = raw.heights![Number(id.slice(1))]!.heightMm; return mm >= lowMm && mm <= highMm })).toBe(true)
    }
  }))
})

test('refuses in order', () => {
  const codeOf = (raw: object): string => refusalOf(answerBlock, raw)
  expect(codeOf({ vise, raw: plain.raw })).toBe('field-missing finish')
  expect(codeOf({ ...plain, raw: { ...plain.raw, widthMm: 151, heightMm: 20 } })).toBe('part-wider-than-opening raw.widthMm')
  expect(codeOf({ ...plain, raw: { ...plain.raw, widthMm: 0 } })).toBe('size-not-positive raw.widthMm')
  expect(codeOf({ ...plain, rodMm: 0 })).toBe('size-not-positive rodMm')
  expect(codeOf({ ...plain, heights: [{ id: 'P', heightMm: 20 }, { id: 'P', heightMm: 21 }] })).toBe('bar-id-twice heights[1].id')
  expect(codeOf({ ...plain, finish: { ...plain.finish, widthMm: 44 } })).toBe('finish-above-raw finish.widthMm')
})
