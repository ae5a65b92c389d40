import { describe, expect, it } from 'vitest'
import { differences, goldenCases } from '../golden.ts'
import { twinrest } from './command.ts'

const plain = { vise: { jawHeightMm: 45, openingMm: 150 }, part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }] }

/** Ends the process with 9 where the native database module was loaded. */
const tellsOfSqlite = 'process.on("exit", () => { if (process.report.getReport().sharedObjects.some((file) => /better_sqlite3/.test(file))) process.exitCode = 9 })'

describe('calculations through the command', () => {
  // Expected answers computed outside this project; tolerances as the heads of the files say.
  it.each([
    ['window', 127, () => 1e-6],
    ['places', 127, (path: string) => (/places|base/.test(path) ? 1e-4 : 1e-6)],
    ['setup', 99, (path: string) => (/places|base/.test(path) ? 1e-4 : path.endsWith('matchUm') ? 1e-3 : 1e-6)],
  ] as const)('answers all cases of %s, %d of them, as one array in one process', async (name, count, toleranceOf) => {
    const cases = goldenCases(name)
    expect(cases).toHaveLength(count)
    const { code, out, err } = await twinrest(['calc', name], { input: JSON.stringify(cases.map((one) => one.input)) })
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const answers = JSON.parse(out) as unknown[]
    expect(answers).toHaveLength(count)
    expect(cases.flatMap((one, at) => differences(one.expect, answers[at], toleranceOf).map((difference) => `${one.id}${difference}`))).toEqual([])
  })

  it('answers thousands in one process', async () => {
    const { code, out } = await twinrest(['calc', 'window'], { input: JSON.stringify(Array.from({ length: 5000 }, () => plain)) })
    expect(code).toBe(0)
    expect((JSON.parse(out) as { lowMm: number }[]).map((answer) => answer.lowMm)).toEqual(Array.from({ length: 5000 }, () => 33))
  })

  it('ends a refused single case with exit code 2 and the same JSON on standard error', async () => {
    const { code, out, err } = await twinrest(['calc', 'window'], { input: JSON.stringify({ ...plain, part: { ...plain.part, heightMm: -19 } }) })
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(JSON.parse(err)).toEqual({ refused: 'size-not-positive', facts: { field: 'part.heightMm', given: -19, needed: { aboveMm: 0 } } })
  })

  it.each([
    ['guess', '{}', 'unknown-calculation'], ['window', '{"vise": ', 'not-json'], ['window', '', 'no-calculation-input'], ['window', '[1, 2', 'not-json'], ['window', '7', 'field-missing'],
  ])('refuses %s of %j: %s', async (name, input, refused) => {
    const { code, out, err } = await twinrest(['calc', name], { input })
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(JSON.parse(err)).toMatchObject({ refused, facts: expect.any(Object) as object })
  })

  it('starts without a database: no folder is made, no module of it loaded', async () => {
    const { code, err } = await twinrest(['calc', 'window'], { input: JSON.stringify(plain), env: { TWINREST_DATA: '/nowhere', NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(tellsOfSqlite)}` } })
    expect({ code, err }).toEqual({ code: 0, err: '' })
  })
})
