import type { Finding } from '#model/finding.ts'
import type { PredictionAsked } from '#engine/setup/prediction/asked.ts'
import { fewestOutcomes } from '#engine/setup/prediction/scatter.ts'

/** Why nothing can be foretold of a way of resting the part; empty: it can. */
export function notForetold({ part, choice: { stand, bars: ids }, bars }: PredictionAsked): readonly Finding[] {
  const marked = bars.filter(({ standing }) => standing === 'marked').map(({ id }) => id)
  if (part.shape === 'round') return [{ code: 'no-prediction-round', facts: {} }]
  if (stand !== 'on edge' && stand !== 'single') return [{ code: 'no-prediction-on-edge', facts: {} }]
  if (part.betweenJawsMm === null || part.alongJawsMm === null) return [{ code: 'no-prediction-sizes', facts: {} }]
  if (bars.length < ids.length || marked.length > 0) return [{ code: 'no-prediction-marked', facts: { bars: marked } }]
  return []
}

/** What is not in the prediction because nobody measured it: never silently nothing. `held`: the fixed jaw squares the part. */
export function notKnown({ part, bars, vise, scatter }: PredictionAsked, held: boolean): readonly Finding[] {
  const ids = (is: (bar: (typeof bars)[number]) => boolean) => bars.filter(is).map(({ id }) => id)
  const unsure = ids(({ known, stationUUm }) => known === undefined || stationUUm === null), flat = ids(({ heightsUm = [] }) => heightsUm.length < 2)
  const jaws = [...(vise?.bed ? [] : ['bed']), ...(vise?.jawSlope || !held ? [] : ['jaw-slope']), ...(vise?.jawLift ? [] : ['jaw-lift'])]
  const never = !vise?.bed && !vise?.jawSlope && !vise?.jawLift, least = Math.min(scatter.along.count, scatter.across.count)
  return [
    ...(never ? [{ code: 'vise-never-indicated', facts: {} }] : jaws.length > 0 ? [{ code: 'vise-not-indicated', facts: { what: jaws } }] : []),
    ...(held ? [{ code: 'squareness-not-known', facts: {} }] : []),
    ...(unsure.length > 0 ? [{ code: 'bar-uncertainty-not-known', facts: { bars: unsure } }] : []),
    ...(flat.length > 0 ? [{ code: 'profile-not-known', facts: { bars: flat } }] : []),
    ...(part.hollows.length > 0 ? [{ code: 'hollows-not-counted', facts: {} }] : []),
    ...(least < fewestOutcomes ? [{ code: 'shop-scatter-not-known', facts: { count: least, needed: fewestOutcomes } }] : []),
  ]
}
