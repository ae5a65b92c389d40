import { describe, expect, it } from 'vitest'
import { emptySetupForm } from '#engine/setup/form.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import { lastViseId, sameAgain } from '#web/setup/state/same-again.ts'

const setup = (id: string, day: number, more: Partial<SetupRecord> = {}): SetupRecord => ({
  id, saw: {}, title: id, operation: '', viseId: 'v1', partId: null, form: emptySetupForm('mm'), bars: [], stand: 'on edge', usedAtIso: `2025-03-${String(day).padStart(2, '0')}T08:00:00.000Z`, retired: false, ...more,
})

describe('same as last time', () => {
  it('offers the last five of this vise, latest first, none that were retired', () => {
    const setups = [1, 2, 3, 4, 5, 6, 7].map((day) => setup(`s${day}`, day))
    const mixed = [...setups, setup('other vise', 9, { viseId: 'v2' }), setup('retired', 10, { retired: true })]
    expect(sameAgain(mixed, 'v1').map(({ id }) => id)).toEqual(['s7', 's6', 's5', 's4', 's3'])
  })
})

describe('the vise', () => {
  const vises = [{ id: 'v0', retired: true }, { id: 'v1', retired: false }, { id: 'v2', retired: false }]

  it('is the last one used that is still in use, else the first', () => {
    expect(lastViseId([setup('a', 1), setup('b', 3, { viseId: 'v2' }), setup('c', 9, { viseId: 'v0' })], vises)).toBe('v2')
    expect(lastViseId([], vises)).toBe('v1')
    expect(lastViseId([], [])).toBeNull()
  })
})
