import { letteringMm, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import type { Item } from '#drafting/scene.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { sizeText } from '#drafting/setup/said.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import type { Shown } from '#drafting/setup/shown.ts'

const apartMm = 2

/** Which jaw is which, under the section between two points of the paper; with its height where the two differ. */
export function jawNames(
  { picture, betweenMm }: Shown, { inSection, sectionEndMm }: Frame, { units, words }: SheetOptions, belowMm: number, [fromMm, toMm]: readonly [number, number],
): readonly Item[] {
  const differ = picture.fixedJawHeightMm !== picture.movingJawHeightMm
  const named = (name: string, heightMm: number): string => (differ ? `${name} ${sizeText(heightMm, units)}` : name)
  const full = [named(words.fixedJaw, picture.fixedJawHeightMm), named(words.movingJaw, picture.movingJawHeightMm)] as const
  const room = toMm - fromMm - apartMm, needed = full.reduce((sum, name) => sum + textWidthMm(name, letteringMm), 0)
  const [fixed, moving] = full.map((name) => shortened(name, Math.max(textWidthMm(name, letteringMm) * Math.min(1, room / needed), 4), letteringMm)) as [string, string]
  const y = sectionEndMm + 2.9 + belowMm
  const fixedMm = textWidthMm(fixed, letteringMm), movingMm = textWidthMm(moving, letteringMm)
  // Each at its jaw, both pushed in from the ends of the row, the fixed one last.
  const movingX = Math.max(fromMm + fixedMm + apartMm, Math.min(toMm - movingMm, inSection(betweenMm, 0)[0]))
  const fixedX = Math.min(movingX - apartMm - fixedMm, Math.max(fromMm, inSection(0, 0)[0] - fixedMm))
  return [textOf([fixedX, y], fixed, { tone: 'thin' }), textOf([movingX, y], moving, { tone: 'thin' })]
}
