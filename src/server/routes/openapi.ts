import { z } from '@hono/zod-openapi'
import { type Doors, openRoute } from '#server/open-route.ts'
import { openApiDocument } from '#server/openapi-document.ts'

/** The description of all doors, written when it is first asked for. */
export function addDescription(doors: Doors): void {
  let document: object | undefined
  openRoute(doors, { method: 'get', path: '/api/openapi.json', summary: 'This description.', answer: z.unknown() },
    async (c) => c.json(document ??= openApiDocument(doors.opened)))
}
