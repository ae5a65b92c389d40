import { readdirSync } from 'node:fs'
import { resolve } from 'node:path'
import { expect, it } from 'vitest'

// A code worded in two files would be said by whichever is spread last.
it('words no finding in two files', async () => {
  const folder = resolve(import.meta.dirname, 'findings'), owner = new Map<string, string>(), twice: string[] = []
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.ts'))) {
    const words: Readonly<Record<string, unknown>> = await import(`./findings/${file.replace(/\.ts$/, '')}.ts`)
    for (const [name, table] of Object.entries(words)) {
      if (!name.endsWith('Words') || typeof table !== 'object' || table === null) continue
      for (const code of Object.keys(table)) {
        if (owner.has(code)) twice.push(`${code} in ${owner.get(code)} and ${file}`)
        owner.set(code, file)
      }
    }
  }
  expect(owner.size).toBeGreaterThan(100)
  expect(twice).toEqual([])
})
