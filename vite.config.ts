import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { serviceWorker } from './vite.sw.ts'

export default defineConfig({
  root: 'src/web',
  plugins: [react(), serviceWorker('src/web/sw.js', ['icon.svg', 'app.webmanifest'])],
  worker: { format: 'es' },
  // One style sheet, fetched at the start: a page that is opened later never stands there without its own.
  build: { outDir: '../../dist/web', emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0, cssCodeSplit: false },
  server: { proxy: { '/api': 'http://127.0.0.1:4173' } },
})
