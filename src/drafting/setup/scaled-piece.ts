import { textOf } from '#drafting/items.ts'
import { drawingPiece } from '#drafting/pieces.ts'
import type { Laid } from '#drafting/paragraph.ts'
import type { Scene } from '#drafting/scene.ts'
import { scaleBelow, scaleName, type ScaleSeries } from '#drafting/setup/frame.ts'

/** A picture with the scale it came out at, paper over part. */
export type ScaledScene = Scene & { readonly scale: number }

/** Room for a picture. `standard`: to a scale of the standard series, as on prints; left out: as large as fits. */
export type PictureRoom = { readonly widthMm: number; readonly heightMm: number; readonly scales?: Extract<ScaleSeries, 'standard'> }

/** The scale at which it fits. */
export const scaleIn = ({ scales }: PictureRoom, mostScale: number): number => (scales === undefined ? mostScale : scaleBelow(mostScale, scales))

/** A picture as a piece of a sheet, with its scale under it: `Scale 1 : 2`. */
export function scaledPiece(scene: ScaledScene, called: string): readonly Laid[] {
  return [drawingPiece(scene), { heightMm: 5, draw: (x, y) => [textOf([x, y + 1], `${called} ${scaleName(scene.scale)}`, { tone: 'thin' })] }]
}

/** mm. Heights for a picture on a sheet, tried from the largest. */
const uprightsMm = [170, 155, 140, 125, 110, 95]

/** The pages with the picture as large as leaves all on one; where nothing does, with the smallest. */
export function onOnePage(pagesWith: (pictureMm: number) => readonly Scene[]): readonly Scene[] {
  const [first, ...smaller] = uprightsMm
  return smaller.reduce((pages, mm) => (pages.length === 1 ? pages : pagesWith(mm)), pagesWith(first!))
}
