import { expect, test } from 'vitest'
import { sayAge, saySize } from '#web/shop/backups/say-backup.ts'

// By hand: 1 KiB = 1024 bytes (IEC 80000-13), an hour 3 600 000 ms.
test.each([[831_488, '812 KiB'], [4096, '4.0 KiB'], [3_565_158, '3.4 MiB'], [1_073_741_824, '1.0 GiB']])('%i bytes are said as %s', (bytes, said) => {
  expect(saySize(bytes)).toBe(said)
})

test.each([[-5000, 'just now'], [59_000, 'just now'], [60_000, '1 minute ago'], [3_599_000, '59 minutes ago'], [3_600_000, '1 hour ago'], [47 * 3_600_000, '47 hours ago'], [49 * 3_600_000, '2 days ago']])('%i ms are said as %s', (ms, said) => {
  expect(sayAge(new Date(1_700_000_000_000 - ms).toISOString(), 1_700_000_000_000)).toBe(said)
})
