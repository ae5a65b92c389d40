import { expect, test } from 'vitest'
import { oneLook } from '#tasks/shop/one-look.ts'

test('who asks while a look is under way is told by a later one, all of them by the same, and no two go on at once', async () => {
  let written = 0, under = 0, most = 0, looks = 0
  const ask = oneLook(async () => {
    under += 1
    looks += 1
    most = Math.max(most, under)
    const seen = written
    await new Promise((done) => { setTimeout(done, 5) })
    under -= 1
    return seen
  })
  const told = await Promise.all(Array.from({ length: 20 }, async (_, at) => {
    await new Promise((done) => { setTimeout(done, at) })
    written += 1
    const before = written
    return await ask() >= before
  }))
  expect(told).not.toContain(false)
  expect(most).toBe(1)
  expect(looks).toBeLessThan(20)
})

test('a look that fails fails for those who waited for it, and the next one is begun', async () => {
  let fails = true
  const ask = oneLook(async () => { if (fails) throw new Error('away'); return 'there' })
  await expect(Promise.all([ask(), ask()])).rejects.toThrow('away')
  fails = false
  expect(await ask()).toBe('there')
})
