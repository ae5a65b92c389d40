import { z } from '@hono/zod-openapi'
import { type Doors, openRoute } from '#server/open-route.ts'
import { askCalc, calculationTitles } from '#tasks/ask-calc.ts'
import type { AskSlow } from '#tasks/make/slow-calculations.ts'

/** The calculations as data, each by its name. */
export function addCalcRoutes(doors: Doors, slowly?: AskSlow): void {
  const any = z.unknown()
  openRoute(doors, {
    method: 'post', path: '/api/calc/{name}', body: any, answer: any,
    summary: `One case, or an array of cases in which a refused one answers in its place. Names: ${calculationTitles.map(([name, title]) => `${name} (${title})`).join(' ')}`,
  }, async (c, input) => {
    const { signal } = c.req.raw
    try {
      return c.json(await askCalc(c.req.param('name')!, input, slowly, signal) as object)
    } catch (error) {
      // whoever asked has gone: there is nobody to answer, and nothing is amiss
      if (signal.aborted) return c.body(null, 408)
      throw error
    }
  })
}
