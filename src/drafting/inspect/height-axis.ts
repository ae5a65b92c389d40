import { wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ProfileData } from '#drafting/inspect/profile.ts'

/** How heights stand on the paper. */
export type UmAxis = {
  readonly unit: string
  readonly mmPerUm: number
  readonly topMm: number
  readonly endMm: number
  readonly yOf: (um: number) => number
  /** Whether a height lies on the paper. */
  readonly shows: (um: number) => boolean
  readonly ticks: readonly { readonly um: number; readonly label: string }[]
  /** A difference of heights in words, without its unit. */
  readonly word: (um: number) => string
}

/** Heights enlarged `times` against the lengths; the name says so, and the unit of the scale. */
export type HeightAxis = UmAxis & { readonly times: number; readonly name: string }

/** Nothing is enlarged so far that less than this is seen from top to bottom: below it lies the scatter of any indicator. */
const leastSpanUm = 4
/** Zero and limits this many times as far apart as the readings would press those flat: they stay outside. */
const mostTimesSpan = 3
const padMm = 2.5
const tickLeastMm = 5.5
const roundTimes = [1, 1.5, 2, 3, 4, 5, 6, 8], roundSteps = [1, 2, 5]
/** µm in a ten-thousandth of an inch. @source INCH-1959 */
const umPerTenth = 2.54

/** The largest round enlargement at which all readings with their whiskers fit, and zero and limits where they are near. */
export function heightAxis(data: ProfileData, { topMm, endMm, scale }: { readonly topMm: number; readonly endMm: number; readonly scale: number }, units: Units): HeightAxis {
  const read = data.series.flatMap(({ points }) => points.flatMap(({ um, uUm }) => (um === null ? [] : [um - (uUm ?? 0), um + (uUm ?? 0)])))
  const [fromUm, toUm] = withNear(read.length === 0 ? [0, 0] : [Math.min(...read), Math.max(...read)], data.band)
  const spanUm = Math.max(leastSpanUm, toUm - fromUm), times = roundBelow(((endMm - topMm - 2 * padMm) / spanUm) * 1000 / scale)
  const axis = umAxis({ middleUm: (fromUm + toUm) / 2, mmPerUm: (times * scale) / 1000, topMm, endMm }, units)
  return { ...axis, times, name: `${axis.unit}, heights ${wordTimes(times)} × the lengths` }
}

/** A scale of heights in µm, or in ten-thousandths of an inch, with round steps. */
export function umAxis({ middleUm, mmPerUm, topMm, endMm }: { readonly middleUm: number; readonly mmPerUm: number; readonly topMm: number; readonly endMm: number }, units: Units): UmAxis {
  const yOf = (um: number): number => (topMm + endMm) / 2 - (um - middleUm) * mmPerUm, shows = (um: number): boolean => yOf(um) >= topMm && yOf(um) <= endMm
  const unitUm = units.length === 'mm' ? 1 : umPerTenth, word = (um: number): string => wordNumber(um / unitUm, units.decimalMark, null, units.length === 'mm' ? 1 : 2)
  const stepUm = unitUm * roundAbove(tickLeastMm / mmPerUm / unitUm), half = (endMm - topMm) / 2 / mmPerUm
  const first = Math.ceil((middleUm - half) / stepUm), last = Math.floor((middleUm + half) / stepUm)
  const ticks = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * stepUm).filter(shows)
  return { unit: units.length === 'mm' ? 'µm' : '0.0001 in', mmPerUm, topMm, endMm, yOf, shows, word, ticks: ticks.map((um) => ({ um, label: `${um > 1e-9 ? '+' : ''}${word(um)}` })) }
}

/** The range of the readings, widened to zero and the limits where they are near enough. */
function withNear([from, to]: readonly [number, number], band: ProfileData['band']): readonly [number, number] {
  const most = mostTimesSpan * Math.max(leastSpanUm, to - from)
  const [low, high] = band && Math.max(to, band.toUm) - Math.min(from, band.fromUm) <= most ? [Math.min(from, band.fromUm), Math.max(to, band.toUm)] : [from, to]
  return Math.max(high, 0) - Math.min(low, 0) <= most ? [Math.min(low, 0), Math.max(high, 0)] : [low, high]
}

/** `2 000`. */
const wordTimes = (times: number): string => String(times).replace(/(?<=\d)(?=(\d{3})+$)/g, ' ')

function roundBelow(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value))
  return Math.round(power * Math.max(...roundTimes.filter((step) => step * power <= value * (1 + 1e-9))))
}

function roundAbove(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value))
  return power * Math.min(...[...roundSteps, 10].filter((step) => step * power >= value * (1 - 1e-9)))
}
