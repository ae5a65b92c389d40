import { z } from '@hono/zod-openapi'
import type { Context, Hono } from 'hono'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'
import { mindOwner } from '#server/access/admit.ts'
import { mostBytesFor } from '#server/guard.ts'
import { jsonBody } from '#server/json-body.ts'

/** One door of the interface, as it is described. */
export type Door<Body = unknown> = {
  readonly method: 'get' | 'post'
  /** With parameters as `{name}`. */
  readonly path: string
  readonly summary: string
  /** What is sent; left out: nothing. */
  readonly body?: z.ZodType<Body>
  /** What comes back; JSON unless `answerType` says otherwise. */
  readonly answer: z.ZodType
  readonly answerType?: string
  /** For the owner alone: always, or where the body asks for something that is. */
  readonly owner?: true | ((body: Body) => boolean)
}

/** The app and the doors opened in it so far, out of which the OpenAPI document is written. */
export type Doors = { readonly app: Hono; readonly opened: Door[] }

/**
 * Opens a door. The body is read by the schema it is described with, by the reader the whole house uses, so that a refusal
 * names its field in the same words everywhere. A body that is a list is called by the last step of the path.
 */
export function openRoute<Body = undefined>({ app, opened }: Doors, door: Door<Body>, run: (c: Context, body: Body) => Promise<Response>): void {
  const { method, path, body } = door, whole = body instanceof z.ZodArray ? path.split('/').at(-1)! : ''
  opened.push(door as Door)
  app.on(method, path.replaceAll(/\{(\w+)\}/g, ':$1'), async (c) => {
    if (door.owner === true) await mindOwner(c)
    const read = body ? readAs(body, await jsonOf(c), whole) : undefined as Body
    if (typeof door.owner === 'function' && door.owner(read)) await mindOwner(c)
    return await run(c, read)
  })
}

async function jsonOf(c: Context): Promise<unknown> {
  const bytes = await c.req.arrayBuffer().catch(() => { throw new Refusal('body-broken-off') }), mostBytes = mostBytesFor(c.req.path)
  if (bytes.byteLength > mostBytes) throw new Refusal('body-too-large', { mostBytes })
  return jsonBody(bytes)
}
