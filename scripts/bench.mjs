// `npm run bench [NAME]`: every bench in bench/, bundled as the program itself is, its figures as ratios of one run.
import { readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'
import { chromium, top } from './steps.mjs'

process.chdir(top)
const out = join(top, 'node_modules', '.cache', 'bench')
const wanted = process.argv[2] ?? ''
const files = readdirSync('bench').filter((name) => name.endsWith('.ts') && name !== 'bench-row.ts' && !name.endsWith('.test.ts') && !name.endsWith('.d.ts') && name.includes(wanted))
if (files.length === 0) { console.error(`no bench is named like ${wanted}`); process.exit(2) }
const found = chromium()
if (found) process.env.PW_CHROMIUM = found

await build({
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  resolve: { alias: [{ find: /^#(.*)$/, replacement: `${resolve('src')}/$1` }] },
  build: {
    ssr: true, outDir: out, emptyOutDir: true, target: 'node20', minify: false,
    rollupOptions: { input: Object.fromEntries(files.map((name) => [name.replace(/\.ts$/, ''), resolve('bench', name)])), output: { entryFileNames: '[name].js' } },
  },
})

const rows = []
for (const file of files) {
  const { run } = await import(pathToFileURL(join(out, file.replace(/\.ts$/, '.js'))))
  if (typeof run !== 'function') continue
  rows.push(...await run())
}
const width = Math.max(...rows.map((row) => row.name.length))
for (const { name, figure, target, ratio, met } of rows)
  console.log(`${met ? 'met   ' : 'MISSED'} ${name.padEnd(width)}  ${figure}${ratio === null ? '' : `  ratio ${ratio.toFixed(2)}`}  (${target})`)
console.log(`\n${rows.filter((row) => row.met).length} of ${rows.length} figures meet their target`)
process.exit(rows.every((row) => row.met) ? 0 : 1)
