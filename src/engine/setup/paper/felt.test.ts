import { describe, expect, it } from 'vitest'
import { isAbout, type Felt, stripsFelt } from '#engine/setup/paper/felt.ts'
import { corners } from '#engine/setup/paper/strips.ts'

const felt = (...all: readonly [Felt, Felt, Felt, Felt]) => ({ 'fixed-left': all[0], 'fixed-right': all[1], 'moving-left': all[2], 'moving-right': all[3] })
const loose = (of: ReturnType<typeof felt>) => corners.filter((corner) => stripsFelt(of)[corner] === 'loose')

// Common practice, no source: a strip is judged against its neighbours.
describe('what strips feel like', () => {
  it('counts a free strip as loose, and one that drags beside it as held', () => {
    expect(loose(felt('tight', 'drags', 'free', 'free'))).toEqual(['moving-left', 'moving-right'])
    expect(isAbout(felt('tight', 'drags', 'free', 'free'))).toBe(false)
  })

  it('counts one that drags beside tight ones as loose, by about its own thickness', () => {
    expect(loose(felt('tight', 'tight', 'drags', 'tight'))).toEqual(['moving-left'])
    expect(isAbout(felt('tight', 'tight', 'drags', 'tight'))).toBe(true)
  })

  it('finds nothing loose where all are alike held', () => {
    expect(loose(felt('tight', 'tight', 'tight', 'tight'))).toEqual([])
    expect(loose(felt('drags', 'drags', 'drags', 'drags'))).toEqual([])
    expect(loose(felt('free', 'free', 'free', 'free'))).toHaveLength(4)
  })
})
