import type { BarOnPlateData, PlateBar, PlateRow } from '#drafting/inspect/bar-on-plate.ts'
import type { ProfileData, ProfileSeries } from '#drafting/inspect/profile.ts'
import { readOrFinding } from '#engine/inspect/read-or-finding.ts'
import { barLengthMm } from '#engine/inspect/gather-draft.ts'
import type { Cell } from '#engine/inspect/cells.ts'
import type { ReadCell } from '#engine/inspect/read-cell.ts'
import { evenly, stationPlacesMm } from '#engine/inspect/stations.ts'
import { attemptOr } from '#model/attempt.ts'
import type { CheckForm } from '#model/check-draft.ts'
import { withUnit } from '#model/length.ts'
import type { CheckDesk } from '#web/inspect/check/desk.ts'

/** Drawn as long while nobody has said how long it is. */
const unknownLengthMm = 100
/** So many lines of a profile can be told apart. */
const mostSeries = 4

type Drawn = Pick<CheckDesk, 'draft' | 'read' | 'facts' | 'units' | 'nameOf' | 'current'>

/** The half-done check as it lies on the plate. */
export function plateDataFrom(desk: Drawn): BarOnPlateData & { readonly profile: ProfileData } {
  const { draft, read, facts, nameOf, current, units } = desk, { form, typed } = draft
  const bars = form.bars.map(({ bar }): PlateBar => {
    const record = facts.bars.find(({ id }) => id === bar), told = readOrFinding(() => barLengthMm(draft, facts, bar, 'length'))[0], lengthMm = told ?? unknownLengthMm
    return {
      label: nameOf(bar), heightMm: facts.heights(bar)?.heightMm ?? null, thicknessMm: record?.thicknessMm ?? null, lengthMm, lengthGuessed: told === null, stationsMm: placesOr(form, lengthMm),
      rows: rowsOf(read.cells.map(({ cell }) => cell).filter((cell) => cell.bar === bar), form),
    }
  })
  const zeroBar = form.bars.findIndex(({ bar }) => bar === form.zeroBar)
  return {
    title: 'The bars on the plate', description: describe(desk), bars, texts: typed, current, markedEnd: 'marked end',
    profile: {
      series: seriesOf(desk, bars), band: null, whiskers: '',
      zero: read.zeroMm === null ? 'zero' : `zero = ${withUnit(read.zeroMm, units)}`,
    },
    zero: form.method === 'micrometer' || form.method === 'stated' ? null : form.zeroOn === 'block' ? 'block' : zeroBar < 0 ? null : { bar: zeroBar, xMm: bars[zeroBar]!.stationsMm[Math.floor(form.stations / 2)]! },
  }
}

/** One row for each pass along a bar, named by what sets it apart. */
function rowsOf(cells: readonly Cell[], { method, lines, repeats }: CheckForm): readonly PlateRow[] {
  const rows = new Map<string, string[]>()
  for (const { face, repeat, line, key } of cells) {
    const label = sayPass({ face, repeat, line }, { method, lines, repeats })
    rows.set(label, [...rows.get(label) ?? [], key])
  }
  return [...rows].map(([label, keys]) => ({ label, keys }))
}

/** What sets one pass along a bar apart from the others: `face B up, line 2, again 3`; empty where there is only one. */
export function sayPass({ face, repeat, line }: Pick<Cell, 'face' | 'repeat' | 'line'>, { method, lines, repeats }: Pick<CheckForm, 'method' | 'lines' | 'repeats'>): string {
  return [
    ...(method === 'turn-over' ? [`face ${face} up`] : []), ...(lines === 2 ? [`line ${line + 1}`] : []), ...(repeats > 1 ? [`pass ${repeat + 1}`] : []),
  ].join(', ')
}

/** Of more bars than can be told apart, the one that is being read. */
function seriesOf({ draft: { form }, read, nameOf, current }: Drawn, bars: readonly PlateBar[]): readonly ProfileSeries[] {
  const all = form.bars.flatMap(({ bar }, at) => (form.method === 'turn-over' ? (['A', 'B'] as const) : (['A'] as const)).flatMap((face) =>
    ([0, 1] as const).slice(0, form.lines).map((line) => ({
      bar, label: [nameOf(bar), sayPass({ face, line, repeat: 0 }, { ...form, repeats: 1 })].filter((part) => part !== '').join(', '),
      points: bars[at]!.stationsMm.map((xMm, station) => ({ xMm, uUm: null, um: meanUm(read.cells.filter(({ cell }) => cell.bar === bar && cell.face === face && cell.line === line && cell.station === station)) })),
    }))))
  const now = read.cells.find(({ cell }) => cell.key === current)?.cell.bar ?? form.bars[0]?.bar
  return all.length <= mostSeries ? all : all.filter(({ bar }) => bar === now).slice(0, mostSeries)
}

function meanUm(cells: readonly ReadCell[]): number | null {
  const read = cells.flatMap(({ um, asks }) => (um === null || asks ? [] : um))
  return read.length === 0 ? null : read.reduce((sum, um) => sum + um, 0) / read.length
}

/** Where the stations lie; evenly while what is typed about them cannot be read. */
function placesOr(form: CheckForm, lengthMm: number): readonly number[] {
  return attemptOr(() => stationPlacesMm(form, lengthMm), null) ?? evenly(form.stations, lengthMm)
}

function describe({ draft: { form }, read, nameOf }: Drawn): string {
  const done = read.cells.filter(({ um, heightMm }) => um !== null || heightMm !== null).length
  return `${form.bars.map(({ bar }) => nameOf(bar)).join(', ') || 'No bar yet'} on the plate, marked end to the left; ${done} of ${read.cells.length} readings.`
}
