/** What a refusal, a finding or a *because* is about: names with plain values, worded at the door. */
export type Facts = { readonly [name: string]: Fact }
export type Fact = string | number | boolean | null | readonly Fact[] | { readonly [name: string]: Fact }

/**
 * The person asked for what cannot be done and can put it right.
 *
 * Thrown by every room, caught only at a door: HTTP 422, exit 2, a sentence on the screen. A code about one
 * field carries `field` (a path such as `cuts[2].depthMm`), `given` and `needed`.
 */
export class Refusal extends Error {
  readonly code: string
  readonly facts: Facts

  constructor(code: string, facts: Facts = {}) {
    super(code)
    this.name = 'Refusal'
    this.code = code
    this.facts = facts
  }
}
