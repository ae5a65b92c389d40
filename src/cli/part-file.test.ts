import { describe, expect, it } from 'vitest'
import { readPartFile } from '#cli/part-file.ts'

describe('a part as a file', () => {
  it('takes lengths as numbers of millimetres or as texts with a unit', () => {
    // 25.4 mm an inch exactly (international inch, 1959).
    expect(readPartFile({ vise: { jawHeightMm: '1.75 in', openingMm: 203.2 }, part: { heightMm: '7/8 in', betweenJawsMm: '2"' }, cuts: [{ kind: 'step', depthMm: '3,0 mm' }], wishes: { gripMm: 'auto' } })).toEqual({
      vise: { jawHeightMm: 44.45, openingMm: 203.2 },
      rest: { part: { heightMm: 22.225, betweenJawsMm: 50.8 }, cuts: [{ kind: 'step', depthMm: 3 }], wishes: { gripMm: 'auto' } },
    })
    expect(readPartFile({ vise: 'Bench mill', part: {} })).toEqual({ vise: 'Bench mill', rest: { part: {} } })
  })

  it.each([
    [[1], 'field-missing'], [null, 'field-missing'], ['part', 'field-missing'],
    [{ part: {}, colour: 'blue' }, 'unknown-key'], [JSON.parse('{"__proto__": {"part": 1}}'), 'unknown-key'], [{ part: {}, bars: [] }, 'unknown-key'],
    [{ part: { heightMm: 'tall' } }, 'not-a-number'], [{ part: { heightMm: '' } }, 'field-missing'], [{ cuts: [{ depthMm: '3 furlongs' }] }, 'unknown-unit'],
  ])('%j is refused: %s', (raw, code) => {
    expect(() => readPartFile(raw)).toThrow(expect.objectContaining({ code }) as Error)
  })

  it('refuses lists in lists without end', () => {
    expect(() => readPartFile({ cuts: JSON.parse(`${'['.repeat(50_000)}${']'.repeat(50_000)}`) as unknown })).toThrow(expect.objectContaining({ code: 'too-deep' }) as Error)
  })

  it('names the field of a length it cannot read', () => {
    expect(() => readPartFile({ part: {}, cuts: [{}, { depthMm: '1,2,3' }] })).toThrow(expect.objectContaining({ facts: { field: 'cuts[1].depthMm', given: '1,2,3', needed: 'number' } }) as Error)
  })
})
