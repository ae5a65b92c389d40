import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { draftFrom, keepDraft, keepDraftSoon, type Keep } from '#web/setup/state/draft.ts'
import { reduceSetup } from '#web/setup/state/reduce-setup.ts'
import { holdTyped } from '#web/setup/state/hold-typed.ts'
import { newState } from '#web/setup/state/setup-state.ts'

function shelf(start?: string): Keep {
  let text: string | null = start ?? null
  return { getItem: () => text, setItem: (_key, next) => { text = next } }
}

it('brings back what was typed, and nobody is typing any more', () => {
  const keep = shelf()
  const state = reduceSetup(reduceSetup(newState('mm'), { do: 'type', path: 'height', text: '1 3/' }), { do: 'add cut', kind: 'hole' })
  keepDraft(keep, state)
  expect(draftFrom(keep, 'mm')).toEqual({ ...state, typing: null })
})

it('brings back what was typed under the clamp, half typed and wrong as it is, in the unit it was typed in', () => {
  const keep = shelf(), texts = [['lead', '4,'], ['torqueNm', '6x0'], ['feed', '0.05'], ['kd', '24 000?'], ['width', '1 3/'], ['point', 'split']] as const
  const state = texts.reduce((before, [field, text]) => reduceSetup(before, { do: 'type hold', viseId: 'v1', field, text }), newState('mm'))
  keepDraft(keep, state)
  const back = draftFrom(keep, 'in')
  expect(holdTyped(back, 'v1')).toMatchObject(Object.fromEntries(texts))
  expect([back.form.unit, back.atHand.unit]).toEqual(['mm', 'mm'])
})

it('takes on the unit worked in now where no length was typed, and loses nothing else for it', () => {
  const keep = shelf(), state = ([['torqueNm', '60'], ['teeth', '4'], ['kd', '24000']] as const).reduce((before, [field, text]) => reduceSetup(before, { do: 'type hold', viseId: 'v1', field, text }), newState('mm'))
  keepDraft(keep, { ...state, form: { ...state.form, use: 'grinding' } })
  const back = draftFrom(keep, 'in')
  expect([back.form.unit, back.atHand.unit, back.form.use]).toEqual(['in', 'in', 'grinding'])
  expect(holdTyped(back, 'v1')).toMatchObject({ torqueNm: '60', teeth: '4', kd: '24000' })
})

it('opens what an earlier program left, which knew nothing of the clamp', () => {
  const { atHand: _atHand, ...earlier } = newState('mm', 'v1'), form = { ...earlier.form, height: '30' }
  expect(draftFrom(shelf(JSON.stringify({ version: 1, state: { ...earlier, form } })), 'mm')).toEqual({ ...newState('mm', 'v1'), form })
})

it('starts anew from nothing, from rubbish and from another version', () => {
  for (const kept of [undefined, 'rubbish', '[]', '{"version":0,"state":{"form":{}}}']) expect(draftFrom(shelf(kept), 'in')).toEqual(newState('in'))
})

it('goes on where the browser keeps nothing', () => {
  const full: Keep = { getItem: () => null, setItem: () => { throw new Error('full') } }
  expect(() => { keepDraft(full, newState('mm')) }).not.toThrow()
})

describe('put away soon', () => {
  beforeEach(() => { vi.useFakeTimers() })
  afterEach(() => { vi.useRealTimers() })
  const typed = (height: string) => reduceSetup(newState('mm'), { do: 'type', path: 'height', text: height }), heightIn = (keep: Keep) => draftFrom(keep, 'mm').form.height

  it('is put away after the key, and at once where the page is left before', () => {
    const keep = shelf(), page = new EventTarget()
    keepDraftSoon(keep, typed('1'), page)()
    keepDraftSoon(keep, typed('19'), page)
    expect(heightIn(keep)).toBe('')
    page.dispatchEvent(new Event('pagehide'))
    expect(heightIn(keep)).toBe('19')
    const other = shelf()
    keepDraftSoon(other, typed('20'), page)
    vi.runAllTimers()
    expect(heightIn(other)).toBe('20')
  })

  it('a page that is left idle does not write over what another has put away since', () => {
    const keep = shelf(), page = new EventTarget()
    keepDraftSoon(keep, typed('19'), page)
    vi.runAllTimers()
    keepDraft(keep, typed('22'))
    page.dispatchEvent(new Event('pagehide'))
    expect(heightIn(keep)).toBe('22')
  })
})
