import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { drawUnit, drawWord, generatorFrom, splitMix64 } from '#engine/numeric/generator.ts'

type Published = { what: string; outputs?: number[] }
type Sequence = { generator: string; state: number[]; first: number[]; nth: { [n: string]: number }; sha256First4096Le: string; firstAs53BitFloat: number[] }
const text = readFileSync('fixtures/shop/random/prng.json', 'utf8')
const { published, cases } = JSON.parse(text) as { published: Published[]; cases: Sequence[] }
const ours = cases.filter((one) => one.generator === 'xoshiro128**')

// Test vector of the authors' code, version 1.1 (named in the file).
test('the published first outputs', () => {
  const vector = published.find((one) => one.what === 'xoshiro128** from state 1 2 3 4')!, generator = Uint32Array.of(1, 2, 3, 4)
  expect(vector.outputs!.map(() => drawWord(generator))).toEqual(vector.outputs)
})

// Computed independently twice, in Python and with Math.imul and BigInt (head of the file).
describe.each(ours)('the sequence from state $state', ({ state, first, nth, sha256First4096Le, firstAs53BitFloat }) => {
  test('first outputs', () => {
    const generator = Uint32Array.from(state)
    expect(first.map(() => drawWord(generator))).toEqual(first)
  })

  test('the 1000th, 100,000th and 1,000,000th', () => {
    const generator = Uint32Array.from(state), wanted = new Map(Object.entries(nth).map(([n, word]) => [Number(n), word])), found = new Map<number, number>()
    for (let n = 1; n <= 1_000_000; n += 1) { const word = drawWord(generator); if (wanted.has(n)) found.set(n, word) }
    expect(found).toEqual(wanted)
  })

  test('4096 outputs as bytes', () => {
    const generator = Uint32Array.from(state), bytes = new DataView(new ArrayBuffer(4 * 4096))
    for (let i = 0; i < 4096; i += 1) bytes.setUint32(4 * i, drawWord(generator), true)
    expect(createHash('sha256').update(new Uint8Array(bytes.buffer)).digest('hex')).toBe(sha256First4096Le)
  })

  test('numbers from 0 to 1 with 53 bits', () => {
    const generator = Uint32Array.from(state)
    firstAs53BitFloat.forEach((unit) => expect(drawUnit(generator)).toBeCloseTo(unit, 16))
  })
})

// Test vector of the authors' code (named in the file); read out of the text, as the numbers have more digits than a double.
test('the published outputs of the seeding generator', () => {
  const vector = /"SplitMix64 from (\d+)",\s*"outputs": \[([\d, ]+)\]/.exec(text)!
  expect(splitMix64(BigInt(vector[1]!), 5)).toEqual(vector[2]!.split(', ').map(BigInt))
})

test('a seed gives its state, low words first, and seeds apart give other draws', () => {
  const [first, second] = splitMix64(7n, 2) as [bigint, bigint]
  expect([...generatorFrom(7)].map(BigInt)).toEqual([first & 0xffffffffn, first >> 32n, second & 0xffffffffn, second >> 32n])
  expect(drawWord(generatorFrom(7))).toBe(drawWord(generatorFrom(7)))
  expect(drawWord(generatorFrom(7))).not.toBe(drawWord(generatorFrom(8)))
})
