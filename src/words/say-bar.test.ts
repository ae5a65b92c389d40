import { describe, expect, it } from 'vitest'
import { barCalled, calledSize } from '#words/say-bar.ts'
import { plainUnits } from '#words/terms.ts'

const inch = { ...plainUnits, length: 'in' } as const

describe('what a bar is called', () => {
  it('is its height as people say it', () => {
    expect([34.9983, 35.0049, 34.924, 12.7].map((mm) => calledSize(mm, plainUnits))).toEqual(['35', '35', '34.92', '12.7'])
    // 34.925 mm is 1 3/8 in (25.4 mm an inch, 1959); half a thou is 0.0127 mm.
    expect([34.925, 34.93, 34.9381].map((mm) => calledSize(mm, inch))).toEqual(['1 3/8', '1 3/8', '1.3755'])
  })

  it('and its own name, or that of its mates', () => {
    expect(barCalled({ heightMm: 35.001, name: 'C', mates: 'M' }, plainUnits)).toBe('35 C')
    expect(barCalled({ heightMm: 35.001, name: '', mates: 'M' }, plainUnits)).toBe('35 M')
    expect(barCalled({ heightMm: 35.001, name: '35 left', mates: 'M' }, plainUnits)).toBe('35 left')
    expect(barCalled({ heightMm: 35.001, name: '', mates: null }, plainUnits)).toBe('35')
  })
})
