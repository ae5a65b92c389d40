import type { Cited } from '#model/cited.ts'

/** A band of a table, in the unit its name says. */
export type CitedBand = Cited & { readonly from: number; readonly to: number }

export const quenchMedia = ['air', 'oil', 'water'] as const
export type QuenchMedium = (typeof quenchMedia)[number]

/** After tempering at a temperature a hardness in this band is usual; both ends alike where one value is published. */
export type Tempered = Cited & { readonly atC: number; readonly fromHrc: number; readonly toHrc: number }

/** Minutes at heat: so many for each 25 mm of section (`from` and `to` alike), or a time whatever the section. */
export type Soak = CitedBand & { readonly by: 'section' | 'time' }

/** How a steel is hardened and tempered: a data sheet, or the shop's own. */
export type HeatTable = {
  readonly steel: string
  /** °C before hardening, when much has been machined off. */
  readonly stressReliefC: CitedBand | null
  readonly preheatC: CitedBand | null
  readonly austenitiseC: CitedBand
  readonly soakMin: Soak
  readonly quench: Cited & { readonly medium: QuenchMedium }
  /** Temper as soon as the bar has come down to it. */
  readonly quenchToC: CitedBand | null
  readonly asQuenchedHrc: CitedBand | null
  /** Rising in temperature. */
  readonly tempering: readonly Tempered[]
  /** Minutes for each 25 mm of section, but at least `leastMin`; done `times` times. */
  readonly temperHold: Cited & { readonly minPer25Mm: number; readonly leastMin: number; readonly times: number }
  /** Change of every size, hardened and tempered low, in percent of the size: `usual` between `from` and `to`; shrinkage is negative. */
  readonly growthPercent: (CitedBand & { readonly usual: number }) | null
}

/** Hardness on one scale beside another: an indication only. `rmMPa` null: none is published. */
export type HardnessRow = Cited & { readonly hrc: number; readonly hv: number; readonly rmMPa: number | null }
