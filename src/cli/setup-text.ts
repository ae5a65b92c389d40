import { withUnit, wordNumber } from '#model/length.ts'
import type { Finding } from '#model/finding.ts'
import type { Choice, SetupQuestion } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import { plainText } from '#cli/columns.ts'
import { wrapped } from '#cli/wrapped.ts'
import { nearMisses, otherWaysAt, situationsAt } from '#tasks/setup/about-setup.ts'
import type { SetupAtVise } from '#tasks/setup/choose-for-vise.ts'
import { cautionsFor } from '#words/cautions.ts'
import { barCalled, calledSize } from '#words/say-bar.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayOffer } from '#words/say-offer.ts'
import { statusWords, trustWords, wayWords, whereWords } from '#words/say-place.ts'
import { sayGiveUp, sayWindow } from '#words/say-window.ts'
import { termsFor } from '#words/terms.ts'
import { capital } from '#words/wording.ts'
import { plusMinus } from '#words/say-uncertainty.ts'

const alsoShown = 6
const nearestShown = 4

/** The answer to a setup in words, the drawing under its first choice: what to use, why, what else works, what comes near. */
export function setupText(at: SetupAtVise, drawing: string, units: Units, columns: number): string {
  const { answer } = at, [first, ...others] = answer.choices
  const say = sayer(at, units, columns)
  const misses = nearMisses(at, nearestShown), ways = otherWaysAt(at)
  return [
    say.title(),
    first ? say.first(first) : 'Nothing in the rack serves as asked.\n',
    `\n${drawing.replace(/^\n+|\n+$/g, '')}\n\n`,
    say.paragraph(sayWindow(answer.window, units)),
    ...(answer.window.giveUp ? ['To leave one height, give way on one of these:\n', ...sayGiveUp(answer.window.giveUp, units).map(say.item)] : []),
    ...(others.length > 0 ? ['\nAlso work\n', ...others.slice(0, alsoShown).map(say.other), ...(others.length > alsoShown ? [`  … and ${others.length - alsoShown} more (--json lists all)\n`] : [])] : []),
    ...(misses.length > 0 ? ['\nNearest\n', ...misses.map(say.miss)] : []),
    ...(answer.offers?.length ? ['\nWhat to give up\n', ...answer.offers.map((offer) => say.item(sayOffer(offer, units, say.nameOf)))] : []),
    ...(ways.length > 0 ? ['\nOther ways\n', ...ways.map((way) => say.item(sayFinding(way, units, say.nameOf)))] : []),
    ...(answer.make ? [`\nOr make a pair ${sayRange(answer.make, units)} high.\n`] : []),
    ...comesOut(at, say),
    ...(first ? ['\nCautions\n', ...cautionsFor(situationsAt(at, first), units).map(say.item)] : []),
    '\n',
    ...answer.findings.map((finding) => say.paragraph(sayFinding(finding, units, say.nameOf))),
  ].join('')
}

function sayer({ vise, question, bars }: SetupAtVise, units: Units, columns: number) {
  const lines = new Map(bars.map((bar) => [bar.id, bar])), terms = termsFor(units.words)
  const length = (mm: number) => calledSize(mm, units)
  const nameOf = (id: string) => { const bar = lines.get(id); return bar ? plainText(barCalled(bar, units)) : id }
  const slotsOf = (ids: readonly string[]) => [...new Set(ids.flatMap((id) => lines.get(id)?.slot ?? []))].map(plainText).join(', ')
  const names = (ids: readonly string[]) => [...new Set(ids.map(nameOf))].join(' and ')
  const called = ({ bars: ids, stand }: Pick<Choice, 'bars' | 'stand'>) => (ids.length === 0 ? 'no bars' : stand === 'stack' ? `${names(ids.slice(2))} on ${names(ids.slice(0, 2))}` : names(ids))
  const stands = ({ stand, status, trust, where }: Choice) =>
    [wayWords[stand], ...(statusWords[status] === wayWords[stand] ? [] : [statusWords[status]]), ...(trust === 'trusted' ? [] : [trustWords[trust]]), ...(where === 'slot' ? [] : [whereWords(where, terms)])].join(', ')
  const numbers = ({ gripMm, stickOutMm, airMm, bedAirMm, matchUm, matchUUm, seatMm, bars: ids }: Choice) => [
    `grip ${length(gripMm)}`, stickOutMm < 0 ? `${length(-stickOutMm)} below the jaws` : `above the jaws ${length(stickOutMm)}`,
    ...(airMm === null ? [] : [`clear of the jaws ${length(airMm)}`]), ...(bedAirMm === null ? [] : [`above the bed ${length(bedAirMm)}`]),
    ...(ids.length < 2 ? [] : [matchUm === null ? 'match not measured' : `match ${wordNumber(matchUm, units.decimalMark, null, 1)} µm${matchUUm === undefined ? '' : ` ${plusMinus(matchUUm, units)}`}`]), `seat ${length(seatMm)}`,
  ].join(' · ')
  const paragraph = (text: string) => wrapped(text, columns)
  const item = (text: string) => wrapped(text, columns, '  - ')
  const said = (choice: Choice) => [...choice.because, ...choice.findings].map((finding) => item(sayFinding(finding, units, nameOf))).join('')
  const head = (choice: Choice) => {
    const slots = slotsOf(choice.bars)
    return `${called(choice)}, ${stands(choice)}${slots === '' ? '' : `; slot ${slots}`}`
  }
  return {
    nameOf, paragraph, item,
    finding: (finding: Finding) => item(sayFinding(finding, units, nameOf)),
    title: () => {
      const { part, vise: { jawHeightMm } } = question, sizes = [part.betweenJawsMm, part.alongJawsMm, part.heightMm].map((mm) => (mm === null ? '?' : length(mm)))
      return `${vise === null ? capital(terms.vise) : plainText(vise.name)}, jaws ${length(jawHeightMm)}; part ${part.shape === 'round' ? `Ø${sizes[2]!}, ${sizes[1]!} long` : sizes.join(' × ')}. Sizes in ${units.length}.\n${cutLines(question, units)}\n`
    },
    first: (choice: Choice) => [wrapped(head(choice), columns, 'Use  '), wrapped(numbers(choice), columns, '     '), said(choice)].join(''),
    other: (choice: Choice) => [wrapped(head(choice), columns, '  '), wrapped(numbers(choice), columns, '    ')].join(''),
    miss: ({ rejection, why }: ReturnType<typeof nearMisses>[number]) => {
      const plain = rejection.stand === 'on edge' || rejection.stand === 'single'
      const name = plain ? called(rejection) : `${length(rejection.seatMm)} (${called(rejection)}, ${wayWords[rejection.stand]})`
      return wrapped(`${name}: ${why.map((finding) => sayFinding(finding, units, nameOf)).join(' ')}`, columns, '  ')
    },
  }
}

/** The cuts as they were read, with the numbers that findings call them by. */
function cutLines({ cuts }: SetupQuestion, units: Units): string {
  const length = (mm: number) => calledSize(mm, units)
  return cuts.map((cut, at) => {
    const what = cut.kind === 'end' ? `${cut.side} end, ${length(cut.stockMm)} off` : cut.kind === 'hole'
      ? `${cut.tool === 'drill' ? 'hole' : cut.tool} Ø${length(cut.diameterMm)} ${cut.through ? 'through' : `${length(cut.depthMm ?? 0)} deep`}, ${cut.xMm === null ? '' : `${length(cut.xMm)} along, `}${length(cut.yMm)} from the fixed jaw`
      : `${cut.kind} ${length(cut.depthMm)} deep${cut.overJaw ? '' : ', not over a jaw'}`
    return `  cut ${at + 1}: ${what}\n`
  }).join('')
}

function sayRange({ lowMm, highMm }: { readonly lowMm: number; readonly highMm: number }, units: Units): string {
  const low = withUnit(lowMm, units), high = withUnit(highMm, units)
  return low === high ? low : `between ${low} and ${high}`
}

/** What the first choice will come out as, where that was asked: each way, and what is not in it. */
function comesOut({ prediction }: SetupAtVise, say: ReturnType<typeof sayer>): readonly string[] {
  if (prediction === null) return []
  if (prediction.status !== 'foretold') return ['\nWhat comes out\n', ...prediction.because.map(say.finding)]
  return ['\nWhat comes out\n', ...prediction.ways.flatMap(({ held, coming, findings, notKnown }) => [
    ...(prediction.ways.length > 1 ? [held ? '  If the fixed jaw squares it\n' : '  If it lies free on its bars\n'] : []),
    ...(coming.status === 'predicted' ? [{ code: 'part-will-tilt', facts: coming.overall }] : []).map(say.finding), ...[...findings, ...notKnown].map(say.finding),
  ])]
}
