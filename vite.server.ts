import { resolve } from 'node:path'
import { defineConfig } from 'vite'

/** The doors that run on Node, bundled so that `#room/file.ts` works everywhere: the server, the command, the benches. */
export default defineConfig({
  publicDir: false,
  resolve: { alias: [{ find: /^#(.*)$/, replacement: `${resolve(import.meta.dirname, 'src')}/$1` }] },
  // Libraries are bundled along: a start reads some twenty files, not a thousand. What brings compiled code or files of its own stays outside.
  ssr: { noExternal: true, external: ['better-sqlite3', 'pg', 'highs'] },
  build: {
    ssr: true,
    outDir: 'dist/node',
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rollupOptions: {
      input: {
        main: resolve(import.meta.dirname, 'src/server/main.ts'),
        twinrest: resolve(import.meta.dirname, 'src/cli/twinrest.ts'),
        'cut-worker': resolve(import.meta.dirname, 'src/tasks/make/cut-worker.ts'),
      },
      output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' },
    },
  },
})
