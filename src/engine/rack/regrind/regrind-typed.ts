import { readNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { RegrindWish } from '#engine/rack/regrind/regrind-of-shop.ts'

/** What is asked of the grinder, as typed; numbers in µm but for the spark-out. */
export type RegrindTyped = {
  readonly cleanUp: string
  readonly step: string
  readonly faces: '1' | '2'
  readonly datum: 'A' | 'B' | ''
  readonly infeed: string
  readonly fineInfeed: string
  readonly fineTakes: string
  readonly sparkOut: string
}

/** For a small toolroom grinder; common practice, no source. @source GRIND-RULES */
export const usualRegrind: RegrindTyped = { cleanUp: '10', step: '', faces: '1', datum: '', infeed: '10', fineInfeed: '2', fineTakes: '20', sparkOut: '3' }

export type RegrindNumbers = { readonly cleanUp: number; readonly step: number | null; readonly infeed: number; readonly fineInfeed: number; readonly fineTakes: number; readonly sparkOut: number }

/** Each number for itself, so that a form can say of every field what is wrong with it. */
export const regrindReaders: { readonly [name in keyof RegrindNumbers]: (typed: RegrindTyped) => RegrindNumbers[name] } = {
  cleanUp: ({ cleanUp }) => notBelow0(cleanUp, 'cleanUpUm'), step: ({ step }) => (step.trim() === '' ? null : above0(step, 'stepUm')),
  infeed: ({ infeed }) => above0(infeed, 'infeedUm'), fineInfeed: ({ fineInfeed }) => above0(fineInfeed, 'infeedUm'), fineTakes: ({ fineTakes }) => notBelow0(fineTakes, 'takesUm'), sparkOut: ({ sparkOut }) => wholeNumber(sparkOut),
}

/** The wish that these numbers make, none of the bars lower than the others. */
export function wishOf({ cleanUp, step, infeed, fineInfeed, fineTakes, sparkOut }: RegrindNumbers, { faces, datum }: Pick<RegrindTyped, 'faces' | 'datum'>): Omit<RegrindWish, 'lowUm'> {
  return { cleanUpUm: cleanUp, stepUm: step, faces: faces === '2' ? 2 : 1, datumFace: datum === '' ? null : datum, sparkOut, stages: [{ infeedUm: infeed, takesUm: 0 }, { infeedUm: fineInfeed, takesUm: fineTakes }] }
}

/** The same out of what was typed. @throws Refusal of `readNumber`, `size-not-positive`, `wish-negative`, `value-not-allowed` (spark-out) */
export function wishFrom(typed: RegrindTyped): Omit<RegrindWish, 'lowUm'> {
  const { cleanUp, step, infeed, fineInfeed, fineTakes, sparkOut } = regrindReaders
  return wishOf({ cleanUp: cleanUp(typed), step: step(typed), infeed: infeed(typed), fineInfeed: fineInfeed(typed), fineTakes: fineTakes(typed), sparkOut: sparkOut(typed) }, typed)
}

/** How much lower each bar is to come out, by its id; an empty text is none. @throws Refusal of `readNumber`, `wish-negative` */
export function lowFrom(texts: { readonly [bar: string]: string }): RegrindWish['lowUm'] {
  return Object.fromEntries(Object.entries(texts).flatMap(([bar, text]) => (text.trim() === '' ? [] : [[bar, notBelow0(text, 'lowUm')]])))
}

function above0(text: string, field: string): number {
  const given = readNumber(text, field)
  if (given <= 0) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  return given
}

function notBelow0(text: string, field: string): number {
  const given = readNumber(text, field)
  if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  return given
}

const mostSparkOut = 100

function wholeNumber(text: string): number {
  const given = readNumber(text, 'sparkOut')
  if (!Number.isInteger(given) || given < 0 || given > mostSparkOut) throw new Refusal('value-not-allowed', { field: 'sparkOut', given, needed: `a whole number from 0 to ${mostSparkOut}` })
  return given
}
