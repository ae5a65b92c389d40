import type { Rect } from '#model/part.ts'
import { boxOf, letteringMm, lineOf, pathOf, shapeOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point } from '#drafting/scene.ts'
import { type PictureRoom, type ScaledScene, scaleIn } from '#drafting/setup/scaled-piece.ts'

/** A part on bars on the machine's table, seen from the end and from above; sizes in mm, x along, y across. */
export type TablePictureData = {
  readonly title: string
  readonly description: string
  readonly acrossMm: number
  readonly alongMm: number
  readonly heightMm: number
  /** As they stand; `fouled`: a drill or cut comes too near. `called`: from the longest text to the shortest, the first that has room is drawn. */
  readonly bars: readonly {
    readonly xMm: number; readonly yMm: number; readonly alongMm: number; readonly acrossMm: number
    readonly fouled: boolean; readonly called: readonly string[]
  }[]
  readonly barHeightMm: number
  readonly holes: readonly { readonly xMm: number | null; readonly yMm: number; readonly diameterMm: number; readonly tipMm: number | null }[]
  /** `over`: there is a bar under it. */
  readonly straps: readonly { readonly xMm: number; readonly yMm: number; readonly over: boolean }[]
  readonly table: string
}

/** From the frame of the part to the paper. */
type Placing = (xMm: number, yMm: number) => Point

const edgeMm = 8, labelMm = 5, tableMm = 7, apartMm = 12

/** Section over plan, across level in both, as in the setup; straps are numbered, one beside the bars in danger lines. */
export function tablePicture(data: TablePictureData, room: PictureRoom): ScaledScene {
  const { widthMm, heightMm } = room, { x0Mm, x1Mm, y0Mm, y1Mm } = reachOf(data), up = data.heightMm + data.barHeightMm
  const scale = scaleIn(room, Math.min((widthMm - 2 * edgeMm) / (y1Mm - y0Mm), (heightMm - 2 * edgeMm - labelMm - tableMm - apartMm - 6) / (up + x1Mm - x0Mm)))
  const left = (widthMm - (y1Mm - y0Mm) * scale) / 2, tableY = edgeMm + 6 + up * scale, planTop = tableY + tableMm + apartMm, planBottom = planTop + (x1Mm - x0Mm) * scale
  const inSection = (yMm: number, zMm: number): Point => [left + (yMm - y0Mm) * scale, tableY - zMm * scale]
  const inPlan = (xMm: number, yMm: number): Point => [left + (yMm - y0Mm) * scale, planBottom - (xMm - x0Mm) * scale]
  return {
    title: data.title, description: data.description, widthMm, heightMm: planBottom + labelMm + edgeMm, fields: [], scale,
    items: [...section(data, inSection, { tableY, widthMm }), ...plan(data, inPlan, scale), ...called(data, inPlan, planBottom + labelMm, { scale, widthMm })],
  }
}

/** What part and bars take up in the plan. */
function reachOf({ acrossMm, alongMm, bars }: TablePictureData): Rect {
  return {
    x0Mm: Math.min(0, ...bars.map(({ xMm }) => xMm)), x1Mm: Math.max(alongMm, ...bars.map((bar) => bar.xMm + bar.alongMm)),
    y0Mm: Math.min(0, ...bars.map(({ yMm }) => yMm)), y1Mm: Math.max(acrossMm, ...bars.map((bar) => bar.yMm + bar.acrossMm)),
  }
}

function section(data: TablePictureData, at: (yMm: number, zMm: number) => Point, { tableY, widthMm }: { readonly tableY: number; readonly widthMm: number }): readonly Item[] {
  const { bars, barHeightMm, heightMm, acrossMm, holes } = data
  return [
    boxOf([2, tableY], [widthMm - 2, tableY + tableMm], 'none', 'cut-face-back'), lineOf([2, tableY], [widthMm - 2, tableY], 'outline'),
    boxOf([widthMm / 2 - 13, tableY + 1], [widthMm / 2 + 13, tableY + tableMm - 1], 'none', 'sheet'), textOf([widthMm / 2, tableY + tableMm / 2], data.table, { anchor: 'middle' }),
    boxOf(at(0, barHeightMm), at(acrossMm, barHeightMm + heightMm), 'outline', 'cut-face'),
    ...bars.map((bar) => boxOf(at(bar.yMm, 0), at(bar.yMm + bar.acrossMm, barHeightMm), bar.fouled ? 'danger' : 'bar', bar.fouled ? 'danger' : 'bar')),
    ...holes.flatMap(({ yMm, diameterMm, tipMm }): readonly Item[] => {
      const r = diameterMm / 2, top = barHeightMm + heightMm, foot = tipMm === null ? barHeightMm + heightMm / 2 : barHeightMm
      return [
        shapeOf([at(yMm - r, top), at(yMm + r, top), at(yMm + r, foot), at(yMm - r, foot)], 'thin', 'sheet'),
        ...(tipMm === null ? [] : [pathOf([at(yMm - r, barHeightMm), at(yMm, barHeightMm - tipMm), at(yMm + r, barHeightMm)], 'removal')]),
        lineOf(at(yMm, top + 3), at(yMm, barHeightMm - (tipMm ?? 0) - 1), 'centre'),
      ]
    }),
    ...data.straps.flatMap(({ yMm, over }): readonly Item[] => {
      const [x, y] = at(yMm, barHeightMm + heightMm)
      return [lineOf([x, y - 6], [x, y], over ? 'outline' : 'danger'), pathOf([[x - 1.4, y - 2.4], [x, y], [x + 1.4, y - 2.4]], over ? 'outline' : 'danger')]
    }),
  ]
}

function plan(data: TablePictureData, at: Placing, scale: number): readonly Item[] {
  return [
    ...data.bars.map((bar) => boxOf(at(bar.xMm, bar.yMm), at(bar.xMm + bar.alongMm, bar.yMm + bar.acrossMm), bar.fouled ? 'danger' : 'bar', bar.fouled ? 'danger' : 'bar')),
    boxOf(at(0, 0), at(data.alongMm, data.acrossMm), 'outline', 'none'),
    ...data.holes.flatMap(({ xMm, yMm, diameterMm }): readonly Item[] => {
      const r = diameterMm / 2, past = r + 3 / scale
      if (xMm === null) return [boxOf(at(0, yMm - r), at(data.alongMm, yMm + r), 'hidden', 'none')]
      return [
        { kind: 'circle', centre: at(xMm, yMm), radiusMm: r * scale, line: 'outline', fill: 'none' },
        lineOf(at(xMm, yMm - past), at(xMm, yMm + past), 'centre'), lineOf(at(xMm - past, yMm), at(xMm + past, yMm), 'centre'),
      ]
    }),
    ...data.straps.flatMap(({ xMm, yMm, over }, k): readonly Item[] => {
      const centre = at(xMm, yMm)
      return [
        { kind: 'circle', centre, radiusMm: 3.4, line: over ? 'outline' : 'danger', fill: over ? 'sheet' : 'danger' },
        textOf(centre, shortened(String(k + 1), 6, letteringMm, true), { anchor: 'middle', bold: true, tone: over ? 'ink' : 'danger' }),
      ]
    }),
  ]
}

/** What each bar is called: below the end of one that lies along, in the part beside one that lies across. */
function called({ bars, alongMm, acrossMm }: TablePictureData, at: Placing, below: number, { scale, widthMm }: { readonly scale: number; readonly widthMm: number }): readonly Item[] {
  const middles = bars.map((bar) => at(0, bar.yMm + bar.acrossMm / 2)[0])
  return bars.map((bar, k) => {
    if (bar.acrossMm > bar.alongMm) {
      const inward = bar.xMm + bar.alongMm / 2 < alongMm / 2 ? 1 : -1, [x, y] = at(inward > 0 ? bar.xMm + bar.alongMm : bar.xMm, acrossMm / 4)
      return textOf([x, y - inward * 3], fitting(bar.called, acrossMm * scale * 0.45), { anchor: 'middle' })
    }
    const middle = middles[k]!, toOthers = middles.filter((_, other) => other !== k).map((x) => Math.abs(x - middle))
    const roomMm = Math.min(2 * middle, 2 * (widthMm - middle), ...toOthers) - 2
    return textOf([middle, below], fitting(bar.called, Math.max(0, roomMm)), { anchor: 'middle' })
  })
}

/** The first text that has room, else what there is room for of the last. */
function fitting(texts: readonly string[], roomMm: number): string {
  return texts.find((text) => textWidthMm(text, letteringMm) <= roomMm) ?? shortened(texts.at(-1) ?? '', roomMm, letteringMm)
}
