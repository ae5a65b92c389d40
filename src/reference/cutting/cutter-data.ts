import type { CutterData } from '#model/cutting-data.ts'

type Speed = readonly [group: string, fromMPerMin: number, toMPerMin: number]
type Feed = CutterData['feed']

/** What a finishing pass takes of soft steel: common practice beside all of these rows. */
const softFinishMm = [0.1, 0.2] as const

const byDiameter = (from: number, to: number | null, start: number): Feed => ({ per: 'diameter', from, to, start })
const carbide = (feed: Feed, speeds: readonly Speed[]): readonly CutterData[] => speeds.map(([group, fromMPerMin, toMPerMin]) =>
  ({ group, material: 'carbide', fromMPerMin, toMPerMin, feed, finishMm: softFinishMm, source: 'END-MILL-START', standing: 'published' }))

/** The speeds are published (their columns put in order by inference), the feeds are common practice. */
const hss = (feed: Feed, speeds: readonly Speed[]): readonly CutterData[] => speeds.map(([group, fromMPerMin, toMPerMin]) =>
  ({ group, material: 'HSS', fromMPerMin, toMPerMin, feed, finishMm: [0.1, 0.3], source: 'HSS-SPEEDS', standing: 'common practice' }))

const inTooth = (from: number, to: number): Feed => ({ per: 'tooth', from, to, start: from })

/** The sheet of the cutter goes before them. @source END-MILL-START SHOULDER-MILLING HSS-SPEEDS SHOP-PRACTICE */
export const cutterData: readonly CutterData[] = [
  ...carbide(byDiameter(0.005, 0.01, 0.006), [['1', 210, 300], ['2', 200, 250]]),
  ...carbide(byDiameter(0.003, 0.008, 0.004), [['6', 160, 240], ['7', 120, 200], ['8', 130, 200], ['9', 140, 200], ['10', 130, 200]]),
  ...carbide(byDiameter(0.002, 0.007, 0.003), [['11', 70, 130]]),
  // the upper end of the feed is cut off in the copy
  ...carbide(byDiameter(0.001, null, 0.001), [['38', 40, 80]]).map((row): CutterData => ({ ...row, finishMm: [0.02, 0.05] })),
  // another guide gives 107 to 114 m/min up to 48 HRC; the lower speed is the one to start with
  { group: '44 HRC', material: 'carbide', fromMPerMin: 40, toMPerMin: 80, feed: inTooth(0.02, 0.05), finishMm: [0.05, 0.15], source: 'SHOULDER-MILLING', standing: 'published' },
  { group: '39', material: 'carbide', fromMPerMin: 30, toMPerMin: 60, feed: inTooth(0.01, 0.03), finishMm: [0.02, 0.05], source: 'SHOP-PRACTICE', standing: 'common practice' },
  ...hss(inTooth(0.03, 0.08), [['1', 21, 37]]), ...hss(inTooth(0.02, 0.06), [['6', 12, 21], ['10', 12, 21]]), ...hss(inTooth(0.02, 0.05), [['7', 9, 18], ['8', 9, 18], ['9', 9, 18]]),
]
