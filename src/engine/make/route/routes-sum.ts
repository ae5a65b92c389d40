import type { Route } from '#model/route.ts'
import type { Sum } from '#model/sum.ts'

/** Hours and cost of every route. */
export function routesSum(routes: readonly Route[]): readonly Sum[] {
  const sources = ['MAKE-RULES']
  return routes.flatMap(({ kind, steps, hours, cost }): Sum[] => [
    { formula: 'route-hours', result: { name: 'hours', value: hours }, inputs: { route: kind, steps: steps.length }, sources },
    { formula: 'route-cost', result: { name: 'cost', value: cost.total }, inputs: { route: kind, stockCost: cost.stock, workCost: cost.work, outsideCost: cost.outside, toolsCost: cost.tools }, sources },
  ])
}
