import { randomBytes } from 'node:crypto'
import { codeFrom } from '#model/code.ts'
import type { By } from '#model/change.ts'

/** Who does something here and now; `newCode` makes the code of a label. */
export type Maker = By & { readonly newCode: () => string }

/** A maker with the clock and the chance of this machine: ids of 16 letters (80 bits), codes of 8. */
export function makerFor(person: string, device: string): Maker {
  return {
    person, device, atIso: new Date().toISOString(),
    newId: () => codeFrom(randomBytes(16)),
    newCode: () => codeFrom(randomBytes(8)),
  }
}
