import { useMemo } from 'react'
import { cutBarsDrawing, cutPlateDrawing } from '#drafting/make/cut-drawing.ts'
import { cutListPages, type CutSheetData, type CutSheetPart } from '#drafting/make/list-sheets.ts'
import type { CutList } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { JobRecord } from '#model/job-record.ts'
import { withUnit, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayTaken } from '#words/say-cut.ts'
import { sayFinding } from '#words/say-finding.ts'
import { conditionWords } from '#words/say-make.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import type { NameOf } from '#words/wording.ts'
import { useJobKnown, useJobView } from '#web/make/facts.ts'
import { barsDrawn, plateDrawn } from '#web/make/job/cut-plans.ts'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { jobFrame } from '#web/make/print/job-frame.ts'
import { type CutPlans, useCutPlans } from '#web/make/print/use-cut-plans.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

/** What to saw out of what, to scale. */
export function CutListPage({ shop, job }: { readonly shop: ShopSnapshot; readonly job: JobRecord }) {
  const units = useUnits(), view = useJobView(job, shop, useJobKnown(shop)), day = today(), back = { to: `/make/job/${job.id}`, name: 'Job' }, { paper } = shop.shop
  const cuts = view instanceof Refusal ? null : view.route.cuts, plans = useCutPlans(cuts), nameOf = useMemo(() => jobNamer(job, shop), [job, shop])
  const data = useMemo((): CutSheetData | null => cuts && plans && ({
    ...jobFrame('Cut list', { job, shop, units, day }), parts: partsOf(cuts, plans, units, nameOf), notes: { heading: 'Cautions', lines: cautionsFor(new Set(['sawing', 'sharp edges']), units) },
  }), [cuts, plans, job, shop, units, day, nameOf])
  const told = useMemo(() => data && { ...data, parts: data.parts.map(({ picture: _picture, ...part }) => part), plans: JSON.parse(JSON.stringify(plans)) as object }, [data, plans])
  useTold({ jobId: job.id }, 'cut list', told)
  if (cuts === null) return <NothingToPrint why="Nothing is cut for this job" back={back} />
  if (data === null) return <output className="page">Working the cut list out</output>
  return <PrintFrame title="Cut list" back={back} size={paper} pages={cutListPages(data, paper)} />
}

function partsOf(cuts: CutList, plans: CutPlans, units: Units, nameOf: NameOf): readonly CutSheetPart[] {
  const mm = (value: number) => wordLength(value, units), none = { heads: [], rows: [] }
  const bars = cuts.bars.map((cut, at): CutSheetPart => {
    const answer = plans.bars[at] ?? null, heading = `${cut.steel}, ${conditionWords[cut.condition]}, ${mm(cut.widthMm)} × ${mm(cut.thicknessMm)}`
    if (answer === null || answer instanceof Refusal) return { heading, lines: answer === null ? [] : [sayRefusal(answer, units)], picture: null, table: none }
    return {
      heading, lines: linesOf(`Kerf ${mm(cut.kerf)}`, sayTaken(answer.leastStockLength, 'of stock in all', answer.bound, units), answer.findings, units),
      picture: answer.plan.length === 0 ? null : (widthMm) => cutBarsDrawing(barsDrawn(cut, answer, units), widthMm),
      table: { heads: ['for height', 'piece', 'pieces', 'blanks in each'], rows: cut.pieces.map(([length, count], kind) => [mm(cut.of[kind]!.heightMm), mm(length), String(count), String(cut.of[kind]!.blanks)]) },
    }
  })
  const plates = cuts.plates.map((cut, at): CutSheetPart => {
    const answer = plans.plates[at] ?? null, heading = `${nameOf(cut.stockId)}, ${mm(cut.plateWidth)} wide`
    if (answer === null || answer instanceof Refusal) return { heading, lines: answer === null ? [] : [sayRefusal(answer, units)], picture: null, table: none }
    return {
      heading, lines: linesOf(`Kerf ${mm(cut.kerf)}; strips across the plate first`, sayTaken(answer.leastPlateLength, `of its ${withUnit(cut.plateLength, units)}`, answer.bound, units), answer.findings, units),
      picture: answer.plan.length === 0 ? null : (widthMm) => cutPlateDrawing(plateDrawn(cut, answer, units, nameOf), widthMm),
      table: { heads: ['strip', 'pieces in it, length × height'], rows: answer.plan.map(([height, pieces]) => [mm(height), pieces.map(([length, up, count]) => `${count} × ${mm(length)} × ${mm(up)}`).join(', ')]) },
    }
  })
  return [...bars, ...plates]
}

/** How it is cut and what that takes in one line, then what else there is to say. */
const linesOf = (how: string, taken: string, findings: readonly Finding[], units: Units): readonly string[] =>
  [[how, taken].filter((text) => text !== '').map((text) => `${text}.`).join(' '), ...findings.map((one) => sayFinding(one, units))]
