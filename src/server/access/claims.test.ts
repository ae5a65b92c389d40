import { readdirSync, readFileSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'

const top = resolve(import.meta.dirname, '../../..')
const claims = readFileSync(join(top, 'SECURITY.md'), 'utf8').split('\n').filter((line) => /^\| (?!claim)[^|-]/.test(line)).map((line) => line.split(' | ') as [string, string, string])
const tests = ['src', 'e2e'].flatMap((room) => readdirSync(join(top, room), { recursive: true, encoding: 'utf8' }).map((name) => `${room}/${name}`)).filter((name) => /\.(test|spec)\.ts$/.test(name))

describe('every claim of SECURITY.md', () => {
  it('is read at all', () => expect(claims.length).toBeGreaterThan(20))

  it.each(claims)('%s: is tried in tests that are there', (_claim, _how, tried) => {
    const named = [...tried.matchAll(/`([^`]+\.ts)`/g)].map(([, file]) => tests.filter((test) => (file!.includes('/') ? test.endsWith(file!) : basename(test) === file)))
    expect(named.length).toBeGreaterThan(0)
    for (const files of named) expect(files.length, tried).toBeGreaterThan(0)
    const texts = named.flat().map((file) => readFileSync(join(top, file), 'utf8')).join('\n')
    for (const [, title] of tried.matchAll(/\*([^*]+)\*/g)) expect(texts).toContain(title)
  })
})
