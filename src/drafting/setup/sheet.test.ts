import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Cut } from '#model/cut.ts'
import type { Units } from '#model/shop-record.ts'
import { pictures } from '#drafting/gallery/pictures.ts'
import { type Box, textBoxOf } from '#drafting/lettering.ts'
import type { FieldSpot, Item, Scene, ShapeItem, TextItem } from '#drafting/scene.ts'
import type { SetupPicture } from '#drafting/setup/picture.ts'
import { fieldSeenMm } from '#drafting/setup/said.ts'
import { setupSheetDrawing } from '#drafting/setup/sheet.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'

const units: Units = { length: 'mm', decimalMark: '.', words: 'US' }
const words = sheetWords('Setup', 'Section and plan', 'US')
const paper = { units, words }
const papers: { readonly [name: string]: SheetOptions } = {
  tablet: { ...paper, widthMm: 164, heightMm: 187 },
  'low tablet': { ...paper, widthMm: 164, heightMm: 140 },
  'wide phone': { ...paper, widthMm: 95, heightMm: 187 },
  'phone section': { ...paper, widthMm: 95, heightMm: 62, fields: 'none' },
  print: { ...paper, widthMm: 125, heightMm: 160, fields: 'none', scales: 'standard' },
  inches: { ...paper, units: { ...units, length: 'in' }, widthMm: 180, heightMm: 150, fields: 'none' },
}

describe('the drawing of a setup', () => {
  for (const [name, options] of Object.entries(papers)) {
    test(`keeps its lettering and fields apart and on the sheet: gallery, ${name}`, () => {
      for (const [which, picture] of Object.entries(pictures)) {
        expect(faultsOf(setupSheetDrawing(picture, options)), which).toEqual([])
      }
    })

    test(`keeps its lettering and fields apart and on the sheet: anything, ${name}`, () => {
      fc.assert(fc.property(anyPicture, (picture) => { expect(faultsOf(setupSheetDrawing(picture, options))).toEqual([]) }), { numRuns: 200, seed: 7 })
    })
  }

  test('shows the marked end of each bar where asked: one sign in each, its tip at the left end, which is at the bottom', () => {
    fc.assert(fc.property(anyPicture, (picture) => {
      const plain = setupSheetDrawing(picture, papers['print']!), marked = setupSheetDrawing(picture, { ...papers['print']!, markedEnds: true })
      const signs = marked.items.filter((item): item is ShapeItem => item.kind === 'shape' && item.fill === 'ink')
      expect(plain.items.filter((item) => item.kind === 'shape' && item.fill === 'ink')).toEqual([])
      expect(marked.items.filter((item) => !signs.includes(item as ShapeItem))).toEqual(plain.items)
      const bars = plain.items.filter((item): item is ShapeItem => item.kind === 'shape' && (item.fill === 'bar' || item.fill === 'danger'))
      for (const { points: [one, other, tip] } of signs) {
        expect(tip![1]).toBeGreaterThan(Math.max(one![1], other![1]))
        expect(bars.some(({ points }) => [one!, other!].every(([x]) => x >= Math.min(...points.map(([px]) => px)) - 1e-6 && x <= Math.max(...points.map(([px]) => px)) + 1e-6) && Math.abs(Math.max(...points.map(([, py]) => py)) - tip![1]) < 1)).toBe(true)
      }
    }), { numRuns: 100, seed: 7 })
    expect(setupSheetDrawing(pictures.inboard, { ...papers['print']!, markedEnds: true }).items.filter((item) => item.kind === 'shape' && item.fill === 'ink')).toHaveLength(2)
  })

  test('is true to its scale in both views', () => {
    fc.assert(fc.property(anyPicture, (picture) => {
      const sheet = setupSheetDrawing(picture, papers['tablet']!)
      const drawn = lengths(sheet).map((mm) => mm / sheet.scale)
      const wanted = [picture.fixedJawHeightMm, picture.heightMm, picture.alongJawsMm, ...(picture.shape === 'round' ? [] : [picture.betweenJawsMm])]
      for (const mm of wanted.filter((size) => size !== null)) expect(drawn.some((length) => Math.abs(length - mm) < 1e-6), `${mm} of ${drawn.join(' ')}`).toBe(true)
    }), { numRuns: 100, seed: 3 })
  })

  test('the 19 of a 19 high part measures 19 times the scale', () => {
    const sheet = setupSheetDrawing(pictures.inboard, papers['print']!)
    expect(sheet.scaleName).toBe('1 : 1')
    expect(lengths(sheet)).toContainEqual(expect.closeTo(19, 9))
    expect(lengths(sheet)).toContainEqual(expect.closeTo(6, 9))
  })

  test('shows every bar in both views at one place across, and says its label', () => {
    fc.assert(fc.property(anyPicture, (picture) => {
      const sheet = setupSheetDrawing(picture, papers['tablet']!), x0 = fixedJawX(sheet)
      for (const bar of picture.bars.filter(({ place }) => place !== null)) {
        const left = x0 + bar.place!.yMm * sheet.scale, right = left + bar.acrossMm * sheet.scale
        const seen = sheet.items.filter((item): item is ShapeItem => item.kind === 'shape' && item.fill === (bar.fouled ? 'danger' : 'bar'))
          .filter(({ points }) => near(Math.min(...points.map(([x]) => x)), left) && near(Math.max(...points.map(([x]) => x)), right))
        expect(seen.length).toBeGreaterThanOrEqual(2)
        expect(texts(sheet.items).some(({ text }) => text === bar.label || (text.endsWith('…') && bar.label.startsWith(text.slice(0, -1).trim())))).toBe(true)
      }
    }), { numRuns: 100, seed: 5 })
  })

  test('has a field for each size and cut while there is room, and none as lettering', () => {
    const names = (picture: SetupPicture, options: SheetOptions) => setupSheetDrawing(picture, options).fields.map(({ name }) => name).toSorted()
    expect(names(pictures.inboard, papers['tablet']!)).toEqual(['addCut', 'along', 'between', 'cuts[0]', 'cuts[1]', 'height', 'jaw', 'offTop'])
    expect(names(pictures.round, papers['tablet']!)).toEqual(['addCut', 'along', 'height', 'jaw', 'offTop'])
    // A cut that is still being typed keeps its field although nothing of it is drawn.
    expect(names(pictures.holeAnywhere, papers['tablet']!)).toEqual(['addCut', 'along', 'between', 'cuts[0]', 'cuts[1]', 'height', 'jaw', 'offTop'])
    expect(names(pictures.inboard, papers['print']!)).toEqual([])
  })

  test('letters the sizes where there are no fields, and what is not known as ?', () => {
    const said = (picture: SetupPicture) => texts(setupSheetDrawing(picture, papers['print']!).items).map(({ text }) => text)
    expect(said(pictures.inboard)).toEqual(expect.arrayContaining(['45', '19', '6', '38', '60', 'grip 10', 'clear 3', '2 × Ø8.5']))
    expect(said(pictures.nothingGiven).filter((text) => text === '?')).toHaveLength(3)
    expect(said({ ...pictures.inboard, betweenJawsMm: 38.25 })).toContain('38.25')
  })
})

const anyLength = (min: number, max: number) => fc.integer({ min: min * 4, max: max * 4 }).map((quarters) => quarters / 4)

const share = fc.double({ min: 0, max: 1, noNaN: true })

type Other = { readonly kind: 'step' | 'slot' | 'end' | 'typed'; readonly a: number; readonly b: number; readonly c: number; readonly d: number; readonly placed: boolean; readonly depth: number }

function anyCut({ kind, a, b, c, d, placed, depth }: Other, along: number, across: number, height: number): Cut | null {
  if (kind === 'typed') return null
  if (kind === 'end') return { kind, side: a < 0.5 ? 'left' : 'right', stockMm: depth * along * 0.2 }
  const rect = { x0Mm: Math.min(a, b) * along * 1.4 - along * 0.2, x1Mm: Math.max(a, b) * along * 1.4 - along * 0.2 + 1, y0Mm: Math.min(c, d) * across, y1Mm: Math.max(c, d) * across + 1 }
  return { kind, depthMm: depth * height, overJaw: a < 0.3, runThroughMm: 0.5, ...(placed ? { rect } : {}) }
}

const anyPicture: fc.Arbitrary<SetupPicture> = fc.record({
  jaw: anyLength(20, 100), lower: fc.constantFrom(0, 0, 5), jawWidth: fc.option(anyLength(60, 200)), round: fc.boolean(),
  between: fc.option(anyLength(5, 200), { freq: 8 }), along: fc.option(anyLength(10, 400), { freq: 8 }), height: anyLength(3, 120),
  seat: fc.option(share, { freq: 8 }), face: anyLength(0, 3), holes: fc.array(fc.tuple(share, share, anyLength(1, 20)), { maxLength: 12 }),
  thick: anyLength(2, 20), standing: fc.constantFrom('none', 'single', 'pair', 'stack', 'open'), fouled: fc.boolean(), labels: fc.tuple(fc.constantFrom('35 C', '1 1/8', '22.225 left over from the lathe', 'A'), fc.constantFrom('35 C', '35 D')), filled: fc.double({ min: 0.5, max: 1, noNaN: true }),
  others: fc.array(fc.record({ kind: fc.constantFrom('step', 'slot', 'end', 'typed'), a: share, b: share, c: share, d: share, placed: fc.boolean(), depth: share }), { maxLength: 3 }), hollow: fc.boolean(),
}).map((given): SetupPicture => {
  const between = given.round ? given.height : given.between
  const seatMm = given.seat === null ? null : Math.round(given.seat * given.jaw * 4) / 4
  const across = between ?? 40, along = given.along ?? 60, cuts: readonly (Cut | null)[] = [
    ...(given.face > 0 ? [{ kind: 'face', depthMm: Math.min(given.face, given.height), overJaw: true, runThroughMm: 0.5 } as const] : []),
    ...given.holes.map(([x, y, diameterMm]): Cut => ({
      kind: 'hole', xMm: given.along === null ? null : x * given.along, yMm: y * across, diameterMm, tool: 'drill', through: true, runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4,
    })),
    ...given.others.map((other) => anyCut(other, along, across, given.height)),
  ]
  // Bars may be too thick to go in: refused ones are drawn, too.
  const t = Math.min(given.thick, across * given.filled), up = Math.max(seatMm ?? 10, 1)
  const bar = (yMm: number | null, upMm: number, fromMm = 0, label: string = given.labels[0]) =>
    ({ label, acrossMm: t, upMm, lengthMm: 150, place: yMm === null ? null : { xMm: ((given.along ?? 60) - 150) / 2, yMm }, fromMm, fouled: given.fouled })
  const bars = {
    none: [], single: [bar((across - t) / 2, up)], pair: [bar(0, up), bar(across - t, up, 0, given.labels[1])], open: [bar(null, up), bar(null, up)],
    stack: [bar(0, up / 2), bar(across - t, up / 2), bar(0, up / 2, up / 2), bar(across - t, up / 2, up / 2)],
  }[given.standing]
  const airMm = seatMm === null || given.face === 0 ? null : seatMm + given.height - given.jaw - Math.min(given.face, given.height)
  return {
    fixedJawHeightMm: given.jaw, movingJawHeightMm: given.jaw - given.lower, jawWidthMm: given.jawWidth, openingMm: 300, shape: given.round ? 'round' : 'block',
    betweenJawsMm: between, alongJawsMm: given.along, heightMm: given.height, hollows: given.hollow ? [{ x0Mm: along * 0.2, x1Mm: along * 0.9, y0Mm: across * 0.3, y1Mm: across * 0.8 }] : [], cuts, seatMm, bars,
    gripMm: seatMm === null ? null : Math.max(0, given.round ? Math.min(given.jaw - given.lower - seatMm - given.height / 2, given.height / 2) : Math.min(given.jaw - given.lower - seatMm, given.height)),
    airMm,
  }
})

/** What a reader of the sheet would complain about. */
function faultsOf(scene: Scene): readonly string[] {
  const said = texts(scene.items), faults: string[] = []
  const boxes: readonly (readonly [string, Box])[] = [
    ...said.map((text) => [`"${text.text}"`, textBoxOf(text)] as const), ...scene.fields.map((field) => [`field ${field.name}`, seenBox(field)] as const),
  ]
  boxes.forEach(([name, box], index) => {
    if (box.x0Mm < -0.01 || box.y0Mm < -0.01 || box.x1Mm > scene.widthMm + 0.01 || box.y1Mm > scene.heightMm + 0.01) faults.push(`${name} is off the sheet`)
    for (const [other, otherBox] of boxes.slice(index + 1)) if (overlap(box, otherBox)) faults.push(`${name} over ${other}`)
  })
  scene.fields.forEach((field, index) => {
    for (const other of scene.fields.slice(index + 1)) if (overlap(touchBox(field), touchBox(other))) faults.push(`fingers on ${field.name} meet ${other.name}`)
  })
  if (scene.items.flatMap(pointsOf).some(([x, y]) => !(x >= -0.01 && y >= -0.01 && x <= scene.widthMm + 0.01 && y <= scene.heightMm + 0.01))) faults.push('a line is off the sheet')
  for (const text of said) if (text.sizeMm < 3.6) faults.push(`"${text.text}" is too small`)
  return faults
}

const texts = (items: readonly Item[]): readonly TextItem[] => items.filter((item) => item.kind === 'text')
const touchBox = ({ at: [x, y], widthMm, heightMm }: FieldSpot): Box => ({ x0Mm: x - widthMm / 2, x1Mm: x + widthMm / 2, y0Mm: y - heightMm / 2, y1Mm: y + heightMm / 2 })
const seenBox = (field: FieldSpot): Box => touchBox({ ...field, heightMm: fieldSeenMm })
const overlap = (a: Box, b: Box): boolean => Math.min(a.x1Mm, b.x1Mm) - Math.max(a.x0Mm, b.x0Mm) > 0.01 && Math.min(a.y1Mm, b.y1Mm) - Math.max(a.y0Mm, b.y0Mm) > 0.01
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6

function pointsOf(item: Item): readonly (readonly [number, number])[] {
  switch (item.kind) {
    case 'line': return [item.from, item.to]
    case 'dimension': return [item.from, item.to, ...(item.tail ? [item.tail] : [])]
    case 'shape': return item.points
    case 'circle': return [[item.centre[0] - item.radiusMm, item.centre[1] - item.radiusMm], [item.centre[0] + item.radiusMm, item.centre[1] + item.radiusMm]]
    case 'text': return []
  }
}

const lengths = ({ items }: Scene): readonly number[] =>
  items.flatMap((item) => (item.kind === 'dimension' ? [Math.hypot(item.to[0] - item.from[0], item.to[1] - item.from[1])] : []))

/** The face of the fixed jaw is where the hatched body has its inner corner. */
function fixedJawX({ items }: Scene): number {
  const body = items.find((item): item is ShapeItem => item.kind === 'shape' && item.fill === 'cut-face')!
  return body.points[2]![0]
}
