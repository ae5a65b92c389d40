/**
 * How one number came about, so that every door can show it.
 *
 * `formula` is a key into the words (`low-cutter-over-jaw`), `result` the name and value it gave, `inputs` the
 * values that went in (names end in their unit), `sources` keys of docs/sources.md.
 */
export type Sum = {
  readonly formula: string
  readonly result: { readonly name: string; readonly value: number | null }
  readonly inputs: { readonly [name: string]: number | string | null }
  readonly sources: readonly string[]
}
