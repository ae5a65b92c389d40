import type { LengthUnit } from '#model/length.ts'

/** What one vise clamps with: a force that was measured, or the torque at its handle and the lead of its screw. */
export type Clamp = { readonly forceN: string; readonly torqueNm: string; readonly lead: string }

export const points = ['standard', 'split'] as const
/** The cutter and the drill in the spindle. */
export type Tools = {
  readonly diameter: string; readonly teeth: string; readonly feed: string; readonly helix: string
  readonly drillFeed: string; readonly wear: string; readonly point: (typeof points)[number]
}

/** What this device has beside it, as typed, whatever part comes next; each clamp under the id of its vise, all lengths in one unit. */
export type AtHand = { readonly unit: LengthUnit; readonly clamps: { readonly [viseId: string]: Clamp }; readonly tools: Tools }

export const noClamp: Clamp = { forceN: '', torqueNm: '', lead: '' }
const noTools: Tools = { diameter: '', teeth: '', feed: '', helix: '', drillFeed: '', wear: '', point: 'standard' }

export const nothingAtHand = (unit: LengthUnit): AtHand => ({ unit, clamps: {}, tools: noTools })

/** No length was typed: it takes on whatever unit is worked in now. */
export function isUnitOpen({ clamps, tools: { diameter, feed, drillFeed } }: AtHand): boolean {
  return [diameter, feed, drillFeed, ...Object.values(clamps).map(({ lead }) => lead)].every((text) => text === '')
}
