import { afterEach, expect, test, vi } from 'vitest'
import { putBack, takeKernel } from '#engine/kernel/kernel.ts'

afterEach(() => vi.unstubAllGlobals())

test('one memory is never at two pieces of work, and holds as many bytes as were asked for', () => {
  const taken = [10, 100_000, 10, 5_000_000].map((bytes) => { const { memory } = takeKernel(bytes); expect(memory.buffer.byteLength).toBeGreaterThanOrEqual(bytes); return memory })
  expect(new Set(taken).size).toBe(taken.length)
})

test('one that was put back serves the next piece of work, unless it has become large', () => {
  const kernel = takeKernel(10)
  putBack(kernel)
  expect(takeKernel(100_000)).toBe(kernel)
  const large = takeKernel(65 * 2 ** 20)
  putBack(large)
  expect(takeKernel(10)).not.toBe(large)
})

test('a machine without WebAssembly, or without its vector instructions, is told so', async () => {
  for (const machine of [undefined, { ...WebAssembly, validate: () => false }]) {
    vi.resetModules()
    vi.stubGlobal('WebAssembly', machine)
    const fresh = await import('#engine/kernel/kernel.ts')
    expect(() => fresh.takeKernel(10)).toThrow(expect.objectContaining({ code: 'no-vector-instructions' }))
  }
})
