import { letteringMm, textOf } from '#drafting/items.ts'
import type { Item } from '#drafting/scene.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { extension, sizeText } from '#drafting/setup/said.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import type { Shown } from '#drafting/setup/shown.ts'

type Options = Pick<SheetOptions, 'units' | 'words'>

export const gripText = ({ picture }: Shown, { units, words }: Options): string => (picture.gripMm === null ? '' : `${words.grip} ${sizeText(picture.gripMm, units)}`)
export const airText = ({ picture }: Shown, { units, words }: Options): string => (picture.airMm === null ? '' : `${words.air} ${sizeText(picture.airMm, units)}`)

/** Air is counted from the higher jaw: on the right only where that is the moving one. */
export const airOnRight = ({ picture }: Shown): boolean => picture.movingJawHeightMm > picture.fixedJawHeightMm

/** Beyond the jaws' outer sides: clear of what of the bed is drawn. */
const besideMm = 5.5

/** Grip and air, which follow from the rest: their lines beside the jaws they are counted from, lettered in bar blue. */
export function derivedSizes(shown: Shown, frame: Frame, options: Options): readonly Item[] {
  return [...grip(shown, frame, options), ...air(shown, frame, options)]
}

/** From the seat, or a round part's line of contact, up to the lower jaw. */
function grip(shown: Shown, { inSection, jawMm, scale }: Frame, options: Options): readonly Item[] {
  const { picture, seatMm, heightMm, betweenMm } = shown
  if (picture.gripMm === null || picture.gripMm <= 0) return []
  const fromMm = picture.shape === 'round' ? seatMm + heightMm / 2 : seatMm
  const outerX = inSection(betweenMm, 0)[0] + jawMm, x = outerX + besideMm
  const bottom = inSection(0, fromMm)[1], top = inSection(0, fromMm + picture.gripMm)[1]
  const roomy = picture.gripMm * scale >= 6
  return [
    extension([inSection(betweenMm, 0)[0], top], [x + 1.5, top]),
    extension([inSection(betweenMm, 0)[0], bottom], [x + 1.5, bottom]),
    { kind: 'dimension', from: [x, top], to: [x, bottom], arrows: roomy ? 'inside' : 'outside', gap: null, tail: null, tone: 'thin' },
    textOf([x + 1.5, roomy ? (top + bottom) / 2 : bottom + 3], gripText(shown, options), { bold: true, tone: 'bar', sizeMm: letteringMm }),
  ]
}

/** From the higher jaw up to the cutter; in danger where the cutter is below it. */
function air(shown: Shown, { inSection, jawMm }: Frame, options: Options): readonly Item[] {
  const { picture, betweenMm } = shown
  if (picture.airMm === null) return []
  const onRight = airOnRight(shown), away = onRight ? 1 : -1
  const jawHeightMm = Math.max(picture.fixedJawHeightMm, picture.movingJawHeightMm)
  const outerX = onRight ? inSection(betweenMm, 0)[0] + jawMm : inSection(0, 0)[0] - jawMm
  const x = outerX + away * (onRight ? besideMm : 3.5)
  const jawY = inSection(0, jawHeightMm)[1], cutterY = inSection(0, jawHeightMm + picture.airMm)[1]
  const tone = picture.airMm < 0 ? 'danger' : 'bar'
  const said = textOf([x + away * 1.5, Math.min((jawY + cutterY) / 2, jawY - 2.8)], airText(shown, options), { bold: true, tone, anchor: onRight ? 'start' : 'end' })
  if (Math.abs(picture.airMm) < 1e-6) return [said]
  return [
    extension([outerX, jawY], [x + away, jawY]),
    extension([outerX, cutterY], [x + away, cutterY]),
    {
      kind: 'dimension', from: [x, Math.min(jawY, cutterY)], to: [x, Math.max(jawY, cutterY)],
      arrows: Math.abs(cutterY - jawY) < 6 ? 'outside' : 'inside', gap: null, tail: null, tone: tone === 'danger' ? 'danger' : 'thin',
    },
    said,
  ]
}
