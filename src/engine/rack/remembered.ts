import type { Check } from '#model/check.ts'

/**
 * A function of a check that remembers its last answer for each check, as long as the check lives: checks are never edited, and a
 * rack is asked anew at every change in the shop.
 *
 * @param of  with the same check and the same further arguments (by identity) always the same answer
 */
export function remembered<Asked extends readonly unknown[], Value>(of: (check: Check, ...asked: Asked) => Value): (check: Check, ...asked: Asked) => Value {
  const known = new WeakMap<Check, { readonly asked: Asked; readonly value: Value }>()
  return (check, ...asked) => {
    const before = known.get(check)
    if (before && before.asked.length === asked.length && before.asked.every((one, i) => Object.is(one, asked[i]))) return before.value
    const value = of(check, ...asked)
    known.set(check, { asked, value })
    return value
  }
}
