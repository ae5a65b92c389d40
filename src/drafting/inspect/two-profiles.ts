import type { Units } from '#model/shop-record.ts'
import { moved, textOf } from '#drafting/items.ts'
import { profileDrawing, type ProfileData } from '#drafting/inspect/profile.ts'
import { paragraph } from '#drafting/paragraph.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** A profile with a heading over it and what it says under it. */
export type HeadedProfile = { readonly heading: string; readonly profile: ProfileData; readonly says: string; readonly lengthMm: number }

export type TwoProfilesOptions = { readonly widthMm: number; readonly units: Units; readonly profileMm?: number }

const apartMm = 6
const headMm = 6.5
/** From here on they stand side by side. */
const besideFromMm = 150

/** Two profiles side by side, or one under the other on narrow paper, each as high as it needs. */
export function twoProfiles(
  { title, description, parts }: { readonly title: string; readonly description: string; readonly parts: readonly [HeadedProfile, HeadedProfile] },
  { widthMm, units, profileMm = 30 }: TwoProfilesOptions,
): Scene {
  const beside = widthMm >= besideFromMm, eachMm = beside ? (widthMm - apartMm) / 2 : widthMm
  const drawn = parts.map((part) => headed(part, eachMm, profileMm, units))
  const second = beside ? { x: eachMm + apartMm, y: 0 } : { x: 0, y: drawn[0]!.heightMm + apartMm }
  return {
    title, description, widthMm, fields: [],
    heightMm: Math.max(drawn[0]!.heightMm, second.y + drawn[1]!.heightMm),
    items: [...drawn[0]!.items, ...drawn[1]!.items.map((item) => moved(item, second.x, second.y))],
  }
}

function headed({ heading, profile, says, lengthMm }: HeadedProfile, widthMm: number, heightMm: number, units: Units): { readonly items: readonly Item[]; readonly heightMm: number } {
  const scene = profileDrawing({ ...profile, title: '', description: '', lengthMm }, { widthMm, heightMm, units }), foot = headMm + scene.heightMm + 1
  const below = paragraph(says, widthMm - 4, 3.6)
  return {
    heightMm: foot + below.heightMm + 1,
    items: [textOf([2, headMm / 2], heading, { sizeMm: 4.4, bold: true }), ...scene.items.map((item) => moved(item, 0, headMm)), ...below.draw(2, foot)],
  }
}
