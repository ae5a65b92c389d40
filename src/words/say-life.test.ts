import { expect, test } from 'vitest'
import type { Finding } from '#model/finding.ts'
import type { Units } from '#model/shop-record.ts'
import { sayFinding } from '#words/say-finding.ts'

const mm: Units = { length: 'mm', decimalMark: ',', words: 'UK' }
const say = (code: string, facts: Finding['facts']) => sayFinding({ code, facts }, mm)

test('a life reads line by line, in the units of the person', () => {
  expect(say('life-added', { heightMm: 35 })).toBe('Came into the rack, marked 35.')
  expect(say('life-added', { heightMm: null })).toBe('Came into the rack.')
  expect(say('life-event', { kind: 'signed out', note: 'JO' })).toBe('Signed out: JO.')
  expect(say('life-event', { kind: 'marked anew', note: '' })).toBe('Marked anew.')
  expect(say('life-checked', { method: 'compare', heightMm: 34.998, uUm: 0.6, failed: false, uses: ['drilling', 'milling'] })).toBe('Checked on the plate: 34,998 ± 1,2 µm; good for drilling and milling.')
  expect(say('life-checked', { method: 'compare', heightMm: 35, uUm: 0.6, failed: false, uses: ['drilling'], burrs: ['nicked'] })).toBe('Checked on the plate: 35,000 ± 1,2 µm, seen nicked and not stoned; good for drilling.')
  expect(say('life-checked', { method: 'rock', heightMm: null, uUm: null, failed: true, uses: [] })).toBe('Checked for rocking; failed.')
  expect(say('life-set-up', { title: 'Clamp, first side', vise: 'Mill 1' })).toBe('Set up in Mill 1: Clamp, first side.')
  expect(say('life-size', { size: 'thickness', mm: 6.35 })).toBe('Thickness written as 6,35.')
  expect(say('life-wear', { um: 2.9, expandedUm: 2.83, sinceDay: '2026-03-04' })).toBe('Lower by 2,9 µm since 2026-03-04: more than the uncertainty of 2,8 µm, so it wears.')
})
