import type { Cited } from '#model/cited.ts'

/** A steel that bars are made of, under the short name the program uses. */
export type Steel = Cited & {
  readonly name: string
  readonly designation: string
  /** The nearest name in America; null: none. */
  readonly aisi: string | null
  /** The usual content, or the most where only that is stated. */
  readonly carbonPercent: number
  /** The least it has as delivered, where it comes hardened; from a Brinell figure converted, so an indication. Null: soft. */
  readonly deliveredHrc: number | null
  readonly densityKgPerM3: number
  /** What its sheets say, lowest and highest: they differ. */
  readonly eMPa: readonly [least: number, most: number]
  readonly alphaPerMK: readonly [least: number, most: number]
}

type Row = readonly [name: string, designation: string, aisi: string | null, carbonPercent: number, deliveredHrc: number | null, densityKgPerM3: number, eGPa: readonly [number, number], alphaPerMK: readonly [number, number], source: string, standing: Cited['standing']]

const rows: readonly Row[] = [
  ['1.2842', '90MnCrV8', 'O2', 0.9, null, 7850, [210, 210], [12.1, 14.3], 'STEEL-12842', 'published'],
  ['1.2510', '100MnCrW4', 'O1', 0.95, null, 7850, [190, 193], [10.6, 12.8], 'STEEL-12510-B', 'published'],
  ['1.2379', 'X153CrMoV12', 'D2', 1.53, null, 7700, [190, 210], [10.3, 11.9], 'STEEL-12379-B', 'published'],
  ['1.2312', '40CrMnMoS8-6', 'P20+S', 0.4, 29, 7830, [210, 212], [11.7, 12.2], 'STEEL-12312-A', 'published'],
  ['1.2738', '40CrMnNiMo8-6-4', 'P20+Ni', 0.4, 29, 7800, [205, 205], [11.7, 12.3], 'STEEL-12738', 'published'],
  // sold to the mill's data sheet only
  ['prehardened 44 HRC', 'quenched and tempered plate', null, 0.3, 42, 7800, [205, 210], [11, 13], 'SHOP-PRACTICE', 'common practice'],
  ['C45', '1.0503', '1045', 0.46, null, 7850, [210, 210], [11.65, 11.65], 'STEEL-C45', 'published'],
  ['C45U', '1.1730', null, 0.45, null, 7850, [210, 210], [11.65, 11.65], 'STEEL-C45U', 'published'],
  ['S235JRC+C', '1.0122', null, 0.17, null, 7850, [210, 210], [12, 12], 'EN-10025-2', 'memory'],
  ['11SMn30', '1.0715', '1215', 0.14, null, 7850, [210, 210], [12, 12], 'STEEL-11SMN30', 'published'],
  ['42CrMo4', '1.7225', '4140', 0.415, null, 7840, [190, 210], [11.1, 12], 'STEEL-42CRMO4-B', 'published'],
]

/** @source STEEL-12842 STEEL-12510-B STEEL-12379-B STEEL-12312-A STEEL-12738 STEEL-C45 STEEL-C45U STEEL-11SMN30 STEEL-42CRMO4-B EN-10025-2 SHOP-PRACTICE */
export const steels: readonly Steel[] = rows.map(([name, designation, aisi, carbonPercent, deliveredHrc, densityKgPerM3, [eLow, eHigh], alphaPerMK, source, standing]) =>
  ({ name, designation, aisi, carbonPercent, deliveredHrc, densityKgPerM3, eMPa: [1000 * eLow, 1000 * eHigh], alphaPerMK, source, standing }))
