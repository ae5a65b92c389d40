import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Context } from 'hono'

type Served = { readonly body: Buffer<ArrayBuffer>; readonly type: string; readonly cache: string; gzipped?: Buffer<ArrayBuffer> }

const types: { readonly [ending: string]: string } = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8', '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2', '.wasm': 'application/wasm', '.png': 'image/png', '.json': 'application/json', '.webmanifest': 'application/manifest+json', '.txt': 'text/plain; charset=utf-8',
}
/** Addresses of the app's own places; each is the one page. */
const places = /^\/(?:(?:setup|inspect|rack|make|shop|c)(?:\/.*)?)?$/
const smallestGzip = 1024

/**
 * The built web app, read whole when the server starts: a build made meanwhile cannot mix with pages already out, and an
 * address is looked up in a list, never turned into a path. A person who comes to an address that is not there gets the app, too,
 * which says so.
 *
 * @returns an answer for an address, null for one that is not the app's
 */
export function staticFilesOf(folder: string): (c: Context) => Response | null {
  const files = new Map<string, Served>()
  for (const file of existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }) : []) {
    if (!file.isFile()) continue
    const path = join(file.parentPath, file.name), address = `/${relative(folder, path).split(sep).join('/')}`
    files.set(address, {
      body: readFileSync(path),
      type: types[extname(path)] ?? 'application/octet-stream',
      cache: address.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    })
  }
  const page = files.get('/index.html')
  return (c) => {
    const file = files.get(c.req.path) ?? (places.test(c.req.path) ? page : undefined)
    if (file) return answerWith(file, 200, c)
    return page && c.req.header('accept')?.includes('text/html') ? answerWith(page, 404, c) : null
  }
}

function answerWith(file: Served, status: 200 | 404, c: Context): Response {
  const packed = file.body.length >= smallestGzip && /^(text|image\/svg|application)/.test(file.type) && /\bgzip\b/.test(c.req.header('accept-encoding') ?? '')
  if (packed) file.gzipped ??= gzipSync(file.body)
  const body = packed ? file.gzipped! : file.body
  return c.body(body, status, { 'content-type': file.type, 'cache-control': file.cache, 'vary': 'accept-encoding', ...(packed ? { 'content-encoding': 'gzip' } : {}) })
}
