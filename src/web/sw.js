// Keeps the whole app on the device, so that it opens without the server after one visit. Data is not its business.
const CACHE = 'app-__VERSION__'
const FILES = __FILES__
const known = new Set(FILES)

addEventListener('install', (event) => {
  const fresh = FILES.map((url) => new Request(url, { cache: 'reload' }))
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(fresh)))
})

addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    for (const key of await caches.keys()) if (key.startsWith('app-') && key !== CACHE) await caches.delete(key)
    await clients.claim()
  })())
})

// A new version waits until a person says when.
addEventListener('message', (event) => {
  if (event.data === 'skipWaiting') skipWaiting()
})

addEventListener('fetch', (event) => {
  const url = new URL(event.request.url)
  if (event.request.method !== 'GET' || url.origin !== location.origin || /^\/(api|trust)(\/|$)/.test(url.pathname)) return
  const key = event.request.mode === 'navigate' ? '/' : url.pathname
  if (known.has(key)) event.respondWith(caches.open(CACHE).then(async (cache) => (await cache.match(key)) ?? fetch(event.request)))
})
