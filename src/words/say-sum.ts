import { mmPerInch, withUnit, wordLength, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { Sum } from '#model/sum.ts'
import { keyWord } from '#words/key-words.ts'
import { cutListSums } from '#words/sums/cut-list.ts'
import { cuttingSums } from '#words/sums/cutting.ts'
import { grindSums } from '#words/sums/grind.ts'
import { heatSums } from '#words/sums/heat.ts'
import { inspectSums } from '#words/sums/inspect.ts'
import { makingSums } from '#words/sums/making.ts'
import { rackSums } from '#words/sums/rack.ts'
import { seatingSums } from '#words/sums/seating.ts'
import { seatSums } from '#words/sums/seat.ts'
import { setupSums } from '#words/sums/setup.ts'
import { straightenSums } from '#words/sums/straighten.ts'
import { termsFor } from '#words/terms.ts'
import { betweenNumbers, capital, type Wording, wordingFor } from '#words/wording.ts'

/** A formula with the names of its inputs in braces: `{jawHeightMm} + {depthMm} − {heightMm}`; a function where it depends on what went in. */
export type SumWords = { readonly title: string; readonly says: string | ((inputs: Sum['inputs']) => string) }

/** One computed number, three ways: what it is, the formula in words, the same with the numbers in. */
export type SaidSum = { readonly title: string; readonly inWords: string; readonly worked: string; readonly sources: readonly string[] }

export const sumWords: { readonly [formula: string]: SumWords } = { ...setupSums, ...seatingSums, ...inspectSums, ...rackSums, ...straightenSums, ...heatSums, ...cuttingSums, ...grindSums, ...seatSums, ...makingSums, ...cutListSums }

export function saySum(sum: Sum, units: Units): SaidSum {
  const w = wordingFor(units), { name, value } = sum.result
  const known = Object.hasOwn(sumWords, sum.formula) ? sumWords[sum.formula]! : null
  const says = known === null ? Object.keys(sum.inputs).map((input) => `{${input}}`).join(', ') : typeof known.says === 'string' ? known.says : known.says(sum.inputs)
  const fill = (put: (input: string) => string, words = says): string => words.replace(/\{([A-Za-z0-9]+)\}/g, (_all, input: string) => put(input)).replaceAll('10 mm', withUnit(10, units)).replaceAll('0.6', w.number(0.6)).replaceAll('+ −', '− ')
  const result = typeof value === 'number' && isLength(name) ? withUnit(value, units) : valueOf(name, value, w)
  const shown = name.endsWith('Um') ? fineValueOf : valueOf
  const worked = fill((input) => shown(input, sum.inputs[input], w), says.replaceAll('}, {', `}${betweenNumbers(units)}{`))
  return {
    title: known?.title ?? capital(nameOf(name, units)),
    inWords: fill((input) => nameOf(input, units)),
    worked: worked === valueOf(name, value, w) ? result : `${worked} = ${result}`,
    sources: sum.sources,
  }
}

function nameOf(name: string, units: Units): string {
  const key = name.split('.').at(-1)!
  return (Object.hasOwn(sumNames, key) ? sumNames[key]! : null) ?? keyWord(key, termsFor(units.words)) ?? key
}

/** Names that only sums use; the rest are the names of the fields. */
const sumNames: { readonly [name: string]: string } = {
  heightMm: 'part height', depthMm: 'depth of the cut', gripMm: 'grip',
  lowMm: 'lowest seat', highMm: 'highest seat', widthMm: 'width of the window', advisedHighMm: 'highest advised seat', gripWishMm: 'grip asked for',
  maxSeatMmByGrip: 'highest seat by stick-out for the grip', maxSeatMmByThickness: 'highest seat by stick-out for the width',
  cutterOverJawMm: 'lowest seat for the cutter', drillTipMm: 'lowest seat for the drill', throughCutMm: 'lowest seat for the cut', reachBelowMm: 'furthest reach below the part',
  stickOutMm: 'above the jaws', aboveLowerJawMm: 'above the lower jaw', tipMm: 'length of the point', bedMm: 'bed', neededMm: 'room the bars need', secondThicknessMm: 'thickness of the other',
  firstMm: 'the first bar', secondMm: 'the second', thirdMm: 'the third', fourthMm: 'the fourth',
  thicknessMm: 'thickness', keepOutMm: 'distance kept', wantedYMm: 'where it was wanted', wantedXMm: 'where it was wanted', movedMm: 'how far it had to move',
  zeroMm: 'zero', meanReadingUm: 'mean reading', highestUm: 'highest', lowestUm: 'lowest', slopeUmPerMm: 'slope for each mm', middleUm: 'middle', chordUm: 'chord over the ends',
  meanRange: 'mean range of scatter 1', noiseUm: 'scatter', firstUm: 'the first', secondUm: 'the second', faceADepartureUm: 'middle with A up', faceBDepartureUm: 'middle with B up',
  guardFactor: 'guard factor', uUm: 'uncertainty', lowerUm: 'lower limit', upperUm: 'upper limit', guardUm: 'guard band', valueUm: 'value', u: 'uncertainty', k: 'coverage factor',
  dof: 'degrees of freedom', residualSumOfSquares: 'sum of squares', pairsBelow: 'fewer pairs',
  meanMm: 'mean height of the pair', bedUm: 'height of the bed', topMm: 'top of the pair', firstTopMm: 'top in the first one', highestTopMm: 'highest top', lowestTopMm: 'lowest top',
  fromBedUm: 'height of the one bed', toBedUm: 'height of the other', apartMm: 'distance of the two', longMm: 'length', endToEndUm: 'end to end',
  zOffsetUm: 'Z offset', spreadUm: 'spread of the tops', worstMatchUm: 'worst match', stripMm: 'thickness of the strip', stripsAcrossMm: 'between the strips, across', stripsAlongMm: 'between the strips, along',
  tableMm: 'table', belowTopMm: 'below the top of the part', totalMm: 'total', targetMm: 'gap to fill', errorMm: 'off by', runs: 'runs',
  y1Um: 'as it is', y2Um: 'bars exchanged', y3Um: 'block turned', y4Um: 'tightened', shareUm: 'share', uHalfUm: 'uncertainty', uDifferenceUm: 'uncertainty',
  pieceCount: 'so many', windows: 'windows', step: 'step', bound: 'this many', served: 'setups served', setups: 'setups', gained: 'setups gained',
  lowestMm: 'lowest reading', highestMm: 'highest reading', faces: 'faces', cleanUpUm: 'clean-up', stepUm: 'step', newHeightMm: 'new height', cutting: 'cutting passes', sparkOut: 'spark-out',
  spanMm: 'span', pressedWidthMm: 'width', pressedDepthMm: 'depth of the section', eMPa: 'elastic modulus', yieldMPa: 'yield stress', wantedSetUm: 'wanted set', deltaYUm: 'depth at first yield', p: 'multiple', pyN: 'force at first yield', springbackUm: 'springback',
  minPer25: 'minutes for each 25 mm', sectionMm: 'section', leastMin: 'least time', lowC: 'the cooler', highC: 'the hotter', sizeMm: 'size', percent: 'percent of growth', temperC: 'temper', hrc: 'hardness',
  belowMm: 'below the jaw', ladderTopMm: 'highest', ladderLowMm: 'lowest', steps: 'its', rungs: 'heights', each: 'of each', underMm: 'under the jaw', finishedMm: 'finished', route: 'route', stockCost: 'stock', workCost: 'work', outsideCost: 'outside', toolsCost: 'tools',
  neededPerSideMm: 'needed on each side', bowMm: 'bow', skinMm: 'skin', downfeedMm: 'what comes off', cost: 'cost',
  rpm: 'spindle speed', feedMmPerMin: 'feed of the table', kc11MPa: 'specific force at a chip of 1 mm', mc: 'exponent', meanChipMm: 'mean chip', kcMPa: 'specific force', cutterKw: 'power at the cutter', chipMm: 'thickest chip', removalCm3PerMin: 'removal', thinnestMm: 'the thinnest that cuts', takenMm: 'width taken', bendingN: 'force that bends it', overhangMm: 'stick-out of the cutter',
  bowUm: 'bow', skinUm: 'skin without carbon', shrinkUm: 'half of what it shrinks', allowanceUm: 'what is there', neededUm: 'what is needed', stageTakesUm: 'what the stage takes', sweeps: 'passes', acrossMm: 'bars side by side', wheelMm: 'width of the wheel', crossfeedMm: 'crossfeed', overrunMm: 'overrun', tableMPerMin: 'speed of the table',
  aUm: 'height at the corner', bUmPerMm: 'slope along', cUmPerMm: 'slope across', ways: 'how many', trials: 'how many', seed: 'as given', partLengthMm: 'length of the part', partWidthMm: 'width of the part', forceN: 'the force', gapUm: 'the gap', has: 'what there is', needed: 'what is asked for',
  leastXMm: 'left end of the bars', mostXMm: 'right end of the bars', leastYMm: 'side of the bars toward the fixed jaw', mostYMm: 'other side of the bars',
}

const isLength = (name: string): boolean => /Mm(By[A-Z]\w*)?$/.test(name)

function valueOf(name: string, value: string | number | null | undefined, w: Wording): string {
  if (value === undefined) return '?'
  if (value === null) return 'none'
  if (typeof value === 'string') return value
  if (isLength(name)) return wordLength(value, w.units)
  return name.endsWith('Deg') ? `${w.number(value)}°` : name.endsWith('Um') ? w.micrometres(value) : w.number(value)
}

/** The same with a length to a tenth of a µm: where µm come out of it, its usual places would hide the difference. */
function fineValueOf(name: string, value: string | number | null | undefined, w: Wording): string {
  if (typeof value !== 'number' || !isLength(name)) return valueOf(name, value, w)
  const { length, decimalMark } = w.units
  return length === 'in' ? wordNumber(value / mmPerInch, decimalMark, null, 6) : wordNumber(value, decimalMark, null, 4)
}
