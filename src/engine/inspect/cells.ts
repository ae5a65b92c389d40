import type { CheckForm } from '#model/check-draft.ts'

/** One reading that a check asks for: where on which bar, which face up, the how-manieth time; station and repeat count from 0. */
export type Cell = {
  readonly key: string
  readonly bar: string
  readonly line: 0 | 1
  readonly face: 'A' | 'B'
  readonly station: number
  readonly repeat: number
}

/**
 * The readings of a check in the order of entry, which is the order the bar is moved in and the printed order: bar by bar,
 * either face up for `turn-over`, then repeat by repeat along line after line from the marked end.
 *
 * `stated` asks for one height a bar, `rock` for none.
 */
export function cellsOf({ method, bars, stations, lines, repeats }: CheckForm): readonly Cell[] {
  if (method === 'rock') return []
  if (method === 'stated') return bars.map(({ bar }) => cellAt(bar, 0, 'A', 0, 0))
  const faces = method === 'turn-over' ? (['A', 'B'] as const) : (['A'] as const)
  return bars.flatMap(({ bar }) => faces.flatMap((face) => upTo(repeats).flatMap((repeat) =>
    ([0, 1] as const).slice(0, lines).flatMap((line) => upTo(stations).map((station) => cellAt(bar, line, face, station, repeat))))))
}

const cellAt = (bar: string, line: Cell['line'], face: Cell['face'], station: number, repeat: number): Cell =>
  ({ key: `${bar}/${line}/${face}/${station}/${repeat}`, bar, line, face, station, repeat })

const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i)
