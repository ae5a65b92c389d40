import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Plugin } from 'vite'

/**
 * Writes `sw.js` from its template: the list of all built files, and a version that changes when any of them does.
 *
 * @param template     path of the service worker, holding `__VERSION__` and `__FILES__`
 * @param publicFiles  names under `src/web/public` that belong to the app
 */
export function serviceWorker(template: string, publicFiles: readonly string[]): Plugin {
  return {
    name: 'service-worker',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const hash = createHash('sha256'), urls: string[] = []
        for (const [name, file] of Object.entries(bundle).sort(([a], [b]) => (a < b ? -1 : 1))) {
          hash.update(name).update(file.type === 'chunk' ? file.code : file.source)
          urls.push(name === 'index.html' ? '/' : `/${name}`)
        }
        for (const name of publicFiles) {
          hash.update(readFileSync(join('src/web/public', name)))
          urls.push(`/${name}`)
        }
        const code = readFileSync(template, 'utf8')
        hash.update(code)
        const source = code.replace('__VERSION__', hash.digest('hex').slice(0, 16)).replace('__FILES__', JSON.stringify(urls))
        this.emitFile({ type: 'asset', fileName: 'sw.js', source })
      },
    },
  }
}
