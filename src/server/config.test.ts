import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checkoutTop, readConfig } from '#server/config.ts'

const alone = { open: 'this machine', hostNames: [], certificate: null, backupHours: 24, logRequests: false } as const
const refused = (code: string) => expect.objectContaining({ name: 'Refusal', code }) as Error

describe('where to listen and where the shop is kept', () => {
  it('takes the usual where nothing is said, from the checkout and not from the working directory', () => {
    expect(readConfig([], {})).toEqual({ port: 4173, dataFolder: join(checkoutTop(), 'data'), backupFolder: join(checkoutTop(), 'data', 'backups'), demo: false, ...alone })
    expect(existsSync(join(checkoutTop(), 'package.json'))).toBe(true)
  })

  it('takes the command line before the environment', () => {
    const environment = { TWINREST_PORT: '5000', TWINREST_DATA: '/tmp/from-the-environment' }
    expect(readConfig([], environment)).toEqual({ port: 5000, dataFolder: '/tmp/from-the-environment', backupFolder: '/tmp/from-the-environment/backups', demo: false, ...alone })
    expect(readConfig(['--port', '6000', '--data=/tmp/said', '--demo'], environment)).toEqual({ port: 6000, dataFolder: '/tmp/said', backupFolder: '/tmp/said/backups', demo: true, ...alone })
    expect(readConfig([], { TWINREST_DATA: '', TWINREST_PORT: '' })).toEqual(readConfig([], {}))
  })

  it.each([
    [['--port', 'eighty'], 'bad-port'], [['--port', '65536'], 'bad-port'], [['--port', '-1'], 'bad-port'], [['--port', '80.5'], 'bad-port'], [['--port', '1e3'], 'bad-port'],
    [['--port'], 'option-empty'], [['--data', ''], 'option-empty'], [['--prot', '5000'], 'unknown-option'], [['5000'], 'unknown-option'],
  ])('%j is refused: %s', (args, code) => {
    expect(() => readConfig(args, {})).toThrow(refused(code))
  })

  it('keeps backups where and as often as it is told', () => {
    expect(readConfig(['--backups', '/mnt/other', '--backup-hours', '0', '--log-requests'], {})).toMatchObject({ backupFolder: '/mnt/other', backupHours: 0, logRequests: true })
    expect(readConfig([], { TWINREST_BACKUPS: '/mnt/other', TWINREST_BACKUP_HOURS: '6', TWINREST_LOG_REQUESTS: '1' })).toMatchObject({ backupFolder: '/mnt/other', backupHours: 6, logRequests: true })
    for (const hours of ['soon', '-1', '1.5', '9999']) expect(() => readConfig(['--backup-hours', hours], {})).toThrow(refused('value-not-allowed'))
  })

  it('opens the shop by a word of its own alone, on the command line or in the environment', () => {
    expect(readConfig(['--lan', '--host-name', 'Shop-PC.local', '--host-name=[fd00::1]'], {})).toMatchObject({ open: 'network', hostNames: ['shop-pc.local', 'fd00::1'] })
    expect(readConfig([], { TWINREST_LAN: '1', TWINREST_HOST_NAME: 'shop.example, other.example' })).toMatchObject({ open: 'network', hostNames: ['shop.example', 'other.example'] })
    expect(readConfig([], { TWINREST_LAN: '0' }).open).toBe('this machine')
    expect(readConfig(['--behind-proxy', '--host-name', 'shop.example'], {})).toMatchObject({ open: 'proxy', hostNames: ['shop.example'] })
    expect(readConfig(['--cert', '/tmp/c.pem', '--key', '/tmp/k.pem'], {})).toMatchObject({ open: 'this machine', certificate: { certificate: '/tmp/c.pem', key: '/tmp/k.pem' } })
  })

  it.each([
    [['--lan', '--behind-proxy'], {}, 'lan-or-proxy'], [['--cert', 'c.pem'], {}, 'certificate-without-key'], [['--key', 'k.pem'], {}, 'certificate-without-key'],
    [[], { TWINREST_LAN: 'yes' }, 'value-not-allowed'], [['--host-name', 'shop pc'], {}, 'host-name-not-valid'], [['--host-name', 'shop.example/x'], {}, 'host-name-not-valid'], [['--host-name'], {}, 'option-empty'],
  ])('does not open by %j with %j: %s', (args, environment, code) => {
    expect(() => readConfig(args, environment)).toThrow(refused(code))
  })

  it('refuses a port of the environment as it does its own', () => {
    expect(() => readConfig([], { TWINREST_PORT: 'auto' })).toThrow(refused('bad-port'))
  })
})
