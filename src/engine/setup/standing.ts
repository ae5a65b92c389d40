import type { Bar } from '#model/bar.ts'
import type { Choice, Place } from '#model/setup.ts'

/** A bar as it stands: its size across the jaws, its size up, and the height of its underside above the bed. */
export type Standing<Sized = Bar> = { readonly bar: Sized; readonly acrossMm: number; readonly upMm: number; readonly fromMm: number; readonly place: Place | null }

type Sizes = Pick<Bar, 'heightMm' | 'thicknessMm' | 'lengthMm'>

export type Resting = Pick<Choice, 'bars' | 'stand' | 'stacked'> & { readonly places: readonly Place[] }

/** How each bar of a choice stands; two high, the upper pair on the middle of the lower. */
export function standingOf<Sized extends Sizes>({ bars: ids, stand, stacked, places }: Resting, bars: ReadonlyMap<string, Sized>): readonly Standing<Sized>[] {
  const all = ids.flatMap((id) => bars.get(id) ?? [])
  if (stacked === undefined || all.length !== 4) return all.map((bar, at) => ({ bar, ...sizes(bar, stand === 'lying flat'), fromMm: 0, place: places[at] ?? null }))
  const [lowerFlat, upperFlat] = stacked.map((way) => way === 'lying flat')
  return all.map((bar, at) => {
    const lower = all[at % 2]!, under = sizes(lower, lowerFlat!), below = places[at % 2] ?? null
    if (at < 2) return { bar, ...under, fromMm: 0, place: below }
    const size = sizes(bar, upperFlat!)
    return { bar, ...size, fromMm: under.upMm, place: below && { xMm: below.xMm + (lower.lengthMm - bar.lengthMm) / 2, yMm: below.yMm + (under.acrossMm - size.acrossMm) / 2 } }
  })
}

const sizes = (bar: Sizes, flat: boolean): { readonly acrossMm: number; readonly upMm: number } =>
  (flat ? { acrossMm: bar.heightMm, upMm: bar.thicknessMm } : { acrossMm: bar.thicknessMm, upMm: bar.heightMm })

/** Whether every size that makes up the seat's height was measured here; on the bed, or on a step of the jaws, there is none. */
export function isSeatMeasured({ bars: ids, stand, stacked }: Pick<Resting, 'bars' | 'stand' | 'stacked'>, bars: ReadonlyMap<string, Pick<Bar, 'standing' | 'thicknessStanding'>>): boolean {
  return ids.every((id, at) => {
    const bar = bars.get(id), way = stacked === undefined ? stand : stacked[at < 2 ? 0 : 1]
    return (way === 'lying flat' ? bar?.thicknessStanding : bar?.standing) === 'measured'
  })
}
