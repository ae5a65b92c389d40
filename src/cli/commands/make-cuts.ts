import type { Units } from '#model/shop-record.ts'
import { withUnit, wordLength } from '#model/length.ts'
import { inColumns } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { type CutsOfJob, cutsOfJob, jobOfShop } from '#tasks/make/jobs-of-shop.ts'
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
  const mm = (value: number) => wordLength(value, units), proved = (bound: number | null) => (bound === null ? '' : `; less than ${withUnit(bound, units)} cannot do`), notes = (findings: CutsOfJob['bars'][number]['findings']) => findings.map((one) => `  ! ${sayFinding(one, units)}\n`)
  return [
    ...cuts.findings.map((one) => `! ${sayFinding(one, units, nameOf)}\n`),
    ...cuts.bars.flatMap((cut, at) => {
      const { leastStockLength, bound, plan, findings } = bars[at]!
      return [
        `\n${cut.steel}, ${conditionWords[cut.condition]}, ${mm(cut.widthMm)} × ${mm(cut.thicknessMm)}, kerf ${mm(cut.kerf)}${leastStockLength === null ? '' : `: ${withUnit(leastStockLength, units)} of stock${proved(bound)}`}\n`,
        inColumns(plan.map(({ stockLength, pieces, times }) => [`  ${times} ×`, mm(stockLength), pieces.flatMap((count, kind) => (count === 0 ? [] : [`${count} × ${mm(cut.pieces[kind]![0])} (${cut.of[kind]!.blanks} of ${mm(cut.of[kind]!.heightMm)})`])).join(', ')])), ...notes(findings),
      ]
    }),
    ...cuts.plates.flatMap((cut, at) => {
      const { leastPlateLength, bound, plan, findings } = plates[at]!
      return [
        `\n${nameOf(cut.stockId)}, ${mm(cut.plateWidth)} wide, kerf ${mm(cut.kerf)}${leastPlateLength === null ? '' : `: ${withUnit(leastPlateLength, units)} of its ${withUnit(cut.plateLength, units)}${proved(bound)}`}\n`,
        inColumns(plan.map(([height, pieces]) => [`  strip ${mm(height)}`, pieces.map(([length, up, count]) => `${count} × ${mm(length)} × ${mm(up)}`).join(', ')])), ...notes(findings),
      ]
    }),
  ].join('')
}
