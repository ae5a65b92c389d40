import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { twinrest } from './command.ts'

const examples = resolve(import.meta.dirname, '../../examples')
const vise = JSON.stringify({ jawHeightMm: 45, jawWidthMm: 125, openingMm: 150 })
let data: string
beforeAll(async () => {
  data = mkdtempSync(join(tmpdir(), 'twinrest-examples-'))
  expect(await twinrest(['rack', 'import', 'examples/rack.csv', '--data', data])).toMatchObject({ code: 0 })
})
afterAll(() => rmSync(data, { recursive: true }))

/** What each example is for; a new one without a line here fails. */
const runs: { readonly [file: string]: () => Promise<void> } = {
  'rack.csv': async () => {
    const { code, out } = await twinrest(['rack', 'list', '--data', data, '--height', '35'])
    expect(code).toBe(0)
    expect(out.split('\n').filter((line) => line.includes('look first'))).toHaveLength(4)
  },
  // By hand: seat 35 → grip 45 − 35 = 10, above the jaws 35 + 19 − 45 = 9, clear 9 − 6 = 3.
  'plain-block.json': async () => {
    const { code, out } = await setup('plain-block.json')
    expect(code).toBe(0)
    expect(out).toMatch(/Use {2}35 E[34].*at the jaws/)
    expect(out).toContain('grip 10 · above the jaws 9 · clear of the jaws 3')
    expect(out).toContain('40 E5: Grip 5, 5 under your wish.')
    expect(out).toContain('30 E2: Cutter 2 below the jaw tops.')
  },
  // By hand: a hole of 8.5, 6 from the jaw, keeps a bar 6 + 8.5 / 2 + 0.5 = 10.75 off the jaw; bars of 25 go between two that are 40 apart.
  'plate-with-two-holes.json': async () => {
    const { code, out } = await setup('plate-with-two-holes.json')
    expect(code).toBe(0)
    expect(out).toMatch(/Use {2}35 E4, on edge, at the jaws/)
    expect(out).toMatch(/35 E3, on edge, inboard/)
    const { out: long } = await setup('plate-with-two-holes.json', ['--json'])
    const { answer } = JSON.parse(long) as { answer: { choices: { status: string; because: { code: string; facts: object }[] }[] } }
    expect(answer.choices.find(({ status }) => status === 'inboard')!.because).toContainEqual({ code: 'moved-inboard', facts: expect.objectContaining({ spacerMm: 10.75, from: 'fixed jaw', diameterMm: 8.5, acrossMm: 6 }) as object })
  },
  // By hand, in mm: 44.45 + 3 + 1 − 22.225 = 26.225 up to 44.45 − 12.7 = 31.75.
  'inch-block.json': async () => {
    const { code, out } = await twinrest(['setup', 'examples/inch-block.json', '--data', data])
    expect(code).toBe(0)
    expect(out).toContain('Heights that work: 26.225 (the cutter over the jaws) to 31.75 (the grip).')
    expect(out).toMatch(/Use {2}30 E2/)
  },
  'window.json': async () => {
    const { code, out } = await twinrest(['calc', 'window'], { input: readExample('window.json') })
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject([{ lowMm: 33, highMm: 35, atSeat: { serves: true } }, { giveUp: { gripMm: 2 } }, { refused: 'size-not-positive' }])
  },
}

describe('the examples', () => {
  it.each(Object.keys(runs))('%s does what it is for', async (file) => { await runs[file]!() })

  it('are all run here', () => {
    expect(readdirSync(examples).sort()).toEqual(Object.keys(runs).sort())
  })
})

function setup(file: string, more: readonly string[] = []) {
  const part = JSON.stringify({ ...JSON.parse(readExample(file)) as object, vise: JSON.parse(vise) as object })
  return twinrest(['setup', '-', '--data', data, ...more], { input: part })
}

function readExample(file: string): string {
  return readFileSync(join(examples, file), 'utf8')
}
