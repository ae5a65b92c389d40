import { millimetres } from '#drafting/gallery/sheets.ts'
import type { CoverageStripData, StripVise } from '#drafting/rack/coverage-strip.ts'
import type { HeightOverYears } from '#drafting/rack/height-over-years.ts'
import type { LabelsData } from '#drafting/rack/labels.ts'
import type { LineOfLifeData } from '#drafting/rack/line-of-life.ts'
import { codeAlphabet } from '#model/code.ts'
import { labelText } from '#model/label-code.ts'

/** Invented histories, gaps and labels for the gallery. */
export const years: HeightOverYears = {
  title: '25 A over the years', description: 'Height of 25 A from 2019 to 2025', whiskers: '± U, 95 %',
  heights: ([['2019-03-02', 25.004, 1.5], ['2020-05-02', 25.003, null], ['2022-01-20', 25.001, 1.2], ['2023-02-02', 24.991, 1], ['2025-03-14', 24.99, 0.8]] as const).map(([day, heightMm, uUm]) => ({ day, heightMm, uUm })),
  events: [{ day: '2021-06-01', says: 'knocked' }, { day: '2021-06-05', says: 'stoned' }, { day: '2022-12-11', says: 'reground' }],
}

/** Windows and set of a worked case: 10 to 50 by 5 owned. */
const vise: StripVise = {
  name: 'Mill 1, vise 125', jawHeightMm: 45, says: '1 of 7 setups served', ownedMm: [10, 15, 20, 25, 30, 35, 40, 45, 50],
  windows: ([[31, 32.4, false], [32, 33, false], [31.8, 34, false], [38, 39.6, false], [37.5, 39.6, false], [41, 41.4, false], [34, 38.4, true]] as const).map(([lowMm, highMm, served]) => ({ lowMm, highMm, setups: 1, served })),
  gaps: [{ lowMm: 32, highMm: 32.4, setups: 3 }, { lowMm: 38, highMm: 39.6, setups: 2 }, { lowMm: 41, highMm: 41.4, setups: 1 }],
}
export const strip: CoverageStripData = {
  title: 'Coverage', description: 'Where bars are missing in two vises', words: { served: 'served', unserved: 'not served', owned: 'in the rack', missing: 'missing', more: (count) => `${count} more` },
  vises: [vise, { ...vise, name: 'Mill 2', says: 'all served', gaps: [], windows: vise.windows.filter(({ served }) => served) }],
}

const code = (at: number): string => `7KQ4M2${codeAlphabet[Math.floor(at / 32) % 32]}${codeAlphabet[at % 32]}`
const heights = ['8', '12.5', '1 3/8', '35', '24.991']

/** So many labels, every fifth for a slot. */
export const labels = (count: number): LabelsData => ({
  title: 'Labels', description: 'Labels for bars and slots',
  labels: Array.from({ length: count }, (_, i) => (i % 5 === 4
    ? { qr: labelText('slot', code(i)), large: `B${i}`, under: 'slot', code: code(i) }
    : { qr: labelText('bar', code(i)), large: heights[i % 5]!, under: `${'ABCD'[i % 4]} · slot B${i}`, code: code(i) })),
})

export const life: LineOfLifeData = {
  title: 'History of 25 A', description: 'All that happened to 25 A', heading: '25 A, bar 1', under: 'History up to 14 Mar 2025', code: { label: 'bar', value: '7KQ4M2XP' }, units: millimetres,
  foot: [[{ label: 'Shop', value: 'Demo shop (invented)', share: 0.6 }, { label: 'Printed on', value: '2025-03-14', share: 0.4 }]],
  bar: { label: '25 A', heightMm: 24.99, thicknessMm: 10, lengthMm: 150, markedEnd: 'marked end' },
  figures: ([['Height', '24.99 mm, measured'], ['Trust', 'trusted'], ['Proved for', 'drilling, milling, fine milling'], ['Mates', '25 A, bar 2'], ['Slot', 'B4']] as const).map(([label, value]) => ({ label, value })),
  years, wear: { heading: 'Wear', lines: ['From 2019 to 2022 it changed by 3 µm, which is more than the uncertainty of 1.9 µm.'] }, heads: ['day', 'what', 'who'],
  rows: [['2025-03-14', 'on the plate against 25 with lever indicator (invented): −10, −9, −11; wiped, no rock', 'KM'], ['2023-02-02', 'on the plate against 25: −9, −8, −10', 'KM'], ['2022-12-11', 'reground', 'JO'], ['2021-06-05', 'stoned', 'KM'], ['2021-06-01', 'knocked', 'KM']],
}
