// `npm run dev`: the server rebuilt and restarted on each change, the web with hot reload in front of it.
import { spawn } from 'node:child_process'
import { top } from './steps.mjs'

const vite = ['node_modules/vite/bin/vite.js']
const children = [
  [process.execPath, [...vite, 'build', '--watch', '--logLevel', 'warn', '-c', 'vite.server.ts']],
  [process.execPath, ['--watch', 'dist/node/main.js', ...process.argv.slice(2)]],
  [process.execPath, [...vite, '-c', 'vite.config.ts']],
].map(([file, args]) => spawn(file, args, { cwd: top, stdio: 'inherit' }))

for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => { for (const child of children) child.kill('SIGTERM') })
for (const child of children) child.on('exit', (code) => { for (const other of children) other.kill('SIGTERM'); process.exitCode ??= code ?? 0 })
