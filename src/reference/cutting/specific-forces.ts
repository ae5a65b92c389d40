import type { SpecificForce } from '#model/cutting-data.ts'

type Row = readonly [group: string, what: string, kc11MPa: number, mc: number | null]

const rows: readonly Row[] = [
  ['1', 'plain carbon below 0.25 %, annealed', 1350, 0.21], ['2', 'plain carbon 0.25 to 0.55 %, annealed', 1500, 0.22], ['3', 'plain carbon below 0.55 %, quenched and tempered', 1675, 0.24],
  ['4', 'plain carbon from 0.55 %, annealed', 1700, 0.24], ['6', 'low alloy, annealed', 1775, 0.24], ['7', 'low alloy, quenched and tempered, 275 HB', 1675, 0.24],
  ['8', 'low alloy, quenched and tempered, 300 HB', 1725, 0.24], ['9', 'low alloy, quenched and tempered, 350 HB', 1800, 0.24], ['10', 'high alloy and tool steel, annealed', 2450, 0.23],
  ['11', 'high alloy and tool steel, quenched and tempered, 325 HB', 2500, 0.23], ['38', 'hardened, 55 HRC', 4600, null], ['39', 'hardened, 60 HRC', 4700, null],
]

/** By groups of VDI 3323, two editions of one guide agree. Older constants of single steels differ by 20 to 40 % and are not mixed in. @source CUTTING-FORCE */
export const specificForces: readonly SpecificForce[] = rows.map(([group, what, kc11MPa, mc]) => ({ group, what, kc11MPa, mc, source: 'CUTTING-FORCE', standing: 'published' }))
