import { describe, expect, test } from 'vitest'
import { answerPaper } from '#engine/setup/paper/answer-paper.ts'
import { paperOf, type PaperQuestion } from '#engine/setup/paper/paper.ts'
import { corners, type Corner, type Strips } from '#engine/setup/paper/strips.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'

const question = (loose: readonly Corner[], clamped: boolean): PaperQuestion => ({
  part: { betweenJawsMm: 60, alongJawsMm: 80 }, stripMm: 0.03, acrossMm: 53, alongMm: 74, clamped, topOut: false,
  strips: Object.fromEntries(corners.map((corner) => [corner, loose.includes(corner) ? 'loose' : 'held'])) as Strips,
})

/** Corner places: x along, y across. */
const at: { readonly [corner in Corner]: readonly [x: number, y: number] } = { 'fixed-left': [-1, -1], 'fixed-right': [1, -1], 'moving-left': [-1, 1], 'moving-right': [1, 1] }

/**
 * A rigid part on four supports, one of them higher by dirt: every plane that rests on three of them (free), or on one at
 * either end without slope across (in closed jaws), lies below none and carries the middle. Of each the corners left open.
 */
function looseOver(dirt: Corner, clamped: boolean): readonly Corner[][] {
  const height = (corner: Corner) => (corner === dirt ? 1 : 0)
  const open = (plane: (corner: Corner) => number) => corners.filter((corner) => plane(corner) - height(corner) > 1e-9)
  const isAbove = (plane: (corner: Corner) => number) => corners.every((corner) => plane(corner) >= height(corner) - 1e-9)
  if (clamped) {
    const end = (x: number) => Math.max(...corners.filter((corner) => at[corner][0] === x).map(height))
    return [open((corner) => (end(-1) + end(1)) / 2 + ((end(1) - end(-1)) / 2) * at[corner][0])]
  }
  // a plane through three corners has at the fourth what the two neighbours add to less the one across
  return corners.flatMap((left) => {
    const three = corners.filter((corner) => corner !== left), across = three.find((corner) => at[corner][0] === -at[left][0] && at[corner][1] === -at[left][1])!
    const there = three.filter((corner) => corner !== across).reduce((sum, corner) => sum + height(corner), 0) - height(across)
    const plane = (corner: Corner) => (corner === left ? there : height(corner))
    return isAbove(plane) ? [open(plane)] : []
  })
}

describe('one loose corner', () => {
  test.each(corners)('in closed jaws points at dirt under %s', (dirt) => {
    for (const loose of looseOver(dirt, true)) {
      expect(loose).toHaveLength(1)
      expect(paperOf(question(loose, true)).lookAt[0]).toBe(dirt)
    }
  })

  test.each(corners)('on a free part has dirt under %s among the two to look at', (dirt) => {
    const ways = looseOver(dirt, false)
    expect(ways).toHaveLength(2)
    for (const loose of ways) {
      expect(loose).toHaveLength(1)
      expect(paperOf(question(loose, false)).lookAt).toContain(dirt)
    }
  })
})

describe('any pattern', () => {
  const patterns = Array.from({ length: 16 }, (_, bits) => corners.filter((_corner, k) => bits & (1 << k)))

  test('keeps its meaning when the part is seen from the other end, corners mirrored', () => {
    const mirrored = (corner: Corner) => corners.find((one) => at[one][0] === -at[corner][0] && at[one][1] === at[corner][1])!
    for (const loose of patterns) for (const clamped of [true, false]) {
      const seen = paperOf(question(loose, clamped)), other = paperOf(question(loose.map(mirrored), clamped))
      expect({ ...other, lookAt: other.lookAt.map(mirrored).sort() }).toEqual({ ...seen, lookAt: seen.lookAt.toSorted() })
    }
  })

  test('says a size: what pulls out, or what may hide', () => {
    for (const loose of patterns) {
      const { gapAtLeastMm, unseenUpToMm } = paperOf(question(loose, true))
      expect([gapAtLeastMm, unseenUpToMm]).toEqual(loose.length === 0 ? [null, 0.03] : [0.03, null])
    }
  })
})

describe('the calculation paper', () => {
  const raw = { part: { betweenJawsMm: 60, alongJawsMm: 80 }, stripMm: 0.03, acrossMm: 53, alongMm: 74, strips: question([], true).strips }
  const codeOf = (raw: object): string => refusalOf(answerPaper, raw)

  test('tells the causes apart by what goes with what', () => {
    const strips = question(['moving-left', 'moving-right'], true).strips
    expect(answerPaper({ ...raw, strips }).tellApart.map(({ cause, test: by }) => [cause, by])).toEqual([
      ['jaw-lift', 'slacken-to-snug'], ['high-bar-fixed-side', 'exchange-bars'], ['side-not-square', 'turn-part'],
    ])
  })

  test('refuses in order', () => {
    expect(codeOf({ ...raw, stripMm: undefined, strips: { ...raw.strips, 'fixed-left': 'drags' } })).toBe('field-missing stripMm')
    expect(codeOf({ ...raw, strips: { ...raw.strips, 'fixed-left': 'drags' } })).toBe('unknown-word strips.fixed-left')
    expect(codeOf({ ...raw, strips: { ...raw.strips, 'fixed-left': null } })).toBe('field-missing strips.fixed-left')
    expect(codeOf({ ...raw, clamped: 'yes' })).toBe('unknown-word clamped')
    expect(codeOf({ ...raw, acrossMm: 0, part: { betweenJawsMm: 0, alongJawsMm: 80 } })).toBe('size-not-positive part.betweenJawsMm')
    expect(answerPaper({ ...raw, ink: 'blue' }).ignored).toEqual(['ink'])
  })
})
