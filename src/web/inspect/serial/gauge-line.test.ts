import { expect, test } from 'vitest'
import { linesIn, readingIn, usualLine } from '#web/inspect/serial/gauge-line.ts'

test('a line counts once its end has come; what follows waits', () => {
  expect(linesIn('+3\r\n+4\r\n+', usualLine)).toEqual({ lines: ['+3', '+4'], rest: '+' })
  expect(linesIn('+3\r+4\r', { lineEnd: 'CR' })).toEqual({ lines: ['+3', '+4'], rest: '' })
  expect(linesIn('+3\r', { lineEnd: 'CR LF' })).toEqual({ lines: [], rest: '+3\r' })
})

test.each([
  ['+0.003', 0, '+0.003'], ['01A+00003.5', 2, '+3.5'], ['01A+00003.5', 1, '1'], ['01A+00003.5', 0, '+3.5'], ['ID 7; -  0,004', 0, '-0,004'],
  ['25.003 mm', 0, '25.003'], ['+.5', 0, '+.5'], ['0', 0, '0'], ['-0000', 0, '-0'], ['ERR', 0, null], ['', 0, null], ['3', 2, null],
])('of %j number %d is %j', (line, which, reading) => expect(readingIn(line, { which, unit: '' })).toBe(reading))

test('the unit the gauge sends in goes with the reading', () => expect(readingIn('+0.003', { which: 0, unit: 'mm' })).toBe('+0.003 mm'))
