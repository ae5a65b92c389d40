import { describe, expect, it } from 'vitest'
import { calc, calculations } from '#tasks/calc.ts'

const vise = { jawHeightMm: 45, openingMm: 150 }
const plain = { vise, part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }] }

describe('calculations as data', () => {
  it('answers one case, with how its numbers came about and what it ignored', () => {
    // J + C + K − T = 45 + 6 + 1 − 19 = 33 and J − G = 45 − 10 = 35 (the rules of docs/setup-rules.md; common practice, no source).
    expect(calc('window', { ...plain, colour: 'blue' })).toMatchObject({ lowMm: 33, highMm: 35, ignored: ['colour'], sum: expect.any(Array) as unknown[] })
  })

  it('answers an array in its order; a refused case stands in its place and stops nothing', () => {
    const answers = calc('window', [plain, { ...plain, vise: { ...vise, jawHeightMm: 0 } }, 'no case', plain]) as { lowMm?: number; refused?: string; facts?: { field?: string } }[]
    expect(answers.map((answer) => answer.refused ?? answer.lowMm)).toEqual([33, 'size-not-positive', 'field-missing', 33])
    expect(answers[1]!.facts!.field).toBe('vise.jawHeightMm')
    expect(calc('window', [])).toEqual([])
  })

  it('refuses a single case as every task refuses', () => {
    expect(() => calc('window', { ...plain, part: { ...plain.part, heightMm: 'tall' } })).toThrow(expect.objectContaining({ name: 'Refusal', code: 'not-a-number' }) as Error)
  })

  it.each(['guess', '', 'constructor', '__proto__', 'toString'])('knows no calculation %j and says which there are', (name) => {
    expect(() => calc(name, plain)).toThrow(expect.objectContaining({ code: 'unknown-calculation', facts: { given: name, needed: Object.keys(calculations) } }) as Error)
  })
})
