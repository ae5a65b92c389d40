import { describe, expect, it } from 'vitest'
import { textAt } from '#web/setup/state/field-path.ts'
import { reduceSetup, type SetupAction } from '#web/setup/state/reduce-setup.ts'
import { formToAsk, isHalfTyped, newState, type SetupState } from '#web/setup/state/setup-state.ts'

const after = (...actions: readonly SetupAction[]): SetupState => actions.reduce(reduceSetup, newState('in'))
const typing = (path: string, ...texts: readonly string[]): readonly SetupAction[] => [{ do: 'enter field', path }, ...texts.map((text) => ({ do: 'type', path, text }) as const)]

describe('typing', () => {
  it('keeps asking with the last readable text while a fraction is half typed', () => {
    const state = after(...typing('height', '1', '1 ', '1 3', '1 3/'))
    expect(state.form.height).toBe('1 3/')
    expect(isHalfTyped(state)).toBe(true)
    expect(formToAsk(state).height).toBe('1 ')
    expect(formToAsk(reduceSetup(state, { do: 'type', path: 'height', text: '1 3/8' })).height).toBe('1 3/8')
  })

  it('lets what stands there count once the field is left', () => {
    const state = after(...typing('height', '1', '1 3/'), { do: 'leave field', path: 'height' })
    expect(isHalfTyped(state)).toBe(false)
    expect(formToAsk(state).height).toBe('1 3/')
  })

  it('takes an emptied field as not given, at once', () => {
    const state = after(...typing('height', '19', ''))
    expect(isHalfTyped(state)).toBe(false)
    expect(formToAsk(state).height).toBe('')
  })

  it('starts from nothing in a field that was entered with a wrong text in it', () => {
    const state = after(...typing('height', 'abc'), { do: 'leave field', path: 'height' }, ...typing('height', 'abcd'))
    expect(formToAsk(state).height).toBe('')
  })

  it('reads a word in the grip, a plain number in the point angle', () => {
    expect(isHalfTyped(after(...typing('wishes.grip', 'auto')))).toBe(false)
    expect(isHalfTyped(after(...typing('wishes.grip', 'aut')))).toBe(true)
    expect(isHalfTyped(after({ do: 'add cut', kind: 'hole' }, ...typing('cuts[0].pointAngle', '118 mm')))).toBe(true)
  })

  it('leaves every other field alone, and does nothing where there is no such field', () => {
    const state = after({ do: 'add cut', kind: 'hole' }, { do: 'add cut', kind: 'hole' }, ...typing('cuts[1].across', '6'))
    expect(state.form.cuts.map((_cut, at) => textAt(state.form, `cuts[${at}].across`))).toEqual(['', '6'])
    expect(after(...typing('cuts[7].across', '6')).form).toEqual(newState('in').form)
  })
})

describe('the list of cuts', () => {
  it('opens the drawer on what was added and closes it on what was removed', () => {
    const state = after({ do: 'add cut', kind: 'slot' }, { do: 'add cut', kind: 'hole' })
    expect(state.drawer).toEqual({ of: 'cut', index: 1 })
    const less = reduceSetup(state, { do: 'remove cut', index: 0 })
    expect(less.form.cuts.map(({ kind }) => kind)).toEqual(['hole'])
    expect(less.drawer).toBeNull()
  })

  it('goes back to the first choice when the question changes, not when a drawer is pulled', () => {
    const looking = after({ do: 'look at', chosen: 'on edge:a,b' })
    expect(reduceSetup(looking, { do: 'pull drawer', drawer: { of: 'wishes' } }).chosen).toBe('on edge:a,b')
    expect(reduceSetup(looking, { do: 'type', path: 'height', text: '2' }).chosen).toBeNull()
    expect(reduceSetup(looking, { do: 'change form', fields: { use: 'drilling' } }).chosen).toBeNull()
  })
})
