import { expect, it } from 'vitest'
import { draftFrom, keepDraft, type Keep } from '#web/setup/state/draft.ts'
import { reduceSetup } from '#web/setup/state/reduce-setup.ts'
import { newState } from '#web/setup/state/setup-state.ts'

function shelf(start?: string): Keep {
  let text: string | null = start ?? null
  return { getItem: () => text, setItem: (_key, next) => { text = next } }
}

it('brings back what was typed, and nobody is typing any more', () => {
  const keep = shelf()
  const state = reduceSetup(reduceSetup(newState('mm'), { do: 'type', path: 'height', text: '1 3/' }), { do: 'add cut', kind: 'hole' })
  keepDraft(keep, state)
  expect(draftFrom(keep, 'in')).toEqual({ ...state, typing: null })
})

it('starts anew from nothing, from rubbish and from another version', () => {
  for (const kept of [undefined, 'rubbish', '[]', '{"version":0,"state":{"form":{}}}']) expect(draftFrom(shelf(kept), 'in')).toEqual(newState('in'))
})

it('goes on where the browser keeps nothing', () => {
  const full: Keep = { getItem: () => null, setItem: () => { throw new Error('full') } }
  expect(() => { keepDraft(full, newState('mm')) }).not.toThrow()
})
