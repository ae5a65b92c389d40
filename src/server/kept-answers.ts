import type { Context } from 'hono'
import { atOneMoment, type Store } from '#store/store.ts'
import type { News } from '#tasks/shop/news.ts'

/** Answers a read with what it gives, as JSON, under the revision of the shop as its tag. */
export type AnswerKept = (c: Context, read: (tx: Store) => Promise<unknown>) => Promise<Response>

const mostTexts = 100

/**
 * Puts each answer together once for a revision, however often it is asked for; whoever has it at this revision already is told so
 * (304).
 *
 * A text may be newer than its tag, where the shop was written into in between, and never older.
 */
export function keptAnswers(store: Store, revision: News['revision']): AnswerKept {
  let kept = { revision: '', texts: new Map<string, Promise<string>>() }
  return async (c, read) => {
    const now = await revision(), etag = `"${now}"`
    if (c.req.header('if-none-match') === etag) return c.body(null, 304, { etag })
    if (kept.revision !== now) kept = { revision: now, texts: new Map() }
    const { texts } = kept, path = c.req.path, text = texts.get(path) ?? atOneMoment(store, async (tx) => JSON.stringify(await read(tx)))
    texts.set(path, text)
    text.catch(() => texts.delete(path))
    if (texts.size > mostTexts) texts.delete(texts.keys().next().value!)
    return c.body(await text, 200, { 'content-type': 'application/json', etag })
  }
}
