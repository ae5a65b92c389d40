import type { MilledCut } from '#model/cut.ts'
import { boxOf, lineOf, shapeOf } from '#drafting/items.ts'
import type { Item, Point } from '#drafting/scene.ts'
import { circlePoints, clipped } from '#drafting/setup/clip.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { cutsThrough, runsFullLength, type Shown } from '#drafting/setup/shown.ts'

/** A stretch across the part over which it is milled to one depth below its raw top. */
type Stretch = { readonly fromMm: number; readonly toMm: number; readonly depthMm: number }

/** The part from its end: what is left of it, what is milled off in removal dashes, hollows and hidden cuts. */
export function partSection(shown: Shown, frame: Frame): readonly Item[] {
  return shown.picture.shape === 'round' ? roundPart(shown, frame) : blockPart(shown, frame)
}

function blockPart(shown: Shown, frame: Frame): readonly Item[] {
  const { seatMm, heightMm } = shown
  const at = (yMm: number, zMm: number): Point => frame.inSection(yMm, seatMm + zMm)
  const stretches = stretchesOf(shown)
  return [
    ...stretches.filter((s) => s.depthMm > 0).map((s) => boxOf(at(s.fromMm, heightMm), at(s.toMm, heightMm - s.depthMm), 'none', 'removal')),
    ...runsOf(stretches, (s) => s.depthMm > 0).map((run) => shapeOf(profile(run, (s) => heightMm - s.depthMm, heightMm).map(([y, z]) => at(y, z)), 'removal', 'none')),
    ...runsOf(stretches, (s) => s.depthMm < heightMm).map((run) =>
      shapeOf(profile(run, (s) => heightMm - s.depthMm, 0).map(([y, z]) => at(y, z)), shown.openInSection ? 'hidden' : 'outline', 'sheet')),
    ...shown.milled.flatMap((cut) => hiddenCut(cut, shown, at)),
    ...hollowEdges(shown, frame, at),
  ]
}

/** What stays of a round part below its flat, the whole round in dashes. */
function roundPart(shown: Shown, frame: Frame): readonly Item[] {
  const r = shown.heightMm / 2, [x, y] = frame.inSection(shown.betweenMm / 2, shown.seatMm + r), paperR = r * frame.scale
  const line = shown.openInSection ? 'hidden' : 'outline'
  const depth = Math.min(shown.heightMm, Math.max(0, ...shown.milled.map((cut) => cut.depthMm)))
  const axis: readonly Item[] = [
    lineOf([x, y - paperR - 4], [x, y + paperR + 3], 'centre'),
    // The line of contact with the jaws, run on into both.
    lineOf([x - paperR - 6, y], [x + paperR + 6, y], 'centre'),
  ]
  if (depth === 0) return [{ kind: 'circle', centre: [x, y], radiusMm: paperR, line, fill: 'sheet' }, ...axis]
  const round = circlePoints([x, y], paperR), flat = y - paperR + depth * frame.scale
  const off = clipped(round, flat, 'below'), left = clipped(round, flat, 'above')
  return [
    ...(off.length > 0 ? [shapeOf(off, 'removal', 'removal')] : []),
    ...(left.length > 0 ? [shapeOf(left, line, 'sheet')] : []),
    ...axis,
  ]
}

/** Depth milled off from jaw to jaw, by stretches; cuts that do not run over the whole length leave the outline alone. */
function stretchesOf(shown: Shown): readonly Stretch[] {
  const { betweenMm, heightMm, faceMm } = shown
  const seen = shown.milled.flatMap((cut) => (cut.rect && runsFullLength(cut.rect, shown.alongMm) ? [{ cut, rect: cut.rect }] : []))
  const edges = [0, betweenMm, ...seen.flatMap(({ rect }) => [rect.y0Mm, rect.y1Mm])].filter((y) => y >= 0 && y <= betweenMm).toSorted((a, b) => a - b)
  return edges.slice(1).flatMap((toMm, index): readonly Stretch[] => {
    const fromMm = edges[index]!
    if (toMm - fromMm < 1e-9) return []
    const over = seen.filter(({ rect }) => rect.y0Mm <= fromMm && rect.y1Mm >= toMm).map(({ cut }) => (cutsThrough(cut, heightMm) ? heightMm : cut.depthMm))
    return [{ fromMm, toMm, depthMm: Math.min(heightMm, Math.max(faceMm, ...over)) }]
  })
}

function runsOf(stretches: readonly Stretch[], wanted: (stretch: Stretch) => boolean): readonly (readonly Stretch[])[] {
  const runs: Stretch[][] = []
  let open: Stretch[] | null = null
  for (const stretch of stretches) {
    if (!wanted(stretch)) { open = null; continue }
    if (open === null) { open = []; runs.push(open) }
    open.push(stretch)
  }
  return runs
}

function profile(run: readonly Stretch[], level: (stretch: Stretch) => number, baseMm: number): readonly Point[] {
  const steps = run.flatMap((s): readonly Point[] => [[s.fromMm, level(s)], [s.toMm, level(s)]])
  return [[run[0]!.fromMm, baseMm], ...steps, [run.at(-1)!.toMm, baseMm]]
}

/** A cut inside the length, a through cut's run below the part, or the mere level of a cut that nobody placed. */
function hiddenCut(cut: MilledCut, shown: Shown, at: (yMm: number, zMm: number) => Point): readonly Item[] {
  const { heightMm, betweenMm, faceMm } = shown
  const through = cutsThrough(cut, heightMm), bottomMm = through ? -cut.runThroughMm : heightMm - cut.depthMm
  if (!cut.rect) {
    const levelsAlone = cut.kind !== 'face' && (cut.depthMm > faceMm || through)
    return levelsAlone ? [lineOf(at(0, Math.max(0, bottomMm)), at(betweenMm, Math.max(0, bottomMm)), 'removal')] : []
  }
  const y0 = Math.max(0, cut.rect.y0Mm), y1 = Math.min(betweenMm, cut.rect.y1Mm)
  if (y1 <= y0) return []
  if (runsFullLength(cut.rect, shown.alongMm)) return through ? [boxOf(at(y0, 0), at(y1, bottomMm), 'removal', 'none')] : []
  return cut.depthMm > faceMm || through ? [boxOf(at(y0, heightMm - faceMm), at(y1, bottomMm), 'removal', 'removal')] : []
}

/** Where the underside is away: how deep, nobody asked, so a shallow hidden edge. */
function hollowEdges(shown: Shown, frame: Frame, at: (yMm: number, zMm: number) => Point): readonly Item[] {
  const upMm = Math.min(3 / frame.scale, shown.heightMm * 0.4)
  return shown.picture.hollows.flatMap((rect): readonly Item[] => {
    const y0 = Math.max(0, rect.y0Mm), y1 = Math.min(shown.betweenMm, rect.y1Mm)
    return y1 <= y0 ? [] : [boxOf(at(y0, 0), at(y1, upMm), 'hidden', 'none')]
  })
}
