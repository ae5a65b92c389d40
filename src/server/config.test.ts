import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checkoutTop, readConfig } from '#server/config.ts'

const refused = (code: string) => expect.objectContaining({ name: 'Refusal', code }) as Error

describe('where to listen and where the shop is kept', () => {
  it('takes the usual where nothing is said, from the checkout and not from the working directory', () => {
    expect(readConfig([], {})).toEqual({ port: 4173, dataFolder: join(checkoutTop(), 'data'), demo: false })
    expect(existsSync(join(checkoutTop(), 'package.json'))).toBe(true)
  })

  it('takes the command line before the environment', () => {
    const environment = { TWINREST_PORT: '5000', TWINREST_DATA: '/tmp/from-the-environment' }
    expect(readConfig([], environment)).toEqual({ port: 5000, dataFolder: '/tmp/from-the-environment', demo: false })
    expect(readConfig(['--port', '6000', '--data=/tmp/said', '--demo'], environment)).toEqual({ port: 6000, dataFolder: '/tmp/said', demo: true })
    expect(readConfig([], { TWINREST_DATA: '', TWINREST_PORT: '' })).toEqual(readConfig([], {}))
  })

  it.each([
    [['--port', 'eighty'], 'bad-port'], [['--port', '65536'], 'bad-port'], [['--port', '-1'], 'bad-port'], [['--port', '80.5'], 'bad-port'], [['--port', '1e3'], 'bad-port'],
    [['--port'], 'option-empty'], [['--data', ''], 'option-empty'], [['--prot', '5000'], 'unknown-option'], [['5000'], 'unknown-option'],
  ])('%j is refused: %s', (args, code) => {
    expect(() => readConfig(args, {})).toThrow(refused(code))
  })

  it('refuses a port of the environment as it does its own', () => {
    expect(() => readConfig([], { TWINREST_PORT: 'auto' })).toThrow(refused('bad-port'))
  })
})
