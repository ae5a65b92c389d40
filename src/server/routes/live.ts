import { z } from '@hono/zod-openapi'
import { streamSSE } from 'hono/streaming'
import { Refusal } from '#model/refusal.ts'
import { type Access, isStillIn, unlockedName } from '#server/access/admit.ts'
import { type Live, liveOf } from '#server/live.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import { snapshotSchema } from '#server/snapshot-schema.ts'
import type { News } from '#tasks/shop/news.ts'

/** Between two signs of life, where nothing changes. */
const heartbeatMs = 15_000
/** Streams of one device at once: a window that is looked at has one. Programs on this machine itself have more. */
const mostOfDevice = 20, mostHere = 500

const newsSchema = z.union([
  z.object({ revision: z.string(), whole: snapshotSchema }),
  z.object({ revision: z.string(), put: snapshotSchema.partial(), gone: z.record(z.string(), z.array(z.string())) }),
])

/**
 * What others do, as it happens: a stream that names each new revision, and what became of the shop since one.
 *
 * @param ending  ends the streams, so that they do not keep the server from stopping
 */
export function addLiveRoutes(doors: Doors, access: Access, news: News, ending: AbortSignal): Live {
  const live = liveOf(news.revision, access.store.hear), enter = turnstile()
  openRoute(doors, {
    method: 'get', path: '/api/shop/since/{revision}', answer: newsSchema,
    summary: 'What became of the shop since a revision: records put and ids gone, by list; the whole shop where the revision is not known any more (or is `none`).',
  }, async (c) => c.body(await news.since(c.req.param('revision')!), 200, { 'content-type': 'application/json' }))
  openRoute(doors, {
    method: 'get', path: '/api/live', answer: z.string(), answerType: 'text/event-stream',
    summary: 'Server-sent events: `revision` at once and whenever the shop has changed, `beat` as a sign of life.',
  }, async (c) => {
    const leave = enter(unlockedName(c.get('caller')), c.get('caller').here ? mostHere : mostOfDevice)
    c.header('x-accel-buffering', 'no')
    return streamSSE(c, async (stream) => {
      let latest = '', told = '', wake: () => void = () => {}
      const left = live.join((revision) => { latest = revision; wake() }), end = () => { void stream.close(); wake() }
      stream.onAbort(() => wake())
      ending.addEventListener('abort', end)
      // Asked anew before every word, so that a device is let go as soon as it is revoked.
      while (!stream.aborted && !ending.aborted && await isStillIn(c, access)) {
        if (latest !== told) { told = latest; await stream.writeSSE({ event: 'revision', data: told }) } else {
          await stream.writeSSE({ event: 'beat', data: '' })
        }
        if (latest === told) await new Promise<void>((done) => { const beat = setTimeout(done, heartbeatMs); wake = () => { clearTimeout(beat); done() } })
      }
      ending.removeEventListener('abort', end)
      left()
      leave()
    })
  })
  return live
}

/** Who has how many streams. @throws Refusal `too-many-tries` */
function turnstile(): (who: string, most: number) => () => void {
  const open = new Map<string, number>()
  return (who, most) => {
    const now = open.get(who) ?? 0
    if (now >= most) throw new Refusal('too-many-tries', { waitS: heartbeatMs / 1000 })
    open.set(who, now + 1)
    return () => { if (open.get(who) === 1) open.delete(who); else open.set(who, open.get(who)! - 1) }
  }
}
