import { textBoxOf } from '#drafting/lettering.ts'
import type { Scene } from '#drafting/scene.ts'

/** What is wrong with how a drawing is laid out: lettering off the paper (or in the edge left free) or over other lettering, fields over fields. */
export function faultsOf(scene: Scene, edgeMm = 0): readonly string[] {
  const boxes = scene.items.flatMap((item) => (item.kind === 'text' ? [{ name: item.text, ...textBoxOf(item) }] : []))
  const touch = scene.fields.map(({ name, at: [x, y], widthMm, heightMm }) => ({ name, x0Mm: x - widthMm / 2, x1Mm: x + widthMm / 2, y0Mm: y - heightMm / 2, y1Mm: y + heightMm / 2 }))
  const free = edgeMm - 0.01
  return [boxes, touch].flatMap((kind) => kind.flatMap((box, index) => [
    ...(box.x0Mm < free || box.x1Mm > scene.widthMm - free || box.y0Mm < free || box.y1Mm > scene.heightMm - free ? [`${box.name} off the paper`] : []),
    ...kind.slice(index + 1).filter((other) => Math.min(box.x1Mm, other.x1Mm) - Math.max(box.x0Mm, other.x0Mm) > 0.01 && Math.min(box.y1Mm, other.y1Mm) - Math.max(box.y0Mm, other.y0Mm) > 0.01)
      .map((other) => `${box.name} over ${other.name}`),
  ]))
}
