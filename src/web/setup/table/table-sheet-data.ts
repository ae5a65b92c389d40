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
    title: 'On the table', description: 'The part on its bars, from the end and from above.', acrossMm: part.betweenJawsMm!, alongMm: part.alongJawsMm!, heightMm: part.heightMm, barHeightMm, table: 'table',
    bars: question.bars.map((bar, k) => ({ ...bar, fouled: answer.fouledHoles[k]!.length > 0, called: [...(pair === null ? [] : [`bar ${k + 1}, ${pair.label}, slot ${pair.slot}`, `bar ${k + 1}, ${pair.label}`]), `bar ${k + 1}`, String(k + 1)] })),
    holes: question.cuts.flatMap((cut, k) => (cut.kind === 'hole' ? [{ xMm: cut.xMm, yMm: cut.yMm, diameterMm: cut.diameterMm, tipMm: tips[k] ?? null }] : [])),
    straps: question.straps.map((strap, k) => ({ ...strap, over: !answer.findings.some(({ code, index }) => code === 'strap-not-over-bar' && index === k) })),
  }
}

/** Holes and straps that find room beside the drawing; more go below it. */
const mostBeside = 10

type Asked = {
  readonly told: TableTold; readonly barHeightMm: number; readonly pair: RackPair | null; readonly trustOf: (bar: Bar) => string; readonly units: Units
  readonly id: string; readonly shop: string; readonly part: string; readonly operation: string; readonly day: string; readonly initials: string
}

/** Everything the sheet of a part on the table says, worded. */
export function tableSheetFrom({ told, barHeightMm, pair, trustOf, units, id, shop, part: named, operation, day, initials }: Asked): TableSheetData {
  const { question: { part, bars, cuts, straps, wishes }, answer } = told, length = (mm: number) => wordLength(mm, units), size = [part.betweenJawsMm!, part.alongJawsMm!, part.heightMm].map(length).join(' × ')
  const place = ({ xMm, yMm }: { readonly xMm: number | null; readonly yMm: number }) => `${length(yMm)} from the near edge${xMm === null ? '' : `, ${length(xMm)} from the left end`}`
  const trust = pair?.bars.some((bar) => bar.trust === 'look first') ? ['look first' as const] : [], beater = pair?.bars.some((bar) => bar.trust === 'drill bar') ? ['drill bar' as const] : []
  const where = [
    { heading: 'Holes', lines: cuts.flatMap((cut, k) => (cut.kind === 'hole' ? [`${k + 1}: ⌀ ${length(cut.diameterMm)} ${cut.depthMm === undefined ? 'through' : `${length(cut.depthMm)} deep`}, ${place(cut)}.`] : [])) },
    { heading: 'Straps', lines: straps.map((strap, k) => `${k + 1}: ${place(strap)}${answer.findings.some(({ code, index }) => code === 'strap-not-over-bar' && index === k) ? ', beside the bars' : ', above a bar'}.`) },
  ].filter(({ lines }) => lines.length > 0), isMany = cuts.length + straps.length > mostBeside
  return {
    title: `Table sheet: ${named || size}`, description: `${size} on two bars${pair === null ? '' : ` ${pair.label}, slot ${pair.slot}`}, under ${straps.length} straps.`,
    heading: named || size, under: 'On the table, under straps', picture: tablePictureFrom(told, barHeightMm, pair), scale: 'Scale',
    numbers: [
      { label: 'Across × along × high', value: `${size} ${units.length}` }, { label: 'Underside up', value: withUnit(barHeightMm, units) },
      { label: 'Bars at least', value: answer.lowBecause === 'table' ? 'any height' : `${withUnit(answer.lowMm, units)} high` }, { label: 'Clear of holes by', value: withUnit(wishes.holeAirMm, units) },
    ],
    beside: isMany ? [] : where,
    heads: ['Bar', 'Which', 'Slot', `High, ${units.length}`, `Thick, ${units.length}`, 'From', 'Trust'],
    rows: bars.map((bar, k) => {
      const turned = bar.acrossMm > bar.alongMm, mine = pair?.bars[k], fromMm = turned ? bar.xMm : bar.yMm
      return [
        `bar ${k + 1}`, mine === undefined ? 'as typed' : `${pair!.label}${pair!.marks}`, pair?.slot ?? '', mine === undefined ? length(barHeightMm) : `${length(mine.heightMm)}${mine.standing === 'marked' ? ' marked' : ''}`,
        length(mine?.thicknessMm ?? Math.min(bar.alongMm, bar.acrossMm)), `${length(fromMm)}, ${turned ? 'left' : 'near'}`, mine === undefined ? 'not known' : trustOf(mine),
      ]
    }),
    blocks: [
      ...(isMany ? where : []),
      { heading: 'Is it down?', lines: ['A strip of paper between part and bar at each end of both bars, then tighten the straps: none may pull out. Marked ends of the bars to the left end or the near edge.'] },
      { heading: 'Cautions', lines: [...answer.findings.map(({ code, index }) => sayFinding({ code, facts: { index } }, units)), ...cautionsFor(new Set([...trust, ...beater, ...answer.situations]), units)] },
      { heading: 'What this sheet leaves open', lines: ['Not computed: holding force of the straps, bending of the part between the bars, the turning of the drill.'] },
    ],
    code: { label: 'Code', value: id.slice(0, 8) },
    foot: {
      shop: { label: 'Shop', value: shop }, part: { label: 'Part', value: named }, operation: { label: 'Operation', value: operation },
      date: { label: 'Date', value: day }, initials: { label: 'Initials', value: initials },
    },
  }
}
