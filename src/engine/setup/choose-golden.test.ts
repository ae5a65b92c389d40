// Cases and expected answers were computed by independent programs: full listing, ranking checked pairwise, every offer
// taken and tried (see the head of the file). Their rules and default wishes are common practice, no source.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerSetup } from '#engine/setup/answer-setup.ts'

type Plain = { readonly [key: string]: unknown }
type Listed = Plain & { readonly bars: readonly string[]; readonly stand: string; readonly rank?: number }
type Expected = Plain & { readonly refused?: string; readonly choices: readonly Listed[]; readonly rejected: readonly Listed[] }
type Golden = { readonly id: string; readonly note: string; readonly expect: Expected }

const cases: readonly Golden[] = JSON.parse(readFileSync('fixtures/shop/setup/setup.json', 'utf8')).cases

function answerOrRefusal(raw: unknown): Expected {
  try {
    return answerSetup(raw) as unknown as Expected
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.code, choices: [], rejected: [] }
    throw error
  }
}

const toleranceOf = (key: string): number => (key === 'matchUm' ? 1e-3 : /^[xy]/.test(key) ? 1e-4 : 1e-6)

/** Every difference beyond the tolerance, by path; keys the case does not expect are not compared. */
function differences(expected: unknown, given: unknown, path: string, key = ''): string[] {
  if (typeof expected === 'number') return typeof given === 'number' && Math.abs(expected - given) <= toleranceOf(key) ? [] : [`${path}: ${String(given)}, expected ${expected}`]
  if (typeof expected !== 'object' || expected === null) return expected === given ? [] : [`${path}: ${String(given)}, expected ${String(expected)}`]
  if (typeof given !== 'object' || given === null) return [`${path}: ${String(given)}, expected ${JSON.stringify(expected)}`]
  const counts = Array.isArray(expected) && (!Array.isArray(given) || given.length !== expected.length) ? [`${path}: not ${expected.length} entries`] : []
  return [...counts, ...Object.entries(expected).flatMap(([name, value]) => differences(value, (given as Plain)[name], `${path}.${name}`, name))]
}

const asSet = (list: readonly Listed[]): Plain => Object.fromEntries(list.map((one) => [`${one.stand} ${one.bars.join(' ')}`, one]))

describe('the cases of setup', () => {
  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(99))

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, golden) => {
    const { id: _id, note: _note, expect: expected, ...raw } = golden, answer = answerOrRefusal(raw)
    if (expected.refused !== undefined) return expect(answer.refused).toBe(expected.refused)
    const { choices, rejected, ...rest } = expected
    expect(differences(rest, answer, '')).toEqual([])
    expect(differences(asSet(choices), asSet(answer.choices), 'choices')).toEqual([])
    expect(answer.choices).toHaveLength(choices.length)
    expect(differences(asSet(rejected), asSet(answer.rejected), 'rejected')).toEqual([])
    expect(answer.rejected).toHaveLength(rejected.length)
    for (const one of answer.rejected) expect(one.fouledHoles !== undefined).toBe((one['reasons'] as readonly string[]).includes('fouled'))
    const ranks = answer.choices.map((choice) => choice.rank!)
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
    expect('offers' in answer).toBe('offers' in expected)
  })
})
