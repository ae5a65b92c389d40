import { readFileSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'

const top = resolve(import.meta.dirname, '../..')
const standings = ['published', 'memory', 'common practice', 'computed', 'shop']
const rows = readFileSync(join(top, 'docs/sources.md'), 'utf8').split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| key '))
  .map((line) => line.split('|').slice(1, -1).map((cell) => cell.trim()))
const known = new Set(rows.map(([key]) => key))
const key = '[A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*(?=[\\s,;)*]|$)'

describe('docs/sources.md', () => {
  test('has key, source and standing in every row, each key once', () => {
    expect(rows.length).toBeGreaterThan(0)
    for (const row of rows) {
      expect(row, row.join(' | ')).toHaveLength(3)
      expect(row[0]).toMatch(/^[A-Z][A-Z0-9-]*$/)
      expect(row[1]).not.toBe('')
      expect(standings, row[0]).toContain(row[2])
    }
    expect(known.size).toBe(rows.length)
  })

  test('knows every key that the code names', () => {
    const named = ['src', 'kernel'].flatMap((room) => readdirSync(join(top, room), { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name)).flatMap((name) => keysIn(join(room, name))))
    expect(named.map((one) => one.key)).toContain('SETUP-RULES')
    expect(named.filter((one) => !known.has(one.key)).map((one) => `${one.key} in ${one.file}`)).toEqual([])
  })
})

/** Keys after `@source`, as many as follow one another, and those in a list called sources. */
function keysIn(file: string): { readonly key: string; readonly file: string }[] {
  const text = readFileSync(join(top, file), 'utf8')
  const cited = [...text.matchAll(new RegExp(`@source (${key}(?:,? ${key})*)`, 'g'))].flatMap((match) => match[1]!.split(/,? /))
  const listed = [...text.matchAll(/[sS]ources\b[^\n[]*\[([^\]\n]*)\]/g)].flatMap((match) => [...match[1]!.matchAll(/'([^']+)'/g)].map(([, one]) => one!))
  return [...cited, ...listed].map((one) => ({ key: one, file }))
}
