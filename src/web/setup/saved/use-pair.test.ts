import { describe, expect, it } from 'vitest'
import type { BarFields, BarRecord } from '#model/bar-record.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { newState, type SetupState } from '#web/setup/state/setup-state.ts'
import { isKept, keepSetup, usePairIn } from '#web/setup/saved/use-pair.ts'

const bar = (id: string, where: BarFields['where']): BarRecord => ({
  id, saw: {}, code: 'ABCDEFGH', name: id, thicknessMm: 6, thicknessStanding: 'marked', lengthMm: 100, matesId: null, slotId: null, where, note: '',
})
const shopWith = (bars: readonly BarRecord[], setups: readonly SetupRecord[] = []): ShopSnapshot => ({
  shop: { id: 'shop', saw: {}, name: '', units: { length: 'mm', decimalMark: '.', words: 'US' }, paper: 'A4', limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 }, due: null, making: null, demo: false },
  people: [], vises: [], slots: [], mates: [], bars, checks: [], events: [], parts: [], setups, instruments: [], drafts: [], outcomes: [], machines: [], stock: [], jobs: [],
})
const state: SetupState = { ...newState('mm', 'v1'), form: { ...newState('mm').form, height: '19', offTop: '6' }, title: ' Link plate ' }
const asked = (part: { readonly state?: SetupState; readonly bars?: readonly string[] } = {}) => ({
  state: part.state ?? state, viseId: 'v1', choice: { bars: part.bars ?? ['a', 'b'], stand: 'on edge' } as const, atIso: '2025-03-04T05:06:07.000Z', newId: () => 'NEW',
})

describe('a pair that is used', () => {
  const here = { at: 'vise', viseId: 'v1' } as const, elsewhere = { at: 'vise', viseId: 'v2' } as const, slot = { at: 'slot' } as const

  it('is in this vise from now on, and what was in it goes back to its slot', () => {
    const { edits } = usePairIn(shopWith([bar('a', slot), bar('b', elsewhere), bar('c', here), bar('d', elsewhere), bar('e', { at: 'out', who: 'KM' })]), asked())
    expect(edits.flatMap((edit) => (edit.kind === 'bar' ? [[edit.record, edit.fields.where]] : []))).toEqual([['a', here], ['b', here], ['c', slot]])
  })

  it('writes nothing about bars that already lie right', () => {
    const { edits } = usePairIn(shopWith([bar('a', here), bar('b', here), bar('c', slot)]), asked())
    expect(edits.map(({ kind }) => kind)).toEqual(['setup'])
  })

  it('is taken back whole: every bar to where it was, the new setup retired', () => {
    const { undo } = usePairIn(shopWith([bar('a', { at: 'out', who: 'KM' }), bar('b', slot), bar('c', here)]), asked())
    expect(undo).toEqual([
      { kind: 'setup', record: 'NEW', fields: { retired: true } },
      { kind: 'bar', record: 'a', fields: { where: { at: 'out', who: 'KM' } } },
      { kind: 'bar', record: 'b', fields: { where: slot } },
      { kind: 'bar', record: 'c', fields: { where: here } },
    ])
  })
})

describe('a setup that is kept', () => {
  const kept: SetupRecord = {
    id: 's1', saw: {}, title: 'Link plate', operation: '10', viseId: 'v1', partId: null, form: state.form, bars: ['c', 'd'], stand: 'single', usedAtIso: '2025-01-01T00:00:00.000Z', retired: false,
  }

  it('goes over the one it was opened from while the question is the same, whatever the order of its keys', () => {
    const turned = { ...kept, form: Object.fromEntries(Object.entries(kept.form).toReversed()) as SetupRecord['form'] }
    const decision = keepSetup(shopWith([], [turned]), asked({ state: { ...state, setupId: 's1' } }))
    expect(decision.setupId).toBe('s1')
    expect(decision.undo).toEqual([{ kind: 'setup', record: 's1', fields: expect.objectContaining({ bars: ['c', 'd'], stand: 'single', usedAtIso: '2025-01-01T00:00:00.000Z', operation: '10' }) }])
  })

  it('goes over it also where only what the clamp is reckoned with was typed, and keeps that', () => {
    const hold = { group: '', kd: '24000', yieldMPa: '', width: '', drill: '' }, typed = { ...state, setupId: 's1', form: { ...state.form, hold } }
    expect(keepSetup(shopWith([], [kept]), asked({ state: typed })).edits).toMatchObject([{ record: 's1', fields: { form: { hold } } }])
    expect([isKept(kept, asked({ bars: kept.bars })), isKept(kept, asked({ bars: kept.bars, state: typed })), isKept(kept, asked())]).toEqual([true, false, false])
  })

  it('is a new one where the question has changed, so that what was done stays as it was', () => {
    const changed = { ...state, setupId: 's1', form: { ...state.form, height: '20' } }
    expect(keepSetup(shopWith([], [kept]), asked({ state: changed })).setupId).toBe('NEW')
  })

  it('carries the title without the blanks around it', () => {
    expect(keepSetup(shopWith([]), asked()).edits[0]).toMatchObject({ kind: 'setup', record: 'NEW', fields: { title: 'Link plate', bars: ['a', 'b'], retired: false } })
  })
})
