import { expect, test } from 'vitest'
import { type PadKey, typedWith } from '#web/parts/pad-key.ts'

const type = (keys: readonly PadKey[], text = '') =>
  keys.reduce((typing, key) => typedWith(key, typing), { text, start: 0, end: text.length }).text

test('a mixed fraction can be typed, and what was selected is replaced', () => {
  expect(type(['1', ' ', '3', '/', '8'], '19')).toBe('1 3/8')
})

test('a unit goes to the end, a second one replaces it, and never stands alone', () => {
  expect(type(['.', '8', '7', '5', '"'])).toBe('.875"')
  expect(type(['2', '2', '"', 'mm'])).toBe('22 mm')
  expect(type(['mm'])).toBe('')
})

test('the sign turns over', () => {
  expect(type(['5', 'sign'])).toBe('-5')
  expect(type(['5', 'sign', 'sign'])).toBe('5')
})

test('back takes one letter, or what is selected', () => {
  expect(type(['1', '2', 'back'])).toBe('1')
  expect(type(['back'], '345')).toBe('')
  expect(type(['back'])).toBe('')
})

test('a key goes to where the cursor is', () => {
  expect(typedWith('5', { text: '12', start: 1, end: 1 })).toEqual({ text: '152', start: 2, end: 2 })
})
