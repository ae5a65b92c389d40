import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { twinrest } from './command.ts'

const built = resolve(import.meta.dirname, '../../dist/node/twinrest.js')
let shop: ShopProcess, scratch: string
beforeAll(async () => {
  shop = await startShop({ demo: true })
  scratch = mkdtempSync(join(tmpdir(), 'twinrest-command-'))
})
afterAll(async () => {
  await shop.clear()
  rmSync(scratch, { recursive: true })
})

const inShop = (...args: readonly string[]) => twinrest([...args, '--data', shop.dataFolder])
const part = (more: object = {}) => JSON.stringify({ part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }], ...more })
const setupOf = (input: string, ...args: readonly string[]) => twinrest(['setup', '-', '--data', shop.dataFolder, ...args], { input })

describe('beside a running server, on the same data folder', () => {
  it('chooses for a vise of the shop by its name, with numbers, why, cautions and a drawing', async () => {
    const { code, out, err } = await setupOf(part(), '--vise', 'mill 1, 125 mm')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toMatch(/^Mill 1, 125 mm, jaws 45; part 38 × 60 × 19\. Sizes in mm\./)
    for (const said of ['Use  35 C, on edge, at the jaws; slot B4', 'Heights that work: 33', 'Also work', 'Nearest', 'Cautions', 'Not computed: holding force', 'fixed jaw']) expect(out).toContain(said)
    expect(out.match(/[\u2800-\u28ff]/g)?.length ?? 0).toBeGreaterThan(200)
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80)
    // oxlint-disable-next-line no-control-regex -- no colours, no cursor moved, whoever reads it
    expect(out).not.toMatch(/\u001b/)
  })

  it('answers the whole as data, and draws it', async () => {
    const svg = join(scratch, 'setup.svg')
    const { code, out, err } = await setupOf(part(), '--vise', 'demo-vise-1', '--json', '--svg', svg)
    expect(code).toBe(0)
    expect(err).toContain(svg)
    expect((JSON.parse(out) as { answer: { choices: { bars: string[] }[] } }).answer.choices[0]!.bars).toEqual(['demo-C-1', 'demo-C-2'])
    expect(readFileSync(svg, 'utf8')).toMatch(/^<\?xml[\s\S]*<svg[\s\S]*35 C[\s\S]*<\/svg>\s*$/)
  })

  it('foretells what comes out, as the guides to command and interface show it, alike by either', async () => {
    const shown = (guide: string, pattern: RegExp) => pattern.exec(readFileSync(resolve(import.meta.dirname, '../../docs', guide), 'utf8'))!.slice(1)
    const [file, vise, side] = shown('cli.md', /npx twinrest setup (\S+) --vise "([^"]+)" --foretell (\w+)\n/), asked = ['setup', file!, '--vise', vise!, '--foretell', side!]
    expect((await inShop(...asked)).out).toMatch(/What comes out\n[^]*95 of 100 cases at most/)
    const { prediction } = JSON.parse((await inShop(...asked, '--json')).out) as { prediction: object }
    const [path, body] = shown('api.md', /curl -s http:\/\/127\.0\.0\.1:4173(\/api\/setup) [^\n]*\n\s+-d '([^']+)'/)
    const answered = await fetch(`${shop.url}${path!}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: body! })
    expect(answered.status).toBe(200)
    expect(await answered.json()).toMatchObject({ prediction, answer: { choices: [{ bars: ['demo-C-1', 'demo-C-2'] }, {}, {}] } })
    // By hand, from the demo's readings: in the middle the bars of 8 differ by 1 µm, their middle lines 30 apart; over 38 that is 1.27.
    expect(prediction).toMatchObject({ status: 'foretold', ways: [{ held: false, coming: { across: { medianUm: expect.closeTo(1.27, 1) as number } } }] })
  })

  it('says what to give up and what to make when nothing serves', async () => {
    const { code, out } = await setupOf(part({ wishes: { gripMm: 12 }, ways: ['lying flat', 'on edge'] }), '--vise', 'demo-vise-1')
    expect(code).toBe(0)
    expect(out).toContain('One height works: 33, set by the cutter over the jaws and by the grip.')
    expect(out).toMatch(/Nothing in the rack serves|Use /)
  })

  it.each([
    ['{"part": ', "'-' or the file is not JSON", /not JSON/],
    [part({ colour: 'blue' }), 'a key nobody knows', /'colour' is not known here/],
    [part({ part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19, height: 3 } }), 'a key nobody knows inside', /'part\.height' is not known here/],
    [part({ part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: '' } }), 'an empty text', /Part height: nothing given/],
    [part({ part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 'tall' } }), 'text in a number', /Part height: 'tall' is no length; type a number such as 25\.4, 7\/8 or 1 3\/8\./],
    [part({ part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 0 } }), 'zero', /Part height: 0 given; it must be more than 0/],
    [part({ part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: -19 } }), 'a negative size', /Part height: −19 given/],
    [part().replace('"heightMm":19', '"heightMm":1e308'), '1e308', /Part height: .*too large/],
    [part({ part: { betweenJawsMm: 300, alongJawsMm: 60, heightMm: 19 } }), 'a part wider than the opening', /Part, between jaws: the part is 300 between the jaws and the vise opens/],
    [part({ cuts: [{ kind: 'hole', xMm: 99, yMm: 6, diameterMm: 8.5 }] }), 'a hole beside the part', /Hole 1, distance along: at 99 the middle of the hole lies beside the part/],
    [part({ bars: [] }), 'bars of its own', /'bars' is not known here/],
  ])('%s (%s) is refused in a sentence', async (input, _what, sentence) => {
    const { code, out, err } = await setupOf(input, '--vise', 'demo-vise-1')
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(sentence)
    expect(err.trim().split('\n')).toHaveLength(1)
  })

  it('refuses files and vises that are not there', async () => {
    expect(await inShop('setup', 'nowhere.json')).toMatchObject({ code: 2, err: 'There is no file nowhere.json.\n' })
    const { code, err } = await setupOf(part(), '--vise', 'Nobody')
    expect(code).toBe(2)
    expect(err).toMatch(/^There is no vise 'Nobody'; there are .*Bench mill/)
    expect(await setupOf(part(), '--vise', 'demo-vise-1', '--svg', join(scratch, 'no', 'such', 'folder.svg'))).toMatchObject({ code: 2, err: expect.stringContaining('cannot be written: its folder is not there') as string })
  })

  it('adds, lists, imports and exports bars that the server then has', async () => {
    const added = await inShop('rack', 'add', '--height', '1 3/8', '--thickness', '1/4', '--length', '6', '--unit', 'in', '--pair', '--slot', 'Z9', '--name', 'N<b>')
    expect(added.code).toBe(0)
    const { bars } = await (await fetch(`${shop.url}/api/shop`)).json() as { bars: { name: string; thicknessMm: number; matesId: string }[] }
    const found = bars.filter(({ name }) => name === 'N<b>')
    expect(found).toHaveLength(2)
    expect(found[0]).toMatchObject({ thicknessMm: 6.35, matesId: found[1]!.matesId })
    expect((await inShop('rack', 'list', '--find', 'n<B>')).out.split('\n').filter((line) => line.includes('look first'))).toHaveLength(2)
    expect(JSON.parse((await inShop('rack', 'list', '--json', '--height', '34.925')).out)).toEqual(expect.arrayContaining([expect.objectContaining({ name: 'N<b>', heightMm: 34.925, standing: 'marked', trust: 'look first' })]))

    const file = join(scratch, 'out.csv')
    expect(await inShop('rack', 'export', file)).toMatchObject({ code: 0, out: '' })
    expect(readFileSync(file, 'utf8')).toContain('N<b>')
    expect((await inShop('rack', 'export')).out).toBe(readFileSync(file, 'utf8'))
  })

  it('takes a file in once under its id', async () => {
    const file = join(scratch, 'once.csv')
    writeFileSync(file, 'name,height,thickness,length\nOnce,35,8,150\n')
    const first = await inShop('rack', 'import', file, '--id', 'once-1')
    expect(first).toMatchObject({ code: 0, out: expect.stringContaining('In the rack: 1 bar') as string })
    expect(await inShop('rack', 'import', file, '--id', 'once-1')).toEqual(first)
    expect(JSON.parse((await inShop('rack', 'list', '--json', '--find', 'Once')).out)).toHaveLength(1)
    expect(await inShop('rack', 'import', file, '--id', 'once 1')).toMatchObject({ code: 2, err: expect.stringContaining("'once 1' does not fit") as string })
  })

  it('names every line of a broken file and takes nothing in', async () => {
    const file = join(scratch, 'broken.csv')
    writeFileSync(file, Buffer.from('\ufeffheight,thickness,length\r\n35,8,150\r\n"35,8\r\n0,8,150\r\n', 'utf16le'))
    const before = (await inShop('rack', 'list', '--json')).out
    const { code, out, err } = await inShop('rack', 'import', file)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(/Line 3: .*quotes/)
    expect(err).toContain('Nothing was taken in')
    expect((await inShop('rack', 'import', file, '--dry-run')).code).toBe(2)
    expect((await inShop('rack', 'list', '--json')).out).toBe(before)
  })

  it('prints the card of a vise on either paper', async () => {
    const svg = join(scratch, 'card.svg')
    const { code, out, err } = await inShop('card', '--vise', 'demo-vise-1', '--paper', 'Letter', '--svg', svg)
    expect(code).toBe(0)
    expect(out).toMatch(/^Card of Mill 1, 125 mm\n/)
    expect(err).toContain('Drawn on Letter')
    // Letter is 8.5 × 11 in (ANSI Y14.1): 215.9 × 279.4 mm.
    expect(readFileSync(svg, 'utf8')).toContain('viewBox="0 0 215.9 279.4"')
  })
})

describe('the command itself', () => {
  it('helps without touching anything, in well under a second of its own', async () => {
    const { code, out } = await twinrest(['--help'], { env: { TWINREST_DATA: '/nowhere' } })
    expect(code).toBe(0)
    for (const said of ['Usage: twinrest', 'setup', 'rack', 'card', 'calc', 'serve', 'Examples:', 'Exit codes: 0 done, 1 a fault in Twinrest, 2 refused']) expect(out).toContain(said)
    expect((await twinrest(['calc'])).out).toMatch(/^window +\S.*\nplaces +\S.*\nsetup +\S/)
    expect((await twinrest(['setup', '--help'])).out).toContain('"heightMm": "7/8 in"')
  })

  it.each([
    [['nonsense'], '"twinrest --help" lists the commands'], [['rack', 'list', '--data', ''], '--data needs a value after it'], [['setup', '/'], '/ cannot be read: it is a folder'], [['rack', 'add', '--height', '35'], "required option '--thickness <length>' not specified"],
    [['card', '--paper', 'A3'], 'Allowed choices are A4, Letter'], [['setup', '-', '--colour'], "unknown option '--colour'"], [['rack', 'list', '--trust', 'lovely'], "Trust: 'lovely' is not known here; use trusted, look first"],
    [['rack', 'list', '--height', 'tall'], "Height: 'tall' is no length"], [['serve', '--port', 'eighty'], "Port: 'eighty' is no port"],
  ])('%j ends with exit code 2 and says so', async (args, said) => {
    const { code, out, err } = await twinrest(args, { env: { TWINREST_DATA: join(scratch, 'own') } })
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(said)
    expect(err).not.toMatch(/\n\s+at /)
  })

  it('says when a shop has no vise, and when its folder cannot be made', async () => {
    const own = { env: { TWINREST_DATA: join(scratch, 'empty') }, input: part() }
    expect(await twinrest(['setup', '-'], own)).toMatchObject({ code: 2, err: expect.stringMatching(/^The shop has no vise yet/) as string })
    const inFile = join(scratch, 'out.csv', 'inside')
    expect(await twinrest(['rack', 'list', '--data', inFile])).toMatchObject({ code: 2, err: expect.stringContaining(`The data folder ${inFile} cannot be made or written`) as string })
  })

  it('ends quietly when its reader goes away', async () => {
    const child = spawn('sh', ['-c', `"$0" "$1" calc window | head -c 10; exit 0`, process.execPath, built])
    let err = ''
    child.stderr.setEncoding('utf8').on('data', (text: string) => { err += text })
    child.stdin.end(JSON.stringify(Array.from({ length: 3000 }, () => ({ vise: { jawHeightMm: 45, openingMm: 150 }, part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 } }))))
    await new Promise((done) => { child.on('close', done) })
    expect(err).toBe('')
  })

  it('says that there is no room left where it writes to', async () => {
    if (!existsSync('/dev/full')) return // Linux alone has a file that is always full.
    const child = spawn('sh', ['-c', '"$0" "$1" --help > /dev/full', process.execPath, built])
    let err = ''
    child.stderr.setEncoding('utf8').on('data', (text: string) => { err += text })
    const code = await new Promise((done) => { child.on('close', done) })
    expect({ code, err }).toEqual({ code: 2, err: 'Standard output cannot be written: no room is left. Give another file.\n' })
  })
})
