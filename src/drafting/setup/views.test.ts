import { describe, expect, test } from 'vitest'
import type { Hole } from '#model/cut.ts'
import { pictures } from '#drafting/gallery/pictures.ts'
import type { Item, Point, ShapeItem } from '#drafting/scene.ts'
import { circlePoints, clipped } from '#drafting/setup/clip.ts'
import { frameFor, scaleName } from '#drafting/setup/frame.ts'
import { holeDepths, holeEdges } from '#drafting/setup/hole-shape.ts'
import type { SetupPicture } from '#drafting/setup/picture.ts'
import { planItems } from '#drafting/setup/plan.ts'
import { sectionItems } from '#drafting/setup/section.ts'
import { shownOf } from '#drafting/setup/shown.ts'

const drill: Hole = { kind: 'hole', xMm: 10, yMm: 6, diameterMm: 16, tool: 'drill', through: true, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4 }
const margins = { leftMm: 20, rightMm: 20, topMm: 10, bottomMm: 10, labelsMm: 5, overhangMm: 6, bedPastMm: 3 }

/** The views of a picture with the way back from the paper to sizes of the part. */
function viewsOf(picture: SetupPicture) {
  const shown = shownOf(picture), frame = frameFor(shown, 160, 180, margins, 'both', 'fitted')
  const [x0, bedY] = frame.inSection(0, 0), [, planY] = frame.inPlan(0, 0)
  const rounded = (mm: number) => Math.round(mm * 1e6) / 1e6 + 0
  return {
    section: sectionItems(shown, frame), plan: planItems(shown, frame), frame,
    inVise: (points: readonly Point[]) => points.map(([x, y]) => [rounded((x - x0) / frame.scale), rounded((bedY - y) / frame.scale)]),
    onPart: ([x, y]: Point) => [rounded((planY - y) / frame.scale), rounded((x - x0) / frame.scale)],
  }
}
const shapes = (items: readonly Item[], line: ShapeItem['line'], fill?: ShapeItem['fill']): readonly ShapeItem[] =>
  items.filter((item): item is ShapeItem => item.kind === 'shape' && item.line === line && (fill === undefined || item.fill === fill))

describe('holes from the side', () => {
  test('a 118° point is 0.3 of the diameter long, and stands below the run-through', () => {
    // 0.3 × diameter is the workshop rule for 118° points (common practice, no source); 8 / tan 59° = 4.806885 by geometry.
    const { fullMm, tipMm } = holeDepths(drill, 50)
    expect(fullMm).toBe(-1.5)
    expect(tipMm).toBeCloseTo(-6.306885, 5)
    expect((fullMm - tipMm) / 16).toBeCloseTo(0.3, 2)
  })

  test('taps end in their lead, reamers square, spots in a point at their depth, flat drills nowhere', () => {
    expect(holeDepths({ ...drill, tool: 'tap', pitchMm: 1.25 }, 20).tipMm).toBe(-1.5 - 5)
    expect(holeDepths({ ...drill, tool: 'ream' }, 20).tipMm).toBe(-3.5)
    expect(holeDepths({ ...drill, tool: 'spot', through: false, depthMm: 4 }, 20)).toEqual({ fullMm: 16, tipMm: 16 })
    expect(holeDepths({ ...drill, pointAngleDeg: 180 }, 20).tipMm).toBe(-1.5)
    expect(holeEdges({ ...drill, tool: 'spot', through: false, depthMm: 4 }, 20, 19)).toEqual([[[-8, 19], [0, 16], [8, 19]]])
    // What is milled off again is not drawn.
    expect(holeEdges({ ...drill, tool: 'spot', through: false, depthMm: 4 }, 20, 15)).toEqual([])
  })
})

describe('the section', () => {
  test('leaves of the part what the face and the step leave, and dashes the rest', () => {
    const { section, inVise } = viewsOf(pictures.steps)
    // 60 × 30 on a seat of 28: face 2 all over, step 14 deep from the fixed jaw to 18.
    expect(shapes(section, 'outline', 'sheet').map(({ points }) => inVise(points))).toContainEqual([[0, 28], [0, 44], [18, 44], [18, 56], [60, 56], [60, 28]])
    expect(shapes(section, 'removal', 'none').map(({ points }) => inVise(points))).toContainEqual([[0, 58], [0, 44], [18, 44], [18, 56], [60, 56], [60, 58]])
  })

  test('parts the block where a slot goes through', () => {
    const { section, inVise } = viewsOf(pictures.slotThrough)
    const left = shapes(section, 'outline', 'sheet').map(({ points }) => inVise(points)).map((points) => [Math.min(...points.map(([y]) => y!)), Math.max(...points.map(([y]) => y!))])
    expect(left).toEqual([[0, 25], [35, 60]])
  })

  test('marks the jaws above the cutter, and what of a drill goes into the bed', () => {
    const below = viewsOf(pictures.belowJaws), danger = shapes(below.section, 'danger', 'danger').map(({ points }) => below.inVise(points))
    // Seat 30, part 19, 6 off: the cutter runs at 43, the jaws are 45.
    expect(danger.map((points) => [Math.min(...points.map(([, z]) => z!)), Math.max(...points.map(([, z]) => z!))])).toEqual([[43, 45], [43, 45]])
    const bed = viewsOf(pictures.intoBed), tip = shapes(bed.section, 'danger', 'danger').flatMap(({ points }) => bed.inVise(points)).map(([, z]) => z!)
    // A 16 drill on a seat of 5: 5 − 6.306885.
    expect(Math.min(...tip)).toBeCloseTo(-1.306885, 5)
    expect(Math.max(...tip)).toBe(0)
    expect(shapes(viewsOf(pictures.inboard).section, 'danger')).toEqual([])
  })

  test('holds a round part along the line through its middle', () => {
    const { section, frame } = viewsOf(pictures.round), contactY = frame.inSection(0, 20 + 40 / 2)[1]
    expect(section.some((item) => item.kind === 'line' && item.line === 'centre' && Math.abs(item.from[1] - contactY) < 1e-9 && Math.abs(item.to[1] - contactY) < 1e-9)).toBe(true)
  })

  test('draws an unknown part as open', () => {
    expect(shapes(viewsOf(pictures.nothingGiven).section, 'hidden', 'sheet')).toHaveLength(1)
    expect(shapes(viewsOf(pictures.plain).section, 'hidden', 'sheet')).toEqual([])
  })
})

describe('the plan', () => {
  test('has the left end at the bottom and the fixed jaw on the left, holes where they are', () => {
    const { plan, onPart, frame } = viewsOf(pictures.inboard)
    expect(frame.inPlan(0, 0)[1]).toBeGreaterThan(frame.inPlan(60, 0)[1])
    expect(frame.inPlan(0, 0)[0]).toBe(frame.inSection(0, 0)[0])
    expect(plan.flatMap((item) => (item.kind === 'circle' ? [[...onPart(item.centre), item.radiusMm / frame.scale]] : []))).toEqual([[10, 6, 4.25], [50, 6, 4.25]])
  })

  test('draws short bars whole, and cuts long ones where they leave the paper kept for them', () => {
    const short = viewsOf(pictures.short), long = viewsOf(pictures.inboard)
    expect(shapes(short.plan, 'bar', 'bar').map(({ points }) => short.onPart(points[0]!))).toEqual([[17.5, 0], [17.5, 30]])
    expect(shapes(long.plan, 'bar', 'bar')).toEqual([])
    expect(shapes(long.plan, 'none', 'bar')).toHaveLength(2)
  })

  test('shows where a hole may be whose place along nobody gave', () => {
    const { plan, onPart } = viewsOf(pictures.holeAnywhere)
    expect(shapes(plan, 'hidden', 'none').map(({ points }) => points.map(onPart))).toContainEqual([[0, 14], [0, 24], [60, 24], [60, 14]])
  })
})

test('scales are called by their names', () => {
  expect([1, 0.5, 0.4, 0.2, 2, 0.01].map(scaleName)).toEqual(['1 : 1', '1 : 2', '1 : 2.5', '1 : 5', '2 : 1', '1 : 100'])
})

test('a shape is clipped at a level, and nothing is left where all of it is beyond', () => {
  expect(clipped([[0, 0], [4, 0], [4, 4], [0, 4]], 1, 'below')).toEqual([[0, 1], [0, 0], [4, 0], [4, 1]])
  expect(clipped([[0, 0], [4, 0], [4, 4], [0, 4]], -1, 'below')).toEqual([])
  expect(clipped(circlePoints([0, 0], 5), 0, 'above').every(([, v]) => v >= 0)).toBe(true)
})
