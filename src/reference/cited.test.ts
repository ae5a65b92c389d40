import { readFileSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { type CitedAs, citedAs } from '#model/cited.ts'

const here = import.meta.dirname
const files = readdirSync(here, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
const known = new Set([...readFileSync(resolve(here, '../../docs/sources.md'), 'utf8').matchAll(/^\| ([A-Z][A-Z0-9-]*) \|/gm)].map(([, key]) => key!))

describe('every number of the books', () => {
  test.each(files)('in %s has its source and standing', async (file) => {
    const exported = (await import(/* @vite-ignore */ join(here, file))) as { readonly [name: string]: unknown }
    expect(Object.entries(exported).flatMap(([name, value]) => uncited(value, name, false))).toEqual([])
  })

  test('is looked at in all rooms of reference', () => expect(new Set(files.map((file) => file.split('/')[0]))).toContain('instruments'))

  test('is missed if it has none, or one that nobody knows, or a standing that is none', () => {
    expect(uncited([{ hrc: 60 }], 'rows', false)).toEqual(['rows[0].hrc has no source'])
    expect(uncited(3, 'alone', false)).toEqual(['alone has no source'])
    expect(uncited({ source: 'NOWHERE', standing: 'published', hrc: 60 }, 'row', false)).toEqual(['row: unknown source NOWHERE'])
    expect(uncited({ source: 'DIN-863', standing: 'believed', hrc: 60 }, 'row', false)).toEqual(['row: unknown standing believed'])
    expect(uncited({ source: 'DIN-863', standing: 'memory', band: [60, { to: 61 }] }, 'row', false)).toEqual([])
    expect(uncited({ source: 'DIN-863', standing: 'memory', limitUm: NaN }, 'row', false)).toEqual(['row.limitUm is NaN'])
  })
})

/** A number counts as cited by the nearest object around it that names a source. */
function uncited(value: unknown, path: string, cited: boolean): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? (cited ? [] : [`${path} has no source`]) : [`${path} is ${value}`]
  if (typeof value !== 'object' || value === null) return []
  if (Array.isArray(value)) return value.flatMap((inside, k) => uncited(inside, `${path}[${k}]`, cited))
  const { source, standing, ...rest } = value as { readonly [key: string]: unknown }
  const wrong = source === undefined ? [] : [...(known.has(source as string) ? [] : [`${path}: unknown source ${source as string}`]), ...(citedAs.includes(standing as CitedAs) ? [] : [`${path}: unknown standing ${standing as string}`])]
  return [...wrong, ...Object.entries(rest).flatMap(([key, inside]) => uncited(inside, `${path}.${key}`, cited || source !== undefined))]
}
