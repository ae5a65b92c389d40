import { expect, test } from 'vitest'
import { attempt, attemptOr } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'

const refusal = new Refusal('size-not-positive', { field: 'heightMm' })
const refused = () => { throw refusal }
const faulty = () => { throw new TypeError('ours') }

test('gives the value, or the refusal in its place', () => {
  expect(attempt(() => 35)).toBe(35)
  expect(attempt(refused)).toBe(refusal)
  expect(attemptOr(() => 35, null)).toBe(35)
  expect(attemptOr(refused, null)).toBeNull()
})

test('a fault is not caught', () => {
  expect(() => attempt(faulty)).toThrow(TypeError)
  expect(() => attemptOr(faulty, null)).toThrow(TypeError)
})
