import type { Finding } from '#model/finding.ts'
import { type CuttingQuestion, leastChipMm, type Pass, type Wall } from '#engine/make/cutting/side-pass.ts'

/** A chip thinner than this share of the feed leaves room for more feed. Common practice, no source. */
const thinShare = 0.9

/** Deeper than so many diameters a side mill chatters; a guide to end mills finishes at 2 D. @source SIDE-MILLING */
const deepDiameters = 2

/** What to know of a cut; what the machine limits is said before. */
export function cuttingFindings(question: CuttingQuestion, passes: readonly Pass[], wall: Wall, feedPerToothMm: number): readonly Finding[] {
  const { cutter, depthMm, hardened } = question
  return [
    ...feedFindings(question, feedPerToothMm),
    ...chipFindings(passes, cutter.diameterMm, feedPerToothMm),
    ...(depthMm > deepDiameters * cutter.diameterMm ? [{ code: 'cut-deep', facts: { depthMm, diameterMm: cutter.diameterMm, most: deepDiameters } }] : []),
    ...(hardened && cutter.material === 'HSS' ? [{ code: 'hss-too-soft', facts: {} }] : []),
    ...(question.force.assumedMc ? [{ code: 'exponent-assumed', facts: { mc: question.force.mc } }] : []),
    { code: 'cutter-bends', facts: { finishUm: wall.finishUm, leftUm: wall.leftUm, taperUm: wall.taperUm } },
    ...(wall.springUm === null ? [] : [{ code: 'spring-pass-climb', facts: { widthUm: wall.finishUm } }]),
    { code: 'cutter-sheet-first', facts: {} },
  ]
}

function feedFindings({ data, cutter: { diameterMm } }: CuttingQuestion, feedPerToothMm: number): readonly Finding[] {
  if (data === null) return []
  const times = data.feed.per === 'diameter' ? diameterMm : 1, fromMm = data.feed.from * times, toMm = data.feed.to === null ? null : data.feed.to * times, facts = { feedPerToothMm, fromMm, toMm }
  if (feedPerToothMm < fromMm * (1 - 1e-9)) return [{ code: 'feed-small', facts }]
  return toMm !== null && feedPerToothMm > toMm * (1 + 1e-9) ? [{ code: 'feed-large', facts }] : []
}

/** Once for the roughing passes, which are alike, and once for finishing; what a spring pass takes is thin by its nature. */
function chipFindings(passes: readonly Pass[], diameterMm: number, feedPerToothMm: number): readonly Finding[] {
  const told = (['rough', 'finish'] as const).flatMap((kind) => passes.find((pass) => pass.kind === kind) ?? [])
  return told.flatMap(({ kind, facesMm, chip: { maxMm, perFeed, feedFactor } }) => [
    ...(maxMm < leastChipMm ? [{ code: 'chip-thin', facts: { kind, chipMm: maxMm, leastMm: leastChipMm } }] : []),
    ...(perFeed < thinShare ? [{ code: 'feed-may-rise', facts: { kind, share: facesMm / diameterMm, perFeed, feedFactor, feedPerToothMm: feedPerToothMm * feedFactor } }] : []),
  ])
}
