// `npm run kernel`: compiles the inner loops in kernel/ to WebAssembly and writes them to src/engine/kernel/code.ts.
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import asc from 'assemblyscript/asc'
import { top } from './steps.mjs'

const file = join(top, 'src', 'engine', 'kernel', 'code.ts')
const options = ['-O3', '--runtime', 'stub', '--noAssert', '--importMemory', '--enable', 'simd']

/** The text of code.ts as the sources in kernel/ make it. @throws Error with what the compiler says */
export async function kernelCode() {
  const { error, stdout, stderr, binary } = await compiled()
  if (error) throw new Error(`${stderr}${stdout}${error.message}`)
  const lines = Buffer.from(binary).toString('hex').match(/.{1,120}/g).map((line) => `  '${line}',`)
  return `// Written by \`npm run kernel\` from the sources in kernel/; a test compares the two.\n\n/** A WebAssembly module, two letters a byte. */\nexport const code: readonly string[] = [\n${lines.join('\n')}\n]\n`
}

async function compiled() {
  const written = []
  const done = await asc.main(['kernel/index.ts', '--outFile', 'kernel.wasm', '--baseDir', top, ...options], { writeFile: (name, contents) => { if (name === 'kernel.wasm') written.push(contents) } })
  return { ...done, stdout: String(done.stdout), stderr: String(done.stderr), binary: written[0] }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) writeFileSync(file, await kernelCode())
