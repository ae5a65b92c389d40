import type { Point } from '#drafting/scene.ts'

/** Braille dots of a text cell by column and row, as bits of the letter. */
const dotBits = [[0x01, 0x02, 0x04, 0x40], [0x08, 0x10, 0x20, 0x80]] as const

/** A field of dots, two across and four down in each cell of text; x to the right, y down, in dots. */
export class Raster {
  readonly columns: number
  readonly rows: number
  readonly #cells: Uint8Array

  constructor(columns: number, rows: number) {
    this.columns = columns
    this.rows = rows
    this.#cells = new Uint8Array(columns * rows)
  }

  /** A straight line of dots; `on` of every `of` dots are set, counted along it. */
  line(from: Point, to: Point, on = 1, of = 1): void {
    const steps = Math.max(1, Math.ceil(Math.max(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1]))))
    for (let i = 0; i <= steps; i++) {
      if (i % of < on) this.#dot(Math.round(from[0] + ((to[0] - from[0]) * i) / steps), Math.round(from[1] + ((to[1] - from[1]) * i) / steps), true)
    }
  }

  /** Clears the inside of a closed shape, then sets the dots that `pattern` asks for. */
  fill(points: readonly Point[], pattern: (x: number, y: number) => boolean): void {
    const ys = points.map(([, y]) => y)
    for (let y = Math.max(0, Math.ceil(Math.min(...ys))); y <= Math.min(this.rows * 4 - 1, Math.floor(Math.max(...ys))); y++) {
      const crossings = crossingsAt(points, y)
      for (let i = 0; i + 1 < crossings.length; i += 2) {
        for (let x = Math.max(0, Math.ceil(crossings[i]!)); x <= Math.min(this.columns * 2 - 1, Math.floor(crossings[i + 1]!)); x++) this.#dot(x, y, pattern(x, y))
      }
    }
  }

  /** The letter of a cell: a braille sign, or a space where no dot is set. */
  letter(column: number, row: number): string {
    const bits = this.#cells[row * this.columns + column]!
    return bits === 0 ? ' ' : String.fromCharCode(0x2800 + bits)
  }

  #dot(x: number, y: number, on: boolean): void {
    const column = x >> 1, row = y >> 2
    if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) return
    const bit = dotBits[(x & 1) as 0 | 1][(y & 3) as 0 | 1 | 2 | 3], cell = row * this.columns + column
    this.#cells[cell] = on ? this.#cells[cell]! | bit : this.#cells[cell]! & ~bit
  }
}

/** Where a level line at `y` crosses the edges of a shape, rising; an edge counts from its upper end down to before its lower. */
function crossingsAt(points: readonly Point[], y: number): readonly number[] {
  return points.flatMap((to, index): readonly number[] => {
    const from = points[(index + points.length - 1) % points.length]!
    return from[1] <= y === to[1] <= y ? [] : [from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0])]
  }).toSorted((a, b) => a - b)
}
