import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { twinrest } from './command.ts'

let shop: ShopProcess, scratch: string, codes: readonly [string, string]
beforeAll(async () => {
  shop = await startShop({ demo: true })
  scratch = mkdtempSync(join(tmpdir(), 'twinrest-inspect-'))
  const { out } = await inShop('rack', 'list', '--find', 'R', '--json')
  const pair = (JSON.parse(out) as { id: string; code: string }[]).filter(({ id }) => id.startsWith('demo-R-')).map(({ code }) => code)
  codes = [pair[0]!, pair[1]!]
})
afterAll(async () => {
  await shop.clear()
  rmSync(scratch, { recursive: true })
})

const inShop = (...args: readonly string[]) => twinrest([...args, '--data', shop.dataFolder])
const taken = ['--zero', '25,000', '--instrument', 'lever indicator, 1 µm', '--plate', 'Surface plate 630 × 400', '--blocks', 'Gauge blocks, grade 1', '--closing', '0', '--temperature', '20']

describe('twinrest inspect, beside a running server', () => {
  it('records a pair from arguments and says what it proves', async () => {
    const { code, out, err } = await inShop('inspect', 'record', ...taken, '--bar', `${codes[0]} +3 +4 +2`, '--bar', `${codes[1]} +6 +5 +4`, '--person', 'KM')
    expect(code, err).toBe(0)
    // Own arithmetic: means 3 and 5 µm above the block; the worst places differ by 3 as laid and by 4 turned.
    for (const said of ['25.0030', '25.0050', 'mean difference 2 µm', 'at worst 3 µm as laid, 4 µm turned', 'grinding 2 µm: out', 'milling 10 µm: proved', 'closing zero 0 µm']) expect(out).toContain(said)
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80)
    const id = /Kept as check (\S+)\./.exec(err)![1]!
    const shown = await inShop('inspect', 'show', id)
    expect(shown).toMatchObject({ code: 0, out })
    expect((await inShop('inspect', 'show')).out).toContain(id)
    expect((await inShop('rack', 'list', '--find', codes[0], '--json')).out).toContain('"heightMm":25.003')
  })

  it('records a correction from a table, read with a slip of the unit that it asks about', async () => {
    const first = JSON.parse((await inShop('inspect', 'record', ...taken, '--bar', `${codes[0]} 0 0 0`, '--json')).out) as { check: { id: string } }
    const file = join(scratch, 'readings.csv')
    writeFileSync(file, `bar;reading\n${codes[0]};+1\n${codes[0]};0,002\n${codes[0]};+1\n`)
    const { code, out, err } = await inShop('inspect', 'record', file, ...taken, '--replaces', first.check.id)
    expect(code, err).toBe(0)
    expect(err).toContain("'0,002': Read as 0.002 µm. Was +2 µm meant?")
    expect(out).toContain(`It replaces check ${first.check.id}.`)
    expect((await inShop('inspect', 'show', first.check.id)).out).toContain('Replaced by check')
  })

  it('works a check out without keeping it', async () => {
    const before = (await inShop('inspect', 'show', '--json')).out
    const { code, err } = await inShop('inspect', 'record', ...taken, '--bar', `${codes[0]} +3 +4 +2`, '--dry-run')
    expect({ code, err }).toEqual({ code: 0, err: 'Nothing was kept.\n' })
    expect((await inShop('inspect', 'show', '--json')).out).toBe(before)
  })

  it('lets all checks out and in again, as CSV and as data', async () => {
    const csv = join(scratch, 'checks.csv'), json = join(scratch, 'checks.json')
    await inShop('inspect', 'export', csv)
    await inShop('inspect', 'export', json, '--json')
    const count = (JSON.parse(readFileSync(json, 'utf8')) as { checks: unknown[] }).checks.length
    for (const file of [csv, json]) expect(await inShop('inspect', 'import', file)).toMatchObject({ code: 0, out: expect.stringMatching(new RegExp(`^In the shop: 0 checks; ${count} were there already\\.`)) })
    writeFileSync(csv, readFileSync(csv, 'utf8').replace(/\bmicrometer\b/, 'guess'))
    const broken = await inShop('inspect', 'import', csv)
    expect(broken).toMatchObject({ code: 2, out: '' })
    expect(broken.err).toMatch(/^Line \d+: .*'guess' is not known here/)
    expect(broken.err).toContain('Nothing was taken in: 1 thing is amiss in the file.')
  })

  it('finds mates, and two for each of two vises', async () => {
    const pairs = await inShop('inspect', 'mates', '--within', '3')
    expect(pairs.code, pairs.err).toBe(0)
    expect(pairs.out).toMatch(/^\d+ {2}Q .* and Q .*, proved to .* µm\n {2}- .* differ by /m)
    expect(pairs.out).not.toMatch(/^\d+ {2}Q .* and R /m)
    const row = JSON.parse((await inShop('inspect', 'mates', '--vises', '2', '--json')).out) as { groups: { bars: string[] }[]; row: { spreadUm: number } }
    expect(row.groups.flatMap(({ bars }) => bars).filter((id) => id.startsWith('demo-Q-'))).toHaveLength(4)
    expect(row.row.spreadUm).toBeLessThanOrEqual(2)
  })

  it.each([
    [['record', '--zero', '25', '--bar', 'NOBODY22 +1 +2 +3'], /No bar .*NOBODY22|NOBODY22/], [['record', '--bar', 'x 1'], /x/], [['record'], /nothing given/i], [['show', 'nothing'], /nothing/],
    [['record', '--zero', '25', '--instrument', 'none such', '--bar', 'NOBODY22 1'], /./], [['mates', '--vises', '1,5'], /whole number/], [['mates', '--within', 'x'], /no length|no number/], [['import', 'missing.csv'], /missing\.csv/],
  ])('refuses %j with a sentence and exit code 2', async (args, said) => {
    const { code, out, err } = await inShop('inspect', ...args)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(said)
    expect(err).not.toMatch(/undefined|\[object|\bat \//)
  })
})
