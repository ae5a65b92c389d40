import { type Contributor, type Spread, tiltOf, type TiltQuestion } from '#engine/setup/tilt/tilt.ts'

/** What knowing one contributor as well as the shop's own instrument could would leave of the 95 % of the overall tilt, and take from it. */
export type Gain = Contributor & { readonly q95Um: number; readonly gainUm: number }

/** Enough to rank by; each contributor is a run of its own. */
const mostTrials = 50_000

/** What to measure first: each contributor by itself, the same draws otherwise; the largest gain first. Who could not be known better is left out. */
export function gainsOf(question: TiltQuestion): readonly Gain[] {
  const few = { ...question, trials: Math.min(question.trials, mostTrials) }, before = q95Of(few)
  const could = question.sources.filter((source) => source.could !== null && sdOf(source.could) < sdOf(source.spread))
  const all = [...new Map(could.map(({ by }) => [`${by.of} ${by.bar ?? ''}`, by])).values()]
  if (before === null) return []
  return all.map((by): Gain => {
    // even a source known better keeps its place among the draws, so that the others draw the same
    const known = question.sources.map((source) => (source.by.of === by.of && source.by.bar === by.bar && could.includes(source) ? { ...source, ...narrowed(source.spread, source.could!) } : source))
    const q95Um = q95Of({ ...few, sources: known })!
    return { ...by, q95Um, gainUm: before - q95Um }
  }).sort((a, b) => b.gainUm - a.gainUm)
}

/** The same kind of error, as narrow as it could be. */
function narrowed(spread: Spread, could: Spread): { readonly spread: Spread } {
  return { spread: spread.dist === 'rect' ? { dist: 'rect', half: sdOf(could) * Math.sqrt(3) } : { dist: 'normal', sd: sdOf(could) } }
}

/** Standard deviation; of a rectangle its half width by √3. @source GUM */
const sdOf = (spread: Spread): number => (spread.dist === 'normal' ? spread.sd : spread.dist === 'rect' ? spread.half / Math.sqrt(3) : 0)

function q95Of(question: TiltQuestion): number | null {
  const tilted = tiltOf(question)
  return tilted.status === 'predicted' ? tilted.overall.q95Um : null
}
