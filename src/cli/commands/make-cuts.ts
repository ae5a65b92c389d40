import type { BarCut } from '#model/blank.ts'
import type { Finding } from '#model/finding.ts'
import type { Units } from '#model/shop-record.ts'
import { withUnit, wordLength } from '#model/length.ts'
import { inColumns } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { type CutsOfJob, cutsOfJob, jobOfShop } from '#tasks/make/jobs-of-shop.ts'
import { sayTaken } from '#words/say-cut.ts'
import { sayFinding } from '#words/say-finding.ts'
import { conditionWords } from '#words/say-make.ts'
import type { NameOf } from '#words/wording.ts'

export async function makeCutsCommand(wanted: string, { data, json }: JsonOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const { job: { planned } } = await jobOfShop(store, wanted)
    if (out.watched) out.say('Working the cut list out …\n')
    const found = await cutsOfJob(store, wanted), names = new Map([...planned!.lengths, ...planned!.plates].map(({ id, name }) => [id, name]))
    out.answer(json ? `${JSON.stringify(found)}\n` : cutsText(found, units, (id) => names.get(id) ?? id))
  })
}

function cutsText({ cuts, bars, plates }: CutsOfJob, units: Units, nameOf: NameOf): string {
  if (cuts === null) return 'Nothing is cut for this job.\n'
  const mm = (value: number) => wordLength(value, units)
  const taken = (mostMm: number | null, ofWhat: string, bound: number | null) => (mostMm === null ? '' : `: ${sayTaken(mostMm, ofWhat, bound, units)}`)
  const notes = (findings: readonly Finding[]) => findings.map((one) => `  ! ${sayFinding(one, units)}\n`)
  return [
    ...cuts.findings.map((one) => `! ${sayFinding(one, units, nameOf)}\n`),
    ...cuts.bars.flatMap((cut, at) => {
      const { leastStockLength, bound, plan, findings } = bars[at]!
      return [
        `\n${cut.steel}, ${conditionWords[cut.condition]}, ${mm(cut.widthMm)} × ${mm(cut.thicknessMm)}, kerf ${mm(cut.kerf)}${taken(leastStockLength, 'of stock', bound)}\n`,
        inColumns(plan.map(({ stockLength, pieces, times }) => [`  ${times} ×`, mm(stockLength), pieces.flatMap((count, kind) => pieceOf(cut, kind, count, mm)).join(', ')])),
        ...notes(findings),
      ]
    }),
    ...cuts.plates.flatMap((cut, at) => {
      const { leastPlateLength, bound, plan, findings } = plates[at]!
      return [
        `\n${nameOf(cut.stockId)}, ${mm(cut.plateWidth)} wide, kerf ${mm(cut.kerf)}${taken(leastPlateLength, `of its ${withUnit(cut.plateLength, units)}`, bound)}\n`,
        inColumns(plan.map(([height, pieces]) => [`  strip ${mm(height)}`, pieces.map(([length, up, count]) => `${count} × ${mm(length)} × ${mm(up)}`).join(', ')])),
        ...notes(findings),
      ]
    }),
  ].join('')
}

const pieceOf = (cut: BarCut, kind: number, count: number, mm: (value: number) => string): readonly string[] =>
  (count === 0 ? [] : [`${count} × ${mm(cut.pieces[kind]![0])} (${cut.of[kind]!.blanks} of ${mm(cut.of[kind]!.heightMm)})`])
