import { describe, expect, it } from 'vitest'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import type { HoleForm, SetupForm } from '#model/setup-form.ts'
import { patternNeeds, withPattern } from '#web/setup/state/hole-pattern.ts'

const hole = (fields: Partial<HoleForm>): HoleForm => ({ ...(emptyCutForm('hole') as HoleForm), diameter: '8.5', across: '6', ...fields })
const form = (along: string, ...cuts: readonly HoleForm[]): SetupForm => ({ ...emptySetupForm('mm'), along, cuts: [...cuts] })
const placesOf = ({ cuts }: SetupForm): readonly (readonly string[])[] => cuts.map((cut) => (cut.kind === 'hole' ? [cut.from, cut.across, cut.along] : []))

describe('a hole mirrored', () => {
  it('stands as far from the other end', () => {
    expect(placesOf(withPattern(form('60', hole({ along: '10' })), 0, 'along'))).toEqual([['fixed', '6', '10'], ['fixed', '6', '50']])
  })

  it('stands as far from the other jaw, with its distance as typed', () => {
    expect(placesOf(withPattern(form('', hole({ across: '15/64' })), 0, 'across'))).toEqual([['fixed', '15/64', ''], ['moving', '15/64', '']])
  })

  it('makes four', () => {
    expect(placesOf(withPattern(form('60', hole({ along: '10' })), 0, 'four'))).toEqual([
      ['fixed', '6', '10'], ['fixed', '6', '50'], ['moving', '6', '10'], ['moving', '6', '50'],
    ])
  })

  it('keeps the decimal mark and the unit of what was typed', () => {
    expect(placesOf(withPattern(form('60,5', hole({ along: '10,25' })), 0, 'along'))[1]).toEqual(['fixed', '6', '50,25'])
    const inches = { ...form('3', hole({ along: '3/8' })), unit: 'in' } as const
    expect(placesOf(withPattern(inches, 0, 'along'))[1]).toEqual(['fixed', '6', '2 5/8'])
  })

  it('says what it needs first and changes nothing before', () => {
    expect(patternNeeds(form('60', hole({})), 0, 'along')).toBe('cuts[0].along')
    expect(patternNeeds(form('6x', hole({ along: '10' })), 0, 'four')).toBe('along')
    expect(patternNeeds(form('60', hole({ across: '' })), 0, 'across')).toBe('cuts[0].across')
    expect(patternNeeds(form('60', hole({ along: '10' })), 0, 'four')).toBeNull()
    const unready = form('', hole({ along: '10' }))
    expect(withPattern(unready, 0, 'four')).toBe(unready)
  })
})
