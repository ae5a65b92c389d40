import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { BenchRow } from './bench-row.ts'

const web = join('dist', 'web')
const mostKb = 250

/** What the first screen fetches (page, its scripts, styles and fonts), compressed. */
export function run(): Promise<BenchRow[]> {
  const page = readFileSync(join(web, 'index.html'), 'utf8')
  const seen = new Set<string>()
  const waiting = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+)"/g)].map((match) => match[1]!)
  while (waiting.length > 0) {
    const name = waiting.pop()!
    if (seen.has(name)) continue
    seen.add(name)
    // What a script imports statically and what a style names comes with it; lazily imported pieces do not.
    const text = readFileSync(join(web, name), 'utf8')
    if (name.endsWith('.js')) for (const match of text.matchAll(/(?:^|[;\s}])(?:import|from)\s*["']\.\/([^"']+)["']/g)) waiting.push(`assets/${match[1]!}`)
    if (name.endsWith('.css')) for (const match of text.matchAll(/url\(\/?(assets\/[^)"']+\.woff2)\)/g)) waiting.push(match[1]!)
  }
  const bytes = (name: string): number => name.endsWith('.woff2') ? readFileSync(join(web, name)).length : gzipSync(readFileSync(join(web, name))).length
  const kb = ([...seen].reduce((sum, name) => sum + bytes(name), 0) + gzipSync(page).length) / 1000
  const all = readdirSync(join(web, 'assets')).reduce((sum, name) => sum + bytes(join('assets', name)), 0) / 1000
  return Promise.resolve([{
    name: 'first screen, compressed', figure: `${kb.toFixed(0)} kB of ${all.toFixed(0)} kB in all`, target: `under ${mostKb} kB`, ratio: kb / mostKb, met: kb < mostKb,
  }])
}
