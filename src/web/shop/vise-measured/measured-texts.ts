import { guiltyOf } from '#engine/setup/guilty/guilty.ts'
import { type LengthUnit, readNumber, readSizeMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { type ViseMeasured, viseNotMeasured } from '#model/vise-measured.ts'
import { type Terms, termsFor } from '#words/terms.ts'

/** The short ways as typed; µm as plain numbers, distances as lengths. `u`: standard uncertainty of one reading. */
export type MeasuredTexts = {
  readonly u: string
  /** Bed: four places, indicator from one zero (the first, left empty, is it), and how far apart they lie. */
  readonly bed: readonly [fixedLeft: string, fixedRight: string, movingLeft: string, movingRight: string]
  readonly bedAlong: string; readonly bedAcross: string
  readonly slope: string; readonly slopeOver: string
  readonly lift: string; readonly liftOver: string
  readonly row: string
}
export type FourTexts = { readonly y1: string; readonly y2: string; readonly y3: string; readonly y4: string; readonly over: string; readonly u: string }

export const emptyMeasured: MeasuredTexts = { u: '', bed: ['', '', '', ''], bedAlong: '', bedAcross: '', slope: '', slopeOver: '', lift: '', liftOver: '', row: '' }
export const emptyFour: FourTexts = { y1: '', y2: '', y3: '', y4: '', over: '', u: '' }

export type ShortWay = 'bed' | 'jawSlope' | 'jawLift' | 'rowBed'
const byFour = 'four readings on a ground block'
const waysIn = ({ indicator }: Terms): { readonly [way in ShortWay]: string } => ({
  bed: `${indicator} over the bed`, jawSlope: `${indicator} over a ground block in the jaws`, jawLift: 'ground block, snug to tight', rowBed: `${indicator} from bed to bed`,
})

/** A reading in µm, as typed. @throws Refusal as `readNumber`, `too-large` */
export function readUm(text: string, field: string): number {
  const um = readNumber(text.replace(/\s*(µm|um)$/, ''), field)
  if (Math.abs(um) > 1e5) throw new Refusal('too-large', { field, given: text, needed: { mostUm: 1e5 } })
  return um
}

function readU(text: string): number {
  const u = readUm(text, 'uUm')
  if (u < 0) throw new Refusal('uncertainty-negative', { field: 'uUm', given: text, needed: { least: 0 } })
  return u
}

/** What one short way says of the vise. A difference of two readings has √2 of the uncertainty of one. @throws Refusal of what was typed, `uncertainty-negative` @source GUM */
export function measuredBy(way: ShortWay, texts: MeasuredTexts, units: Units, atIso: string): Partial<ViseMeasured> {
  const u = readU(texts.u), found = { atIso, how: waysIn(termsFor(units.words))[way] }, size = (text: string, field: string) => readSizeMm(text, units.length, field)
  switch (way) {
    case 'bed': {
      const alongMm = size(texts.bedAlong, 'alongMm'), acrossMm = size(texts.bedAcross, 'acrossMm'), places = [[0, 0], [alongMm, 0], [0, acrossMm], [alongMm, acrossMm]] as const
      return { bed: { readings: places.map(([xMm, yMm], k) => ({ xMm, yMm, um: k === 0 && texts.bed[0].trim() === '' ? 0 : readUm(texts.bed[k]!, `bed[${k}].um`) })), uUm: u, ...found } }
    }
    case 'jawSlope': {
      const overMm = size(texts.slopeOver, 'overMm')
      return { jawSlope: { umPerMm: readUm(texts.slope, 'jawSlope.um') / overMm, uUmPerMm: (Math.SQRT2 * u) / overMm, ...found } }
    }
    case 'jawLift': return { jawLift: { um: readUm(texts.lift, 'jawLift.um'), uUm: Math.SQRT2 * u, overMm: size(texts.liftOver, 'overMm'), ...found } }
    case 'rowBed': return { rowBed: { um: readUm(texts.row, 'rowBed.um'), uUm: Math.SQRT2 * u, ...found } }
  }
}

/** The four readings, as a question. @throws Refusal of what was typed */
export function fourAsked(texts: FourTexts, unit: LengthUnit) {
  return {
    y1Um: readUm(texts.y1, 'y1Um'), y2Um: readUm(texts.y2, 'y2Um'), y3Um: readUm(texts.y3, 'y3Um'), y4Um: texts.y4.trim() === '' ? null : readUm(texts.y4, 'y4Um'),
    uUm: texts.u.trim() === '' ? null : readU(texts.u), overMm: texts.over.trim() === '' ? null : readSizeMm(texts.over, unit, 'overMm'),
  }
}

/** What the four readings fill in of the vise's record: the bed across, and the lift with the fourth. Null without a distance or an uncertainty: nothing of it could be used. */
export function measuredByFour(texts: FourTexts, unit: LengthUnit, atIso: string): Partial<ViseMeasured> | null {
  const question = fourAsked(texts, unit), { overMm, uUm } = question
  if (overMm === null || uUm === null) return null
  const { bed, closing } = guiltyOf(question), found = { atIso, how: byFour }
  return {
    bed: { readings: [{ xMm: 0, yMm: 0, um: 0 }, { xMm: 0, yMm: overMm, um: bed.shareUm }], uUm: bed.uUm!, ...found },
    ...(closing === null ? {} : { jawLift: { um: closing.shareUm, uUm: closing.uUm!, overMm, ...found } }),
  }
}

/** A record with some of it found anew. */
export const withFound = (before: ViseMeasured | null, found: Partial<ViseMeasured>): ViseMeasured => ({ ...viseNotMeasured, ...before, ...found })
