// `npm run kernel`: compiles the inner loops in kernel/ to WebAssembly and writes them to src/engine/kernel/code.ts.
// `node scripts/kernel.mjs check` fails where that file is not what the sources make.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { top } from './steps.mjs'

process.chdir(top)
const file = join('src', 'engine', 'kernel', 'code.ts'), cache = join('node_modules', '.cache', 'kernel'), binary = join(cache, 'kernel.wasm')

mkdirSync(cache, { recursive: true })
const { status } = spawnSync(
  process.execPath, [join('node_modules', 'assemblyscript', 'bin', 'asc.js'), 'kernel/index.ts', '--outFile', binary, '-O3', '--runtime', 'stub', '--noAssert', '--importMemory', '--enable', 'simd'],
  { stdio: 'inherit' },
)
if (status !== 0) process.exit(1)

const lines = readFileSync(binary).toString('hex').match(/.{1,120}/g).map((line) => `  '${line}',`)
const made = `// Written by \`npm run kernel\` from the sources in kernel/.\n\n/** A WebAssembly module, two letters a byte. */\nexport const code: readonly string[] = [\n${lines.join('\n')}\n]\n`
if (process.argv[2] !== 'check') writeFileSync(file, made)
else if (readFileSync(file, 'utf8') !== made) { console.error(`${file} is not what kernel/ makes: npm run kernel`); process.exit(1) }
