import { expect, test } from 'vitest'
import type { Check, Reading } from '#model/check.ts'
import { nothingTaken } from '#model/plain-check.ts'
import type { Units } from '#model/shop-record.ts'
import { sayCheck } from '#web/rack/say-check.ts'

const mm: Units = { length: 'mm', decimalMark: ',', words: 'UK' }
const reading = (bar: string, text: string, more: Partial<Reading> = {}): Reading => ({ bar, station: 0, xMm: null, line: 0, face: 'A', text, heightMm: 25, ...more })
const check = (more: Partial<Check>): Check => ({ id: 'c', method: 'compare', replaces: null, ...nothingTaken, readings: [], note: '', person: 'KM', device: 'bench', atIso: '2026-03-04T08:00:00.000Z', ...more })

test('readings of this bar alone, as they were typed', () => {
  expect(sayCheck(check({ zero: { on: 'block', heightMm: 25, text: '25,000' }, readings: [reading('a', '+3'), reading('b', '+6'), reading('a', '+2')] }), 'a', mm)).toBe('on the plate against 25,000: +3, +2')
  expect(sayCheck(check({ method: 'stated', readings: [reading('a', '1 3/8')] }), 'a', mm)).toBe('height as marked: 1 3/8')
  expect(sayCheck(check({ method: 'turn-over', readings: [reading('a', '1'), reading('a', '2', { face: 'B' })] }), 'a', mm)).toBe('on the plate, either face up: 1 / 2')
})

test('a look is said beside the readings, and that the bar was as found', () => {
  const looks: Check['looks'] = [{ bar: 'a', wiped: true, stoned: false, rock: 'rocks', feelerText: '0,03', feelerUm: 30, seen: ['bent', 'nicked'] }]
  expect(sayCheck(check({ method: 'micrometer', readings: [reading('a', '24,9')], looks, asFound: true }), 'a', mm)).toBe('micrometer: 24,9; wiped, rocks, a feeler of 30 µm goes under; bent and nicked; as found')
  expect(sayCheck(check({ method: 'rock', looks, replaces: 'b' }), 'a', mm)).toBe('tried for rocking; wiped, rocks, a feeler of 30 µm goes under; bent and nicked; puts an earlier check right')
})
