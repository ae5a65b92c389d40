import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'

/** A case whose answer was computed outside this project; what it means stands in the head of its file. */
export type Golden = { readonly id: string; readonly input: unknown; readonly expect: { readonly [key: string]: unknown } }

export function goldenCases(name: string): readonly Golden[] {
  const { cases } = JSON.parse(readFileSync(resolve(import.meta.dirname, `../fixtures/shop/setup/${name}.json`), 'utf8')) as { cases: readonly { id: string; note?: string; expect: Golden['expect'] }[] }
  return cases.map(({ id, note: _note, expect, ...input }) => ({ id, input, expect }))
}

/** Lists that the heads of the files say to compare as sets. */
const sets = new Set(['choices', 'rejected'])

/**
 * Every difference of an answer from what is expected, by path. Keys that are not expected are not looked at; of a refused
 * case the code alone counts; choices and rejections are found by their bars and stand, and must be as many.
 */
export function differences(expected: unknown, given: unknown, toleranceOf: (key: string) => number, path = ''): string[] {
  const key = path.split('.').at(-1)!.replace(/\[.*/, '')
  if (typeof expected === 'number') return typeof given === 'number' && Math.abs(expected - given) <= toleranceOf(path) ? [] : [`${path}: ${String(given)} instead of ${expected}`]
  if (typeof expected !== 'object' || expected === null) return expected === given ? [] : [`${path}: ${JSON.stringify(given)} instead of ${String(expected)}`]
  if (typeof given !== 'object' || given === null) return [`${path}: ${JSON.stringify(given)} instead of ${JSON.stringify(expected)}`]
  if (Array.isArray(expected)) {
    if (!Array.isArray(given) || given.length !== expected.length) return [`${path}: ${JSON.stringify(given).slice(0, 200)} instead of ${expected.length} entries`]
    const partner = (one: unknown, at: number): unknown => (sets.has(key) ? (given as unknown[]).find((other) => nameOf(other) === nameOf(one)) : given[at])
    return expected.flatMap((one: unknown, at) => differences(one, partner(one, at), toleranceOf, `${path}[${sets.has(key) ? nameOf(one) : at}]`))
  }
  return Object.entries(expected).flatMap(([name, value]) => differences(value, (given as { [name: string]: unknown })[name], toleranceOf, `${path}.${name}`))
}

function nameOf(one: unknown): string {
  const { bars, stand } = one as { bars: readonly string[]; stand: string }
  return `${bars.join('+')} ${stand}`
}
