import { expect, test } from 'vitest'
import { yieldRows } from '#reference/steels/yields.ts'

// Two supplier's sheets, as public copies state them: at 62 HRC both 319 ksi and at 60 HRC both 312 ksi; at 55 and 50 HRC 261 and 196 ksi (O1), 276 and 239 ksi (D2). 1 ksi = 6.894757 N/mm².
test.each([['1.2510', 62, 319], ['1.2510', 60, 312], ['1.2510', 55, 261], ['1.2510', 50, 196], ['1.2379', 62, 319], ['1.2379', 60, 312], ['1.2379', 55, 276], ['1.2379', 50, 239]])('%s at %s HRC agrees with its column in ksi', (steel, hrc, ksi) => {
  const row = yieldRows.find((one) => one.steel === steel && one.hrc === hrc)!
  expect(Math.abs(row.yieldMPa - 6.894757 * ksi)).toBeLessThan(5)
})
