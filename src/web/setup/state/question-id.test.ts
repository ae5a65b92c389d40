import { expect, it } from 'vitest'
import { questionFrom, emptySetupForm } from '#engine/setup/form.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { fnv1a } from '#web/setup/state/fnv1a.ts'
import { questionId } from '#web/setup/state/question-id.ts'

const ask = (fields: Partial<SetupForm>) => questionFrom({ ...emptySetupForm('mm'), height: '22.225', offTop: '3', ...fields }, { jawHeightMm: 45, openingMm: 100 })

// Test values of the algorithm's authors (FNV-1a, 32 bit), from memory.
it.each([['', '811c9dc5'], ['a', 'e40c292c'], ['foobar', 'bf9cf968']])('%j hashes to %s', (text, hash) => {
  expect(fnv1a(text)).toBe(hash)
})

it('is the same however a question was typed, and another for another vise, day or size', () => {
  const id = questionId(ask({}), 'v1', '2025-03-04')
  expect(id).toMatch(/^20250304-[0-9a-f]{16}$/)
  expect(questionId(ask({ height: '7/8', offTop: '3,0 mm' }), 'v1', '2025-03-04')).toBe(id)
  for (const other of [questionId(ask({}), 'v2', '2025-03-04'), questionId(ask({}), 'v1', '2025-03-05'), questionId(ask({ offTop: '3.1' }), 'v1', '2025-03-04')]) expect(other).not.toBe(id)
})
