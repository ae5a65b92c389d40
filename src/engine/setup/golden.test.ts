// Cases and expected answers were computed by independent programs (see the head of each file); their rules and default
// wishes are common practice, no source.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerPlaces } from '#engine/setup/answer-places.ts'
import { answerWindow } from '#engine/setup/answer-window.ts'
import { answerChuck } from '#engine/setup/chuck/answer-chuck.ts'
import { answerPaper } from '#engine/setup/paper/answer-paper.ts'
import { answerRow } from '#engine/setup/row/answer-row.ts'
import { answerTable } from '#engine/setup/table/answer-table.ts'

type Golden = { readonly id: string; readonly note: string; readonly expect: { readonly [key: string]: unknown } }

function readGolden(name: string): readonly Golden[] {
  return JSON.parse(readFileSync(`fixtures/shop/setup/${name}.json`, 'utf8')).cases
}

function answerOrRefusal(answer: (raw: unknown) => object, raw: unknown): object {
  try {
    return answer(raw)
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.code }
    throw error
  }
}

/** Every difference beyond the tolerance, by path; keys the case does not expect are not compared. */
function differences(expected: unknown, given: unknown, tolerance: number, path = ''): string[] {
  if (typeof expected === 'number') return typeof given === 'number' && Math.abs(expected - given) <= tolerance ? [] : [`${path}: ${String(given)}, expected ${expected}`]
  if (typeof expected !== 'object' || expected === null) return expected === given ? [] : [`${path}: ${String(given)}, expected ${String(expected)}`]
  if (typeof given !== 'object' || given === null) return [`${path}: ${String(given)}, expected ${JSON.stringify(expected)}`]
  const more = Array.isArray(expected) && (!Array.isArray(given) || given.length !== expected.length) ? [`${path}: not ${expected.length} entries`] : []
  return [...more, ...Object.entries(expected).flatMap(([key, value]) => differences(value, (given as { [key: string]: unknown })[key], tolerance, `${path}.${key}`))]
}

describe.each([
  { name: 'window', answer: answerWindow, tolerance: 1e-6, least: 127 },
  { name: 'places', answer: answerPlaces, tolerance: 1e-4, least: 127 },
  { name: 'row', answer: answerRow, tolerance: 1e-6, least: 24, notAnswered: ['worstSpreadUm'] },
  { name: 'paper', answer: answerPaper, tolerance: 1e-9, least: 26 },
  { name: 'table', answer: answerTable, tolerance: 1e-6, least: 12 },
  { name: 'chuck', answer: answerChuck, tolerance: 1e-6, least: 7 },
])('the cases of $name', ({ name, answer, tolerance, least, notAnswered = [] }) => {
  const cases = readGolden(name)

  test('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(least))

  test.each(cases.map((golden) => [`${golden.id} ${golden.note}`, golden] as const))('%s', (_, golden) => {
    const { id: _id, note: _note, expect: all, ...raw } = golden
    // what only describes the case, as the head of the file says
    const expected = Object.fromEntries(Object.entries(all).filter(([key]) => !notAnswered.includes(key)))
    expect(differences(expected, answerOrRefusal(answer, raw), tolerance)).toEqual([])
  })
})
