import type { ProfilePoint } from '#drafting/inspect/profile.ts'
import { twoProfiles, type TwoProfilesOptions } from '#drafting/inspect/two-profiles.ts'
import type { Scene } from '#drafting/scene.ts'

/** Heights at the stations, in their order; null where they are not told. */
type Heights = readonly (number | null)[]

export type TurnOverData = {
  readonly title: string
  readonly description: string
  readonly lengthMm: number
  readonly stationsMm: readonly number[]
  readonly zero: string
  /** As read with either face up. */
  readonly faceA: { readonly label: string; readonly ums: Heights }
  readonly faceB: { readonly label: string; readonly ums: Heights }
  /** What is left of the height when the bend is out of it, above the zero; and the bend of the centre line. */
  readonly height: { readonly label: string; readonly ums: Heights }
  readonly bend: { readonly label: string; readonly ums: Heights }
  readonly asRead: { readonly heading: string; readonly says: string }
  readonly apart: { readonly heading: string; readonly says: string }
}

/** What was read with either face up, and beside it height error and bend apart. */
export function turnOverDrawing(data: TurnOverData, options: TwoProfilesOptions): Scene {
  const points = (ums: Heights): readonly ProfilePoint[] => data.stationsMm.map((xMm, i) => ({ xMm, um: ums[i] ?? null, uUm: null }))
  const profile = (of: readonly { readonly label: string; readonly ums: Heights }[]) =>
    ({ series: of.map(({ label, ums }) => ({ label, points: points(ums) })), zero: data.zero, band: null, whiskers: '' })
  return twoProfiles({
    title: data.title, description: data.description,
    parts: [
      { ...data.asRead, lengthMm: data.lengthMm, profile: profile([data.faceA, data.faceB]) },
      { ...data.apart, lengthMm: data.lengthMm, profile: profile([data.height, data.bend]) },
    ],
  }, options)
}
