import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** One holding of a six-side block, seen along the jaws; faces by their letters. */
export type BlockStepData = {
  readonly title: string
  readonly description: string
  readonly betweenMm: number
  readonly heightMm: number
  readonly seatMm: number
  readonly jawMm: number
  /** What comes off the top; 0 where an end is cut beside the jaws. */
  readonly offTopMm: number
  readonly up: string
  readonly down: string
  readonly fixed: string
  readonly moving: string
  readonly rod: boolean
}

const jawWideMm = 8, bedMm = 5

/** Fixed jaw left, to scale; a rod between the moving jaw and the block is drawn, not measured. */
export function blockStep(data: BlockStepData, { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }): Scene {
  const rodMm = data.rod ? 5 : 0, upMm = Math.max(data.seatMm + data.heightMm, data.jawMm)
  const scale = Math.min((widthMm - 2 * jawWideMm - rodMm - 4) / data.betweenMm, (heightMm - bedMm - 8) / upMm)
  const wide = data.betweenMm * scale, x0 = (widthMm - wide - rodMm) / 2, x1 = x0 + wide, bed = heightMm - bedMm, z = (mm: number): number => bed - mm * scale
  const jawTop = z(data.jawMm), bottom = z(data.seatMm), top = z(data.seatMm + data.heightMm), middle = (top + bottom) / 2, gripY = (Math.max(jawTop, top) + bottom) / 2
  const bar = Math.min(6, wide / 4), apart = wide < 14 ? 3 : 0
  const letter = (x: number, y: number, text: string): Item => textOf([x, y], text, { anchor: 'middle', bold: true, sizeMm: 4.2 })
  return {
    title: data.title, description: data.description, widthMm, heightMm, fields: [],
    items: [
      boxOf([x0 - jawWideMm, bed], [x1 + rodMm + jawWideMm, bed + bedMm], 'outline', 'cut-face-back'),
      boxOf([x0 - jawWideMm, jawTop], [x0, bed], 'outline', 'cut-face-back'), boxOf([x1 + rodMm, jawTop], [x1 + rodMm + jawWideMm, bed], 'outline', 'cut-face-back'),
      ...(data.seatMm > 0 ? [boxOf([x0, bottom], [x0 + bar, bed], 'bar', 'bar'), boxOf([x1 - bar, bottom], [x1, bed], 'bar', 'bar')] : []),
      boxOf([x0, top], [x1, bottom], 'outline', 'sheet'),
      ...(data.offTopMm > 0 ? [boxOf([x0, top], [x1, top + Math.max(0.8, data.offTopMm * scale)], 'removal', 'removal')] : []),
      ...(data.rod ? [{ kind: 'circle', centre: [x1 + rodMm / 2, gripY], radiusMm: rodMm / 2, line: 'outline', fill: 'cut-face' } as const] : []),
      letter((x0 + x1) / 2, top + 5, data.up), letter((x0 + x1) / 2, bottom - 3.4, data.down),
      letter(x0 + 3.6, middle - apart, data.fixed), letter(x1 - 3.6, middle + apart, data.moving),
      lineOf([x0 - jawWideMm, bed + bedMm], [x1 + rodMm + jawWideMm, bed + bedMm], 'outline'),
    ],
  }
}
