import type { Check } from '#model/check.ts'
import type { JobFields } from '#model/job-record.ts'
import type { Actuals } from '#model/make-step.ts'
import { removalOf } from '#engine/make/grind/removal.ts'
import { hasProfile, lowTypedOf, profileNotRead, typedOf } from '#engine/make/regrind/regrind-job.ts'
import { heightFrom } from '#engine/rack/height-from.ts'
import { type Regrind, regrindOf, type RegrindQuestion, type WornBar } from '#engine/rack/regrind/regrind.ts'
import { lowFrom, wishFrom } from '#engine/rack/regrind/regrind-typed.ts'

/** The last profile of a bar before the wheel touches it, and the day it was read. */
export type Profile = WornBar & { readonly day: string }

/** What comes off the bars of a regrind, out of what was read so far. */
export type RegrindWork = {
  readonly question: RegrindQuestion
  readonly profiles: readonly Profile[]
  /** The largest that was read; null: none yet, and they are taken as straight. */
  readonly bowMm: number | null
  /** Off each face at its lowest point; where both are ground, the bow is in it. */
  readonly cleanUpUm: number
  readonly planned: Regrind
  /** What is left for the second face, once every bar was read after the first; null: as planned, or no second face. */
  readonly second: { readonly question: RegrindQuestion; readonly regrind: Regrind } | null
  /** Of each bar, by the latest that is known. */
  readonly newHeightMm: (bar: string) => number
}

type Job = Pick<JobFields, 'bars' | 'done' | 'tools'>

/**
 * Ground free, a bent bar loses its bow on each face: where both are ground it comes off with the clean-up. With one face the other is taken as true, and the bow
 * stays in the bar.
 *
 * @param lengthMm  of the bars
 * @throws Refusal `profile-not-read`; as `wishFrom`, `lowFrom` and `regrindOf`
 * @source REGRIND-RULES GRIND-RULES
 */
export function regrindWork(job: Job, checks: readonly Check[], { readings }: Actuals, lengthMm: number): RegrindWork {
  const wish = wishFrom(typedOf(job)), lowUm = lowFrom(lowTypedOf(job)), before = checksBefore(job, checks)
  const profiles = job.bars.map(({ id }, k) => profileOf(id, k, before, lengthMm, lowUm[id] ?? 0))
  const bows = readings.filter(({ step, what }) => step === 'read before grinding' && what === 'bow of the edges').flatMap(({ values }) => values)
  const bowMm = bows.length === 0 ? null : Math.max(...bows)
  const cleanUpUm = wish.faces === 1 ? wish.cleanUpUm : removalOf({ bowMm: bowMm ?? 0, cleanUpMm: wish.cleanUpUm / 1000, skinMm: 0, sizeMm: lengthMm, growthPercent: 0 }).neededUm
  const question: RegrindQuestion = { ...wish, cleanUpUm, windowsMm: null, bars: profiles.map(({ day: _day, ...bar }) => bar) }, planned = regrindOf(question)
  const read = question.bars.map((bar): WornBar => ({ ...bar, heightsMm: readings.find(({ step, what, bar: of }) => step === 'grind the first face' && what === 'height' && of === bar.id)?.values ?? [] }))
  const again: RegrindQuestion = { ...question, faces: 1, datumFace: null, bars: read }
  const second = wish.faces === 2 && read.every(({ heightsMm }) => heightsMm.length > 0) ? { question: again, regrind: regrindOf(again) } : null, known = second?.regrind ?? planned
  return { question, profiles, bowMm, cleanUpUm, planned, second, newHeightMm: (bar) => known.bars.find(({ id }) => id === bar)?.newHeightMm ?? known.newHeightMm }
}

/** Checks that tell what the bars were like before they were ground. */
const checksBefore = ({ done }: Job, checks: readonly Check[]): readonly Check[] => {
  const ground = done['grind the first face']?.atIso
  return checks.filter(({ method, atIso }) => method !== 'stated' && (ground === undefined || atIso < ground))
}

/** Checks that tell what has become of them; none before the last face is ground. */
export function checksAfter({ done, tools }: Job, checks: readonly Check[]): readonly Check[] {
  const ground = done[typedOf({ tools }).faces === '2' ? 'grind the second face' : 'grind the first face']?.atIso
  return ground === undefined ? [] : checks.filter(({ atIso }) => atIso > ground)
}

function profileOf(id: string, k: number, checks: readonly Check[], lengthMm: number, lowUm: number): Profile {
  const height = heightFrom(id, checks, [], lengthMm)
  if (height === null || !hasProfile(height)) throw profileNotRead(k, height?.heightsUm.length ?? 0)
  return { id, heightsMm: height.heightsUm.map(([, um]) => height.heightMm + um / 1000), lowUm, day: height.atIso.slice(0, 10) }
}
