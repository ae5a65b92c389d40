import type { EndCut, Hole, MilledCut } from '#model/cut.ts'
import type { PictureBar, SetupPicture } from '#drafting/setup/picture.ts'

/** Invented setups for the gallery: every way of standing and kind of cut once. */
const hole = (xMm: number | null, yMm: number, diameterMm: number, more: Partial<Hole> = {}): Hole => ({
  kind: 'hole', xMm, yMm, diameterMm, tool: 'drill', through: true, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4, ...more,
})
const face = (depthMm: number): MilledCut => ({ kind: 'face', depthMm, overJaw: true, runThroughMm: 0.5 })
const end = (side: EndCut['side'], stockMm: number): EndCut => ({ kind: 'end', side, stockMm })

const bar = (label: string, acrossMm: number, upMm: number, lengthMm: number, place: PictureBar['place'], more: Partial<PictureBar> = {}): PictureBar =>
  ({ label, acrossMm, upMm, lengthMm, place, fromMm: 0, fouled: false, ...more })

const vise = { fixedJawHeightMm: 45, movingJawHeightMm: 45, jawWidthMm: 125, openingMm: 150 }

/** Jaws 45, part 38 × 60 × 19, 6 off the top, two 8.5 holes near the fixed jaw: the fixed-side bar stands inboard. */
const inboard: SetupPicture = {
  ...vise, shape: 'block', betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19, hollows: [],
  cuts: [face(6), hole(10, 6, 8.5), hole(50, 6, 8.5)], seatMm: 35,
  bars: [bar('35 C', 6, 35, 150, { xMm: -45, yMm: 10.75 }), bar('35 C', 6, 35, 150, { xMm: -45, yMm: 32 })], gripMm: 10, airMm: 3,
}
const plain: SetupPicture = {
  ...inboard, cuts: [face(6)], bars: [bar('35 C', 6, 35, 150, { xMm: -45, yMm: 0 }), bar('35 C', 6, 35, 150, { xMm: -45, yMm: 32 })],
}

export const pictures = {
  plain,
  inboard,
  short: {
    ...inboard,
    bars: [bar('35 short', 8, 35, 25, { xMm: 17.5, yMm: 0 }), bar('35 short', 8, 35, 25, { xMm: 17.5, yMm: 30 })],
  },
  fouled: { ...inboard, bars: [bar('35 C', 6, 35, 150, { xMm: -45, yMm: 0 }, { fouled: true }), bar('35 C', 6, 35, 150, { xMm: -45, yMm: 32 })] },
  lyingFlat: {
    ...plain, betweenJawsMm: 80, alongJawsMm: 70, heightMm: 45, seatMm: 8, gripMm: 37, airMm: 2,
    bars: [bar('30 B', 30, 8, 150, { xMm: -40, yMm: 0 }), bar('30 B', 30, 8, 150, { xMm: -40, yMm: 50 })],
  },
  stack: {
    ...plain, betweenJawsMm: 60, heightMm: 25, seatMm: 32, gripMm: 13, airMm: 6,
    bars: [
      bar('24 A', 24, 12, 125, { xMm: -32.5, yMm: 0 }), bar('24 A', 24, 12, 125, { xMm: -32.5, yMm: 36 }),
      bar('20 D', 10, 20, 125, { xMm: -32.5, yMm: 7 }, { fromMm: 12 }), bar('20 D', 10, 20, 125, { xMm: -32.5, yMm: 43 }, { fromMm: 12 }),
    ],
  },
  single: {
    ...plain, betweenJawsMm: 14, heightMm: 22, cuts: [face(2)], seatMm: 30, gripMm: 15, airMm: 5, bars: [bar('30 odd', 8, 30, 120, { xMm: -30, yMm: 3 })],
  },
  bed: { ...plain, heightMm: 60, alongJawsMm: 80, betweenJawsMm: 50, seatMm: 0, gripMm: 45, airMm: 9, bars: [] },
  round: {
    ...plain, shape: 'round', betweenJawsMm: 40, heightMm: 40, alongJawsMm: 90, cuts: [face(4)], seatMm: 20, gripMm: 5, airMm: 11,
    bars: [bar('20 A', 10, 20, 150, { xMm: -30, yMm: 15 })],
  },
  slotThrough: {
    ...plain, betweenJawsMm: 60, alongJawsMm: 50, heightMm: 20, seatMm: 35,
    cuts: [{ kind: 'slot', depthMm: 20, overJaw: false, runThroughMm: 0.5, rect: { x0Mm: -5, x1Mm: 55, y0Mm: 25, y1Mm: 35 } }, face(1)], airMm: 9,
    bars: [bar('35 C', 8, 35, 150, { xMm: -50, yMm: 0 }), bar('35 C', 8, 35, 150, { xMm: -50, yMm: 52 })],
  },
  steps: {
    ...plain, betweenJawsMm: 60, alongJawsMm: 80, heightMm: 30, seatMm: 28, gripMm: 17, airMm: -1,
    cuts: [
      face(2), { kind: 'step', depthMm: 14, overJaw: true, runThroughMm: 0.5, rect: { x0Mm: 0, x1Mm: 80, y0Mm: 0, y1Mm: 18 } },
      { kind: 'slot', depthMm: 9, overJaw: false, runThroughMm: 0.5, rect: { x0Mm: 20, x1Mm: 60, y0Mm: 34, y1Mm: 46 } },
    ],
    bars: [bar('28 E', 8, 28, 125, { xMm: -22.5, yMm: 0 }), bar('28 E', 8, 28, 125, { xMm: -22.5, yMm: 52 })],
  },
  endPast: {
    ...plain, betweenJawsMm: 40, alongJawsMm: 160, heightMm: 25, cuts: [end('right', 3), end('left', 2)], seatMm: 30, gripMm: 15, airMm: null,
    bars: [bar('30 F', 6, 30, 150, { xMm: 3, yMm: 0 }), bar('30 F', 6, 30, 150, { xMm: 3, yMm: 34 })],
  },
  hollows: {
    ...plain, betweenJawsMm: 70, alongJawsMm: 90, hollows: [{ x0Mm: 20, x1Mm: 70, y0Mm: 15, y1Mm: 55 }], heightMm: 24, seatMm: 32, gripMm: 13, airMm: 5,
    bars: [bar('32 A', 10, 32, 150, { xMm: -30, yMm: 0 }), bar('32 A', 10, 32, 150, { xMm: -30, yMm: 60 })],
  },
  tools: {
    ...plain, betweenJawsMm: 90, alongJawsMm: 70, heightMm: 30, seatMm: 25, gripMm: 20, airMm: 9, cuts: [
      face(1), hole(20, 20, 12), hole(50, 32, 8, { tool: 'tap', pitchMm: 1.25 }), hole(20, 45, 10, { tool: 'ream' }),
      hole(50, 58, 10, { tool: 'spot', through: false, depthMm: 5 }), hole(20, 70, 16, { tool: 'countersink', through: false, depthMm: 9 }),
      hole(50, 20, 9, { through: false, depthMm: 18 }),
    ],
    bars: [bar('25 B', 8, 25, 150, { xMm: -40, yMm: 0 }), bar('25 B', 8, 25, 150, { xMm: -40, yMm: 82 })],
  },
  intoBed: {
    ...plain, betweenJawsMm: 50, alongJawsMm: 50, heightMm: 50, cuts: [hole(25, 25, 16)], seatMm: 5, gripMm: 40, airMm: null,
    bars: [bar('5 A', 10, 5, 100, { xMm: -25, yMm: 0 }), bar('5 A', 10, 5, 100, { xMm: -25, yMm: 40 })],
  },
  belowJaws: { ...plain, seatMm: 30, gripMm: 15, airMm: -2, bars: [bar('30 B', 6, 30, 150, { xMm: -45, yMm: 0 }), bar('30 B', 6, 30, 150, { xMm: -45, yMm: 32 })] },
  thinPlate: {
    fixedJawHeightMm: 100, movingJawHeightMm: 100, jawWidthMm: 200, openingMm: 250, shape: 'block', betweenJawsMm: 80, alongJawsMm: 120, heightMm: 5, hollows: [],
    cuts: [face(0.5)], seatMm: 97, bars: [bar('97 made', 12, 97, 200, { xMm: -40, yMm: 0 }), bar('97 made', 12, 97, 200, { xMm: -40, yMm: 68 })], gripMm: 3, airMm: 1.5,
  },
  large: {
    fixedJawHeightMm: 60, movingJawHeightMm: 60, jawWidthMm: 160, openingMm: 300, shape: 'block', betweenJawsMm: 150, alongJawsMm: 400, heightMm: 40, hollows: [],
    cuts: [face(3), hole(40, 30, 20), hole(360, 30, 20), hole(40, 120, 20), hole(360, 120, 20)], seatMm: 45, gripMm: 15, airMm: 22,
    bars: [bar('45 long', 12, 45, 200, { xMm: 100, yMm: 0 }), bar('45 long', 12, 45, 200, { xMm: 100, yMm: 138 })],
  },
  manyHoles: {
    ...plain, betweenJawsMm: 100, alongJawsMm: 120, cuts: [face(1), ...Array.from({ length: 20 }, (_, i) => hole(12 + (i % 5) * 24, 16 + Math.floor(i / 5) * 22, 6 + (i % 3)))],
    bars: [bar('35 C', 6, 35, 150, { xMm: -15, yMm: 0 }), bar('35 C', 6, 35, 150, { xMm: -15, yMm: 94 })], gripMm: 10, airMm: 8,
  },
  twoNumbers: { ...plain, betweenJawsMm: null, alongJawsMm: null, bars: plain.bars.map((one) => ({ ...one, place: null })) },
  nothingGiven: { ...plain, betweenJawsMm: null, alongJawsMm: null, heightMm: null, seatMm: null, bars: [], gripMm: null, airMm: null, cuts: [] },
  holeAnywhere: { ...plain, cuts: [face(6), hole(null, 19, 10), null] },
  unevenJaws: { ...plain, movingJawHeightMm: 40, gripMm: 5, cuts: [face(6)] },
  inches: {
    fixedJawHeightMm: 44.45, movingJawHeightMm: 44.45, jawWidthMm: 101.6, openingMm: 101.6, shape: 'block', betweenJawsMm: 50.8, alongJawsMm: 76.2, heightMm: 22.225, hollows: [],
    cuts: [face(3), hole(12.7, 12.7, 9.525), hole(63.5, 12.7, 9.525)], seatMm: 28.575, gripMm: 15.875, airMm: 3.35,
    bars: [bar('1 1/8', 6.35, 28.575, 152.4, { xMm: -38.1, yMm: 0 }), bar('1 1/8', 6.35, 28.575, 152.4, { xMm: -38.1, yMm: 44.45 })],
  },
} satisfies { readonly [name: string]: SetupPicture }
