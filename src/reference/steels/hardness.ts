import type { HardnessRow } from '#model/heat-table.ts'

type Row = readonly [hrc: number, hv: number, rmMPa: number | null]

/** Even HRC 20 to 42, every one from 44. The tensile strengths below 44 and above 55 are converted from a column in ksi; above 59 none is published. */
const rows: readonly Row[] = [
  [20, 238, 758], [22, 248, 793], [24, 260, 820], [26, 272, 862], [28, 286, 903], [30, 302, 951], [32, 318, 1007], [34, 336, 1048], [36, 354, 1110],
  [38, 372, 1179], [40, 392, 1255], [42, 412, 1338], [44, 434, 1435], [45, 446, 1480], [46, 458, 1530], [47, 471, 1580], [48, 484, 1635], [49, 498, 1695],
  [50, 513, 1760], [51, 528, 1820], [52, 544, 1880], [53, 560, 1950], [54, 577, 2015], [55, 595, 2075], [56, 613, 2158], [57, 633, 2241], [58, 653, 2330], [59, 674, 2420],
  [60, 697, null], [61, 720, null], [62, 746, null], [63, 772, null], [64, 800, null], [65, 832, null], [66, 865, null], [67, 900, null], [68, 940, null],
]

/** Non-austenitic steel, rising. @source ASTM-E140 */
export const hardnessRows: readonly HardnessRow[] = rows.map(([hrc, hv, rmMPa]) => ({ hrc, hv, rmMPa, source: 'ASTM-E140', standing: 'published' }))
