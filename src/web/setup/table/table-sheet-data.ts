import type { TablePictureData } from '#drafting/setup/table-picture.ts'
import type { TableSheetData } from '#drafting/setup/table-sheet.ts'
import type { Bar } from '#model/bar.ts'
import { withUnit, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayFinding } from '#words/say-finding.ts'
import type { RackPair } from '#web/setup/beside/rack-here.ts'
import type { TableTold } from '#web/setup/table/table-asked.ts'

/** The part on its bars as drawn on the screen and on the sheet. */
export function tablePictureFrom({ question, answer, tips }: TableTold, barHeightMm: number, pair: RackPair | null): TablePictureData {
  const { part } = question
  return {
    title: 'On the table', description: 'The part on its bars, from the end and from above.',
    acrossMm: part.betweenJawsMm!, alongMm: part.alongJawsMm!, heightMm: part.heightMm, barHeightMm, table: 'table',
    bars: question.bars.map((bar, k) => ({ ...bar, fouled: answer.fouledHoles[k]!.length > 0, called: namesOf(k + 1, pair) })),
    holes: question.cuts.flatMap((cut, k) => (cut.kind === 'hole' ? [{ xMm: cut.xMm, yMm: cut.yMm, diameterMm: cut.diameterMm, tipMm: tips[k] ?? null }] : [])),
    straps: question.straps.map((strap, k) => ({ ...strap, over: isOverBar(answer, k) })),
  }
}

/** What a bar is called, from the longest to the shortest. */
function namesOf(place: number, pair: RackPair | null): readonly string[] {
  const bar = `bar ${place}`, named = pair === null ? [] : [`${bar}, ${pair.label}, slot ${pair.slot}`, `${bar}, ${pair.label}`]
  return [...named, bar, String(place)]
}

const isOverBar = ({ findings }: TableTold['answer'], strap: number): boolean => !findings.some(({ code, index }) => code === 'strap-not-over-bar' && index === strap)

/** Holes and straps that find room beside the drawing; more go below it. */
const mostBeside = 10

type Asked = {
  readonly told: TableTold; readonly barHeightMm: number; readonly pair: RackPair | null; readonly trustOf: (bar: Bar) => string; readonly units: Units
  readonly id: string; readonly shop: string; readonly part: string; readonly operation: string; readonly day: string; readonly initials: string
}

/** Everything the sheet of a part on the table says, worded. */
export function tableSheetFrom({ told, barHeightMm, pair, trustOf, units, id, shop, part: named, operation, day, initials }: Asked): TableSheetData {
  const { question: { part, bars, cuts, straps, wishes }, answer } = told, length = (mm: number) => wordLength(mm, units)
  const size = [part.betweenJawsMm!, part.alongJawsMm!, part.heightMm].map(length).join(' × ')
  const trusts = (['look first', 'drill bar'] as const).filter((trust) => pair?.bars.some((bar) => bar.trust === trust))
  const findings = answer.findings.map(({ code, index }) => sayFinding({ code, facts: { index } }, units))
  const where = placesOf(told, length), isMany = cuts.length + straps.length > mostBeside
  return {
    title: `Table sheet: ${named || size}`, description: `${size} on two bars${pair === null ? '' : ` ${pair.label}, slot ${pair.slot}`}, under ${straps.length} straps.`,
    heading: named || size, under: 'On the table, under straps', picture: tablePictureFrom(told, barHeightMm, pair), scale: 'Scale',
    numbers: [
      { label: 'Across × along × high', value: `${size} ${units.length}` },
      { label: 'Underside up', value: withUnit(barHeightMm, units) },
      { label: 'Bars at least', value: answer.lowBecause === 'table' ? 'any height' : `${withUnit(answer.lowMm, units)} high` },
      { label: 'Clear of holes by', value: withUnit(wishes.holeAirMm, units) },
    ],
    beside: isMany ? [] : where,
    heads: ['Bar', 'Which', 'Slot', `High, ${units.length}`, `Thick, ${units.length}`, 'From', 'Trust'],
    rows: bars.map((bar, k) => {
      const mine = pair?.bars[k], from = bar.acrossMm > bar.alongMm ? `${length(bar.xMm)}, left` : `${length(bar.yMm)}, near`
      if (pair === null || mine === undefined) return [`bar ${k + 1}`, 'as typed', '', length(barHeightMm), length(Math.min(bar.alongMm, bar.acrossMm)), from, 'not known']
      const high = `${length(mine.heightMm)}${mine.standing === 'marked' ? ' marked' : ''}`
      return [`bar ${k + 1}`, `${pair.label}${pair.marks}`, pair.slot, high, length(mine.thicknessMm), from, trustOf(mine)]
    }),
    blocks: [
      ...(isMany ? where : []),
      { heading: 'Is it down?', lines: [
        'A strip of paper between part and bar at each end of both bars, then tighten the straps: none may pull out. Marked ends of the bars to the left end or the near edge.',
      ] },
      { heading: 'Cautions', lines: [...findings, ...cautionsFor(new Set([...trusts, ...answer.situations]), units)] },
      { heading: 'What this sheet leaves open', lines: ['Not computed: holding force of the straps, bending of the part between the bars, the turning of the drill.'] },
    ],
    code: { label: 'Code', value: id.slice(0, 8) },
    foot: {
      shop: { label: 'Shop', value: shop }, part: { label: 'Part', value: named }, operation: { label: 'Operation', value: operation },
      date: { label: 'Date', value: day }, initials: { label: 'Initials', value: initials },
    },
  }
}

/** Where holes and straps are, each with its number. */
function placesOf({ question: { cuts, straps }, answer }: TableTold, length: (mm: number) => string): TableSheetData['beside'] {
  const place = ({ xMm, yMm }: { readonly xMm: number | null; readonly yMm: number }) => `${length(yMm)} from the near edge${xMm === null ? '' : `, ${length(xMm)} from the left end`}`
  const holes = cuts.flatMap((cut, k) => {
    if (cut.kind !== 'hole') return []
    const deep = cut.depthMm === undefined ? 'through' : `${length(cut.depthMm)} deep`
    return [`${k + 1}: ⌀ ${length(cut.diameterMm)} ${deep}, ${place(cut)}.`]
  })
  const above = straps.map((strap, k) => `${k + 1}: ${place(strap)}, ${isOverBar(answer, k) ? 'above a bar' : 'beside the bars'}.`)
  return [{ heading: 'Holes', lines: holes }, { heading: 'Straps', lines: above }].filter(({ lines }) => lines.length > 0)
}
