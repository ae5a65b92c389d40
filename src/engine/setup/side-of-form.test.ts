import { expect, test } from 'vitest'
import { emptySetupForm } from '#engine/setup/form.ts'
import { sides } from '#model/part.ts'
import { setupFormSchema } from '#model/setup-form.ts'

test('a form that an earlier program kept says nothing of the side, and is read as it is', () => {
  const earlier = emptySetupForm('mm')
  expect('side' in earlier).toBe(false)
  expect(setupFormSchema.parse(earlier)).toEqual(earlier)
  for (const side of sides) expect(setupFormSchema.parse({ ...earlier, side }).side).toBe(side)
  expect(setupFormSchema.safeParse({ ...earlier, side: 'glued' }).success).toBe(false)
})
