import type { BarFields } from '#model/bar-record.ts'
import type { Trust } from '#model/bar.ts'

/**
 * Bars of one height that came together. `text` is the height as marked, `unit` what thickness and length are given in too.
 *
 * `um`: for each bar its readings by micrometer near both ends and in the middle, in µm from the marked height; left out:
 * never measured. `mates` left out: odd bars.
 */
export type DemoBars = {
  readonly id: string
  readonly count: number
  readonly text: string
  readonly unit: 'mm' | 'in'
  readonly thickness: string
  readonly length: string
  readonly mates?: string
  readonly slot: string
  readonly um?: readonly (readonly number[])[]
  readonly trust: Extract<Trust, 'trusted' | 'look first' | 'drill bar' | 'gone'>
  readonly where?: BarFields['where']
  readonly note?: string
}

type Measured = readonly [text: string, mates: string, slot: string, um: readonly (readonly number[])[]]

/** Invented demo data. A set in steps of 5, used for years and measured. */
const metricSet: readonly Measured[] = [
  ['5', 'K', 'A1', [[0, 1, 0], [1, 1, 0]]],
  ['10', 'J', 'A2', [[-1, 0, -1], [-1, -1, 0]]],
  ['15', 'H', 'A3', [[1, 2, 1], [0, 1, 1]]],
  ['20', 'G', 'B1', [[-1, -2, -1], [-2, -2, -3]]],
  ['25', 'A', 'B2', [[2, 2, 1], [2, 1, 1]]],
  ['30', 'B', 'B3', [[-2, -3, -2], [-1, -2, -2]]],
  ['35', 'C', 'B4', [[-2, -1, -1], [-3, -2, -3]]],
  ['40', 'D', 'B5', [[1, 0, 1], [2, 3, 2]]],
  ['45', 'E', 'B6', [[-4, -5, -6], [-1, 0, 1]]],
  ['50', 'F', 'B7', [[3, 4, 3], [5, 4, 6]]],
]

/** An inch set of which one pair is lent and the highest never was measured. */
const inchSet: readonly Measured[] = [
  ['1/2', 'I1', 'C1', [[-1, 0, 0], [0, 0, -1]]],
  ['5/8', 'I2', 'C2', [[-2, -2, -1], [-1, -1, -2]]],
  ['3/4', 'I3', 'C3', [[0, 1, 1], [1, 2, 1]]],
  ['7/8', 'I4', 'C4', [[-3, -2, -2], [-1, -1, -1]]],
  ['1', 'I5', 'C5', [[1, 0, 0], [0, -1, 0]]],
  ['1 1/8', 'I6', 'C6', [[-1, -1, -2], [-2, -2, -2]]],
  ['1 1/4', 'I7', 'C7', [[-1, -1, 0], [-2, -1, -1]]],
  ['1 3/8', 'I8', 'C8', [[0, -1, 0], [-1, -1, -2]]],
  ['1 1/2', 'I9', 'C9', [[2, 3, 2], [-1, 0, 0]]],
]

/** A thin set bought used: nobody has measured it yet. */
const thinSet: readonly (readonly [text: string, mates: string, slot: string])[] =
  [['10', 'T1', 'D1'], ['15', 'T2', 'D2'], ['20', 'T3', 'D3'], ['25', 'T4', 'D4'], ['30', 'T5', 'D5'], ['35', 'T6', 'D6'], ['40', 'T7', 'D7']]

export const demoBars: readonly DemoBars[] = [
  ...metricSet.map(([text, mates, slot, um]): DemoBars => ({
    id: `demo-${mates}`, count: 2, text, unit: 'mm', thickness: '8', length: '150', mates, slot, um, trust: 'trusted',
    ...(mates === 'B' ? { where: { at: 'vise', viseId: 'demo-vise-1' } } : {}),
  })),
  ...inchSet.map(([text, mates, slot, um]): DemoBars => ({
    id: `demo-${mates}`, count: 2, text, unit: 'in', thickness: '1/4', length: '6', mates, slot, um, trust: 'trusted',
    ...(mates === 'I8' ? { where: { at: 'out', who: 'the night shift' } } : {}),
  })),
  { id: 'demo-I10', count: 2, text: '1 5/8', unit: 'in', thickness: '1/4', length: '6', mates: 'I10', slot: 'C10', trust: 'look first', note: 'New, still in the box.' },
  ...thinSet.map(([text, mates, slot]): DemoBars => ({
    id: `demo-${mates}`, count: 2, text, unit: 'mm', thickness: '6', length: '150', mates, slot, trust: mates === 'T7' ? 'look first' : 'trusted',
  })),
  { id: 'demo-S', count: 2, text: '35', unit: 'mm', thickness: '8', length: '25', mates: 'S', slot: 'E1', trust: 'trusted', note: 'Cut from an odd 35 to stand between holes.' },
  { id: 'demo-R', count: 2, text: '25', unit: 'mm', thickness: '8', length: '60', mates: 'R', slot: 'E1', trust: 'trusted', um: [[-1, 0, -1], [-2, -1, -1]] },
  { id: 'demo-V', count: 2, text: '32', unit: 'mm', thickness: '3', length: '100', mates: 'V', slot: 'E2', trust: 'trusted' },
  { id: 'demo-W', count: 2, text: '35', unit: 'mm', thickness: '8', length: '150', mates: 'W', slot: 'E3', trust: 'trusted', note: 'Both marked 35, never measured.' },
  { id: 'demo-X', count: 2, text: '34', unit: 'mm', thickness: '14', length: '150', mates: 'X', slot: 'A7', trust: 'drill bar', note: 'For holes that meet the bars.' },
  {
    id: 'demo-Q', count: 4, text: '25', unit: 'mm', thickness: '10', length: '120', mates: 'Q', slot: 'E4', trust: 'trusted', note: 'Four alike, for two vises.',
    um: [[0, 1, 0], [1, 1, 2], [0, 0, 1], [2, 1, 1]],
  },
  { id: 'demo-odd12', count: 1, text: '12', unit: 'mm', thickness: '10', length: '120', slot: 'F1', trust: 'trusted', note: 'Its mate is lost.' },
  { id: 'demo-odd18', count: 1, text: '18', unit: 'mm', thickness: '10', length: '120', slot: 'F1', trust: 'look first' },
  { id: 'demo-odd22', count: 1, text: '22', unit: 'mm', thickness: '12', length: '100', slot: 'F1', trust: 'trusted' },
  { id: 'demo-odd275', count: 1, text: '27,5', unit: 'mm', thickness: '9', length: '140', slot: 'F2', trust: 'look first', note: 'Rusty at one end.' },
  { id: 'demo-odd33', count: 1, text: '33', unit: 'mm', thickness: '7', length: '90', slot: 'F2', trust: 'drill bar' },
  { id: 'demo-odd35', count: 1, text: '35', unit: 'mm', thickness: '10', length: '120', slot: 'F2', trust: 'trusted', note: 'For narrow parts, alone.' },
  { id: 'demo-old20', count: 1, text: '20', unit: 'mm', thickness: '8', length: '150', slot: 'F3', trust: 'gone', note: 'Cracked when it was straightened.' },
]
