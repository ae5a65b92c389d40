import { describe, expect, it } from 'vitest'
import { situations } from '#model/situation.ts'
import { cautionsFor } from '#words/cautions.ts'
import { plainUnits } from '#words/terms.ts'

describe('cautions', () => {
  it('come in the order of the work and end with whom to follow instead', () => {
    const said = cautionsFor(new Set(['drilling through', 'seating', 'loose bar'] as const), plainUnits)
    expect(said.map((caution) => /Brush|walks into the cutter|Breaking through|go before this list/.exec(caution)?.[0])).toEqual(['Brush', 'walks into the cutter', 'Breaking through', 'go before this list'])
    expect(cautionsFor(new Set(), plainUnits)).toHaveLength(1)
  })

  it('are there for every situation, in the words of the region, and never say that anything is safe or holds', () => {
    const all = cautionsFor(new Set(situations), { ...plainUnits, words: 'UK' })
    expect(all).toHaveLength(situations.length + 1)
    expect(all.join(' ')).toContain('vice')
    expect(all.join(' ')).not.toMatch(/\bvises?\b|\bsafe\b|\bit holds\b/)
  })
})
