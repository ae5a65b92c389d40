import { OpenAPIHono, z } from '@hono/zod-openapi'
import type { Door } from '#server/open-route.ts'

/** The doors as an OpenAPI 3.1 document, out of the schemas they read with. */
export function openApiDocument(doors: readonly Door[]): object {
  const writer = new OpenAPIHono()
  writer.openAPIRegistry.registerComponent('schemas', 'Json', { description: 'Any JSON value.' })
  for (const door of doors) writer.openAPIRegistry.registerPath(pathOf(door))
  return writer.getOpenAPI31Document({
    openapi: '3.1.0', info: { title: 'Twinrest', version: '1', description: 'Which bars carry this part. Every error is {refused, facts} (yours to put right) or {fault} (ours).' },
  })
}

const refusedSchema = z.object({ refused: z.string(), facts: z.record(z.string(), z.json()) })
const faultSchema = z.object({ fault: z.string() })

const refusals = {
  400: 'Not JSON.', 401: 'This device is not enrolled.', 403: 'Another host or site; or for the owner alone.', 404: 'Not there.', 405: 'Not with this method.',
  411: 'No length.', 413: 'Too large.', 415: 'Not JSON by its content type.', 422: 'Refused.', 429: 'Too many; `retry-after` says when.',
  503: 'The machine cannot just now: its disk is full, another program writes …; nothing was kept, try again.',
} as const

function pathOf({ method, path, summary, body, answer, answerType = 'application/json' }: Door): Parameters<OpenAPIHono['openAPIRegistry']['registerPath']>[0] {
  const json = (schema: z.ZodType) => ({ 'application/json': { schema: jsonSchemaOf(schema) } })
  return {
    method, path, summary,
    request: {
      ...(body ? { body: { required: true, content: json(body) } } : {}),
      params: z.object(Object.fromEntries([...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => [name!, z.string()]))),
    },
    responses: {
      200: { description: 'The answer.', content: { [answerType]: { schema: jsonSchemaOf(answer) } } },
      ...Object.fromEntries(Object.entries(refusals).map(([status, description]) => [status, { description, content: json(refusedSchema) }])),
      500: { description: 'A fault; the id finds it in the log.', content: json(faultSchema) },
    },
  }
}

/**
 * A schema as OpenAPI 3.1 takes it, which is JSON Schema, made by zod itself: the generator runs in circles on a schema that
 * holds itself. The one that does is any JSON value; its references are turned to where it stands in the document.
 */
function jsonSchemaOf(schema: z.ZodType): { readonly [key: string]: unknown } {
  const { $schema: _dialect, $defs: _defs, ...rest } = withRefs(z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' })) as { [key: string]: unknown }
  return rest
}

function withRefs(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withRefs)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, inside]) => [key, key === '$ref' ? '#/components/schemas/Json' : withRefs(inside)]))
}
