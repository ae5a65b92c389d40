import type { ProfileSeries } from '#drafting/inspect/profile.ts'
import { type HeadedProfile, twoProfiles, type TwoProfilesOptions } from '#drafting/inspect/two-profiles.ts'
import type { Scene } from '#drafting/scene.ts'

export type PairMatchData = {
  readonly title: string
  readonly description: string
  readonly lengthMm: number
  /** Both at the same stations, from the marked end of each. */
  readonly first: ProfileSeries
  readonly second: ProfileSeries
  readonly zero: string
  readonly whiskers: string
  /** Heading and what comes out, in words, of either way. */
  readonly asLaid: { readonly heading: string; readonly says: string }
  readonly turned: { readonly heading: string; readonly says: string }
}

/** Two bars as they lie and with the second turned end for end, to one scale, the place marked where they differ most. */
export function pairMatch(data: PairMatchData, options: TwoProfilesOptions): Scene {
  const { first, second } = data, part = (words: PairMatchData['asLaid'], other: ProfileSeries): HeadedProfile => ({
    ...words, lengthMm: data.lengthMm,
    profile: { series: [first, other], zero: data.zero, whiskers: data.whiskers, band: null, worstAtMm: worstAtMm(first, other) },
  })
  return twoProfiles({ title: data.title, description: data.description, parts: [part(data.asLaid, second), part(data.turned, turned(second))] }, options)
}

/** The same end for end, at the same places. */
function turned({ label, points }: ProfileSeries): ProfileSeries {
  const last = points.length - 1
  return { label, points: points.map(({ xMm }, i) => ({ ...points[last - i]!, xMm })) }
}

function worstAtMm(first: ProfileSeries, second: ProfileSeries): number | null {
  const apart = first.points.flatMap(({ xMm, um }, i) => {
    const other = second.points[i]?.um ?? null
    return um === null || other === null ? [] : [{ xMm, um: Math.abs(um - other) }]
  })
  return apart.toSorted((a, b) => b.um - a.um)[0]?.xMm ?? null
}
