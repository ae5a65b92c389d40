import type { SetupSheetData } from '#drafting/setup/setup-sheet.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'
import { betweenBars } from '#engine/setup/between-bars.ts'
import { situationsOf } from '#engine/setup/situations.ts'
import { isSeatMeasured, standingOf } from '#engine/setup/standing.ts'
import type { Finding } from '#model/finding.ts'
import { withUnit, wordNumber } from '#model/length.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import type { Choice } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { cautionsFor } from '#words/cautions.ts'
import { calledMm } from '#words/say-bar.ts'
import { saySetupFinding } from '#words/say-setup-finding.ts'
import { type Terms, termsFor } from '#words/terms.ts'
import { plusMinus } from '#words/say-uncertainty.ts'
import { capital } from '#words/wording.ts'
import { barLabel, figureOf, howItStands, nameOfRest, slotOf } from '#web/setup/answer/say-choice.ts'
import { pointsOf, sayUnfinished } from '#web/setup/answer/say-points.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import type { Bench } from '#web/setup/view/bench.ts'
import { pictureFrom } from '#web/setup/view/picture-from.ts'
import type { Answered, SetupView } from '#web/setup/view/view-from.ts'

type Asked = {
  readonly setup: SetupRecord
  readonly shop: ShopSnapshot
  readonly bench: Bench
  readonly view: SetupView & { readonly answered: Answered }
  readonly choice: Choice
  readonly units: Units
  /** The day and the initials as they stand on the sheet. */
  readonly day: string
  readonly initials: string
}

/** Everything the sheet of one kept setup says, worded, from the setup as it comes out today. */
export function sheetDataFrom({ setup, shop, bench, view, choice, units, day, initials }: Asked): SetupSheetData {
  const { answered } = view, terms = termsFor(units.words), nameOf = (id: string) => barLabel(id, bench, units)
  const title = setup.title || sayPart(setup.form), pair = `${figureOf(choice, bench, units)} ${nameOfRest(choice, bench, units).replace(/^pair /, '')}`
  const say = (finding: Finding) => saySetupFinding(finding, units, nameOf), all = [...choice.because, ...choice.findings, ...answered.answer.findings]
  const moved = all.filter(({ code }) => code.startsWith('moved-')).map(say), notComputed = all.filter(({ code }) => code === 'not-computed').map(say)
  const open = [...all.filter(isOpen).map(say), ...sayUnfinished(view.counted, setup.form)]
  const side = setup.form.side === 'unknown' ? undefined : setup.form.side, apart = apartLines(choice, bench, units)
  const points = pointsOf({ shown: choice, answer: answered.answer }, setup.form.use, bench).filter((finding) => !isOpen(finding)).map(say)
  const rowBedUm = bench.vise.measured?.rowBed?.um, isSeatKnown = isSeatMeasured(choice, bench.bars)
  return {
    picture: pictureFrom(setup.form, view, bench, (bar) => nameOf(bar.id), units.length)!,
    units, words: sheetWords(`Setup sheet: ${title}`, `${title} on ${pair} in ${bench.vise.name}.`, units.words), scale: 'Scale',
    block: {
      shop: { label: 'Shop', value: shop.shop.name }, part: { label: 'Part', value: title }, operation: { label: 'Operation', value: setup.operation },
      code: { label: 'Code', value: setup.id.slice(0, 8) }, vise: { label: capital(terms.vise), value: bench.vise.name }, jawSet: { label: 'Jaws', value: bench.jaws.name },
      pair: { label: 'Pair', value: pair }, slot: { label: 'Slot', value: slotOf(choice, bench) }, date: { label: 'Date', value: day }, initials: { label: 'Initials', value: initials },
    },
    stand: [...(choice.stand === 'on edge' ? ['on edge'] : []), ...howItStands(choice, terms), ...(side === undefined ? [] : [`${side} side at the fixed jaw`])].join(', '),
    numbers: [...numbersOf(choice, isSeatKnown && rowBedUm === undefined, units), ...bedInRow(choice, isSeatKnown, rowBedUm, units)],
    bars: { heading: 'Bars', lines: barLines(choice, markedName(choice, bench, nameOf), terms) },
    spacer: moved.length + apart.length === 0 ? null : { heading: moved.length > 0 ? 'Off their places' : 'Between the bars', lines: [...moved, ...apart] },
    workStop: { heading: 'Work stop: set before the first part comes out', lines: ['Against', 'Distance', ...(isSeatKnown ? [] : ['Offset Z'])] },
    test: { heading: 'Is it down?', lines: ['A strip of paper between part and bar at each corner, then tighten: tick the strips that do not pull out.'] },
    cautions: { heading: 'Cautions', lines: [...points, ...cautionsFor(situationsOf(choice, answered.question.part, answered.question.cuts), units)] },
    notComputed: { heading: 'What this sheet leaves open', lines: [...notComputed, ...open, ...(side === undefined ? ['Side at the fixed jaw: not told.'] : [])] },
  }
}

/** What was left open about the part. */
const isOpen = ({ code }: Finding): boolean => /not-given$|not-placed$/.test(code)

/** `isOffset`: the seat's height above the bed is the offset; while a size is only marked, that is touched off and written down. */
function numbersOf({ seatMm, gripMm, stickOutMm, airMm, bedAirMm, matchUm, matchUUm, bars }: Choice, isOffset: boolean, units: Units): SetupSheetData['numbers'] {
  const length = (label: string, mm: number | null) => (mm === null ? [] : [{ label, value: withUnit(calledMm(mm, units), units) }])
  const within = matchUUm === undefined ? '' : ` ${plusMinus(matchUUm, units)}`, match = matchUm === null ? 'not measured' : `${wordNumber(matchUm, units.decimalMark, 1)} µm${within}`
  return [
    { label: isOffset ? 'Seat = offset Z' : 'Seat height', value: withUnit(seatMm, units) },
    ...length('Grip', gripMm), ...length('Above the jaws', stickOutMm), ...length('Clear of the jaws', airMm), ...length('Clear of the bed', bedAirMm),
    ...(bars.length < 2 ? [] : [{ label: 'Match', value: match }]),
  ]
}

/** How high the bed stands in its row, where that was measured, and what the offset comes to from the zero of the row. */
function bedInRow({ seatMm }: Choice, isKnown: boolean, um: number | undefined, units: Units): SetupSheetData['numbers'] {
  if (um === undefined) return []
  const sign = um > 0 ? '+' : um < 0 ? '−' : '', bed = `${sign}${wordNumber(Math.abs(um), units.decimalMark, null, 1)} µm`
  return [{ label: 'Bed in the row', value: bed }, ...(isKnown ? [{ label: 'Offset Z in the row', value: withUnit(seatMm + um / 1000, units) }] : [])]
}

/** Two bars that are called alike are told apart by their codes. */
function markedName({ bars }: Choice, { names }: Bench, nameOf: (id: string) => string): (id: string) => string {
  return (id) => (bars.some((other) => other !== id && nameOf(other) === nameOf(id)) ? `${nameOf(id)} (${(names.recordOf(id)?.code ?? '').slice(0, 4)})` : nameOf(id))
}

/** What keeps two bars that stand beside each other apart: how much is free between them. */
function apartLines(choice: Choice, { bars }: Bench, units: Units): readonly string[] {
  const free = betweenBars(standingOf(choice, bars), 'lower')
  return free === null ? [] : [`Spring or filler between: ${withUnit(free.toMm - free.fromMm, units)}.`]
}

/** Marked ends go to the left, so that a pair lies the same way every time. Common practice, no source. */
function barLines({ bars, stand }: Choice, nameOf: (id: string) => string, terms: Terms): readonly string[] {
  const [first, second, third, fourth] = bars.map(nameOf), left = 'Marked ends to the left end of the part.'
  if (first === undefined) return ['None: the part lies on the bed.']
  if (second === undefined) return [`${first} in the middle.`, left]
  const lower = [`${first} at the fixed jaw`, `${second} at the ${terms.movingJaw}`]
  if (stand !== 'stack') return [`${lower.join(', ')}.`, left]
  return [`Below: ${lower.join(', ')}.`, `On them: ${third} at the fixed jaw, ${fourth} at the ${terms.movingJaw}.`, left]
}
