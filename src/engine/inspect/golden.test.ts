// Cases and expected answers were computed by independent programs, or simulated from known bars (see the head of each file).
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerMates } from '#engine/inspect/answer-mates.ts'
import { answerShape } from '#engine/inspect/answer-shape.ts'
import { answerTurnOver } from '#engine/inspect/answer-turn-over.ts'
import { answerVerdict } from '#engine/inspect/answer-verdict.ts'

type Golden = { readonly id: string; readonly note?: string; readonly expect: { readonly [key: string]: unknown } }

const casesOf = (name: string): readonly Golden[] => (JSON.parse(readFileSync(`fixtures/shop/${name}.json`, 'utf8')) as { cases: Golden[] }).cases

function answerOrRefusal(answer: (raw: unknown) => object, raw: unknown): object {
  try {
    return answer(raw)
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.code }
    throw error
  }
}

/** Every difference beyond the tolerance of its key, by path; keys the case does not expect are not compared. */
function differences(expected: unknown, given: unknown, toleranceOf: (key: string) => number, path = ''): string[] {
  if (typeof expected === 'number') return typeof given === 'number' && Math.abs(expected - given) <= toleranceOf(path) ? [] : [`${path}: ${String(given)}, expected ${expected}`]
  if (typeof expected !== 'object' || expected === null) return expected === given ? [] : [`${path}: ${String(given)}, expected ${String(expected)}`]
  if (typeof given !== 'object' || given === null) return [`${path}: ${String(given)}, expected ${JSON.stringify(expected)}`]
  const more = Array.isArray(expected) && (!Array.isArray(given) || given.length !== expected.length) ? [`${path}: not ${expected.length} entries`] : []
  return [...more, ...Object.entries(expected).flatMap(([key, value]) => differences(value, (given as { [key: string]: unknown })[key], toleranceOf, `${path}.${key}`))]
}

/** As the heads of the files say; of `shape` the two figures that a large offset leaves fewer digits. */
const tolerances: { readonly [name: string]: (path: string) => number } = {
  shape: (path) => (path.endsWith('HeightMm') ? 1e-9 : /taperSeUm|repeatabilityUm/.test(path) ? 1e-5 : 1e-6),
  'turn-over': () => 1e-6,
  verdict: () => 1e-9,
}

describe.each([
  { name: 'shape', answer: answerShape, least: 44 },
  { name: 'turn-over', answer: answerTurnOver, least: 26 },
  { name: 'verdict', answer: answerVerdict, least: 36 },
])('the cases of $name', ({ name, answer, least }) => {
  const cases = casesOf(`inspect/${name}`)

  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(least))

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, golden) => {
    const { id: _id, note: _note, expect: expected, ...raw } = golden, given = answerOrRefusal(answer, raw)
    expect(differences(expected, given, tolerances[name]!)).toEqual([])
    if (!('refused' in given)) expect(given).toMatchObject({ ignored: [], sum: expect.arrayContaining([expect.objectContaining({ formula: expect.any(String) })]) })
  })
})

type MatesCase = Golden & { readonly heights?: number[]; readonly profiles?: number[][]; readonly k?: number; readonly vises?: number; readonly expect: { worst?: number; spread?: number } }

// Values are proven; the bars given in the file are one example of several as good, so ours are judged by what they are.
describe('the cases of mates', () => {
  const cases = casesOf('matching/matching') as readonly MatesCase[]

  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(25))

  test.each(cases.map((golden) => [golden.id, golden] as const))('%s', (_, { id: _id, note: _note, expect: wanted, ...raw }) => {
    const answer = answerMates(raw), rows = raw.profiles ?? raw.heights!.map((height) => [height])
    const costOf = (i: number, j: number, turned: boolean) => Math.max(...rows[i]!.map((value, s) => Math.abs(value - (turned ? rows[j]!.toReversed() : rows[j]!)[s]!)))
    expect(answer.groups).toHaveLength(raw.k ?? raw.vises!)
    expect(new Set(answer.groups.flatMap(({ bars }) => bars)).size).toBe(2 * answer.groups.length)
    for (const { bars: [i, j], turnOne, cost } of answer.groups) expect(costOf(i, j, turnOne)).toBe(cost)
    if ('worst' in answer) {
      expect(answer.worst).toBe(wanted.worst)
      expect(Math.max(...answer.groups.map(({ cost }) => cost))).toBe(wanted.worst)
    } else {
      const values = answer.bars.flatMap((bar) => rows[bar]!)
      expect(answer.spread).toBe(wanted.spread)
      expect(Math.max(...values) - Math.min(...values)).toBe(wanted.spread)
      expect(answer.groups.flatMap(({ bars }) => bars).toSorted((a, b) => a - b)).toEqual(answer.bars)
    }
  })
})
