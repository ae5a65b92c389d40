import { guarded, unguarded } from '#tasks/rack/csv-guard.ts'

/** How a cell is read: as it stands, as a number, as `yes` or `no`, or as several words. An empty cell is null, of a text the empty text. */
type CellKind = 'text' | 'text or null' | 'number' | 'yes-no' | 'words'

/** Columns of a file of checks (docs/checks-csv.md): the keys of a check as it is kept, with a dot where one holds others. */
type Part = readonly (readonly [key: string, kind: CellKind])[]

/** The line of a check itself. */
export const checkPart: Part = [
  ['id', 'text'], ['method', 'text'], ['replaces', 'text or null'], ['atIso', 'text'], ['person', 'text'], ['device', 'text'], ['asFound', 'yes-no'], ['note', 'text'],
  ['temperature.text', 'text'], ['temperature.c', 'number'], ['closing.text', 'text'], ['closing.um', 'number'],
  ['zero.on', 'text'], ['zero.bar', 'text or null'], ['zero.station', 'number'], ['zero.heightMm', 'number'], ['zero.text', 'text'],
  ...(['instrument', 'plate', 'blocks'] as const).flatMap((tool): Part => [[`took.${tool}.id`, 'text or null'], [`took.${tool}.name`, 'text'], [`took.${tool}.dueOn`, 'text or null']]),
  ['took.readWith.method', 'text'],
  ...['resolutionUm', 'limitUm', 'repeatabilityUm', 'plateFlatnessUm', 'blockLimitUm', 'blockUUm', 'betweenC', 'awayC', 'expansionPerC', 'expansionApartPerC'].map((key) => [`took.readWith.${key}`, 'number'] as const),
]
/** A line of a look at a bar, and a line of a reading. */
export const lookPart: Part = [['wiped', 'yes-no'], ['stoned', 'yes-no'], ['rock', 'text'], ['feelerText', 'text'], ['feelerUm', 'number'], ['seen', 'words']]
export const readingPart: Part = [['station', 'number'], ['xMm', 'number'], ['line', 'number'], ['face', 'text'], ['text', 'text'], ['heightMm', 'number']]

export const checkHeads: readonly string[] = [
  'what', ...checkPart.map(([key]) => key), 'bar', 'code', 'name', ...lookPart.map(([key]) => `look.${key}`), ...readingPart.map(([key]) => `reading.${key}`),
]

export type Loose = { readonly [key: string]: unknown }

/** The cells of one part of a check, as texts. */
export function cellsFrom(part: Part, value: Loose, prefix = ''): Map<string, string> {
  return new Map(part.map(([key, kind]) => [prefix + key, cellOf(kind, key.split('.').reduce<unknown>((inner, step) => (inner === null || inner === undefined ? null : (inner as Loose)[step]), value))]))
}

function cellOf(kind: CellKind, value: unknown): string {
  if (value === null || value === undefined) return ''
  if (kind === 'words') return (value as readonly string[]).join(' ')
  if (kind === 'yes-no') return value === true ? 'yes' : 'no'
  return typeof value === 'string' ? guarded(value) : JSON.stringify(value)
}

/** One part out of its cells. A group of which every cell is empty is null. What cannot be read stays a text, which the schema refuses. */
export function valueFrom(part: Part, cell: (head: string) => string, prefix = ''): Loose {
  const value: { [key: string]: unknown } = {}
  for (const [key, kind] of part) {
    const steps = key.split('.'), group = steps.slice(0, -1).reduce<{ [key: string]: unknown }>((inner, step) => (inner[step] ??= {}) as { [key: string]: unknown }, value)
    group[steps.at(-1)!] = valueOf(kind, cell(prefix + key))
  }
  return value
}

function valueOf(kind: CellKind, cell: string): unknown {
  if (kind === 'text') return unguarded(cell)
  if (kind === 'words') return cell.trim() === '' ? [] : cell.trim().split(/\s+/)
  if (cell.trim() === '') return null
  if (kind === 'text or null') return unguarded(cell)
  if (kind === 'yes-no') return cell === 'yes' ? true : cell === 'no' ? false : cell
  return /^-?\d+(\.\d+)?(e-?\d+)?$/i.test(cell) ? Number(cell) : cell
}

/** A check out of its lines: the groups nobody filled in become null again, and a zero keeps the keys of its kind. */
export function checkFromParts(head: Loose, looks: readonly Loose[], readings: readonly Loose[]): Loose {
  const { zero, closing, temperature, took, ...plain } = head as { readonly [key: string]: Loose }
  const tools = took as { readonly [key: string]: Loose }
  const emptied = (group: Loose | undefined): Loose | null => (group === undefined || Object.values(group).every((value) => value === null || value === '') ? null : group)
  const { bar, station, ...onBlock } = zero as { bar: unknown; station: unknown }
  return {
    ...plain, looks, readings, closing: emptied(closing), temperature: emptied(temperature),
    zero: emptied(zero) && (bar === null ? onBlock : { ...onBlock, bar, station }),
    took: emptied(tools['readWith']) && { instrument: emptied(tools['instrument']), plate: emptied(tools['plate']), blocks: emptied(tools['blocks']), readWith: tools['readWith'] },
  }
}

