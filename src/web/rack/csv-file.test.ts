import { expect, test } from 'vitest'
import { textOfFile } from '#web/rack/csv-file.ts'

const text = 'name,height\n½ é 😀,35'

test('UTF-8 with and without its mark', () => {
  const plain = new TextEncoder().encode(text)
  expect(textOfFile(plain)).toEqual({ text, oldText: false })
  expect(textOfFile(new Uint8Array([0xef, 0xbb, 0xbf, ...plain]))).toEqual({ text, oldText: false })
})

test('UTF-16 in either order', () => {
  const units = Array.from({ length: text.length }, (_unit, at) => text.charCodeAt(at))
  expect(textOfFile(new Uint8Array([0xff, 0xfe, ...units.flatMap((unit) => [unit & 255, unit >> 8])])).text).toBe(text)
  expect(textOfFile(new Uint8Array([0xfe, 0xff, ...units.flatMap((unit) => [unit >> 8, unit & 255])])).text).toBe(text)
})

test('the old Western encoding is read and said', () => {
  expect(textOfFile(new Uint8Array([0xbd, 0x20, 0xe9]))).toEqual({ text: '½ é', oldText: true })
})
