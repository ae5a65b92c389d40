import { z } from '@hono/zod-openapi'
import { type Doors, openRoute } from '#server/open-route.ts'
import { calc, calculations } from '#tasks/calc.ts'

/** The calculations as data, each by its name. */
export function addCalcRoutes(doors: Doors): void {
  const any = z.unknown()
  openRoute(doors, {
    method: 'post', path: '/api/calc/{name}', body: any, answer: any,
    summary: `One case, or an array of cases in which a refused one answers in its place. Names: ${Object.entries(calculations).map(([name, { title }]) => `${name} (${title})`).join(' ')}`,
  }, async (c, input) => c.json(calc(c.req.param('name')!, input) as object))
}
