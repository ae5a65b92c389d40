import { answerTable } from '#engine/setup/table/answer-table.ts'
import { tipLengthMm } from '#engine/setup/reach.ts'
import { readTableCase } from '#engine/setup/table/read-table.ts'
import { tableOf } from '#engine/setup/table/table.ts'
import { thickestAtEdges } from '#engine/setup/table/thickest.ts'
import { readLengthMm, type LengthUnit } from '#model/length.ts'

export type HoleTexts = { readonly diameter: string; readonly across: string; readonly along: string; readonly through: boolean; readonly depth: string }
export type StrapTexts = { readonly along: string; readonly across: string }

/** The table as typed. Bars are two alike; a strap left empty stands above a bar. */
export type TableTexts = {
  readonly across: string; readonly along: string; readonly height: string
  readonly thickness: string; readonly length: string; readonly barHeight: string
  readonly inboard: string; readonly turned: boolean; readonly air: string
  readonly holes: readonly HoleTexts[]; readonly straps: readonly StrapTexts[]
}

export const emptyHole: HoleTexts = { diameter: '', across: '', along: '', through: true, depth: '' }
export const emptyTable: TableTexts = {
  across: '', along: '', height: '', thickness: '', length: '', barHeight: '', inboard: '', turned: false, air: '', holes: [emptyHole], straps: [{ along: '', across: '' }, { along: '', across: '' }],
}

/** The raw case that `table` reads, every length in mm. @throws Refusal of `readLengthMm`; `field` is the path in the case */
export function tableCase(texts: TableTexts, unit: LengthUnit) {
  const mm = (text: string, field: string) => readLengthMm(text, unit, field)
  const or = (text: string, field: string, elseMm: number) => (text.trim() === '' ? elseMm : mm(text, field))
  const part = { betweenJawsMm: mm(texts.across, 'part.betweenJawsMm'), alongJawsMm: mm(texts.along, 'part.alongJawsMm'), heightMm: mm(texts.height, 'part.heightMm') }
  const cuts = texts.holes.flatMap((hole, k) => (isBlank(hole) ? [] : [{
    kind: 'hole' as const, diameterMm: mm(hole.diameter, `cuts[${k}].diameterMm`), yMm: mm(hole.across, `cuts[${k}].yMm`), xMm: mm(hole.along, `cuts[${k}].xMm`),
    ...(hole.through ? {} : { through: false, depthMm: mm(hole.depth, `cuts[${k}].depthMm`) }),
  }]))
  const { turned } = texts, [underMm, apartMm] = turned ? [part.betweenJawsMm, part.alongJawsMm] : [part.alongJawsMm, part.betweenJawsMm]
  const thicknessMm = mm(texts.thickness, 'bars[0].thicknessMm'), lengthMm = or(texts.length, 'bars[0].lengthMm', underMm), inboardMm = or(texts.inboard, 'bars[0].yMm', 0)
  const lie = underMm / 2 - lengthMm / 2, far = apartMm - thicknessMm - inboardMm
  const bars = [inboardMm, far].map((off) => ({ xMm: turned ? off : lie, yMm: turned ? lie : off, thicknessMm, lengthMm, turned }))
  const straps = texts.straps.map((strap, k) => {
    const bar = bars[k % 2]!, [alongMm, acrossMm] = turned ? [bar.xMm + thicknessMm / 2, part.betweenJawsMm / 2] : [part.alongJawsMm / 2, bar.yMm + thicknessMm / 2]
    return { xMm: or(strap.along, `straps[${k}].xMm`, alongMm), yMm: or(strap.across, `straps[${k}].yMm`, acrossMm) }
  })
  return { part, cuts, bars, straps, wishes: texts.air.trim() === '' ? {} : { holeAirMm: mm(texts.air, 'wishes.holeAirMm') } }
}

/** The answer, with the case as it was read and the thickest bars for the edges. @throws Refusal as `tableCase`, `readTableCase` */
export function tableAnswered(texts: TableTexts, unit: LengthUnit) {
  const raw = tableCase(texts, unit), { question } = readTableCase(raw)
  const tips = question.cuts.map((cut) => (cut.kind === 'hole' && cut.through ? tipLengthMm(cut) + cut.runThroughMm : null))
  return { raw, question, tips, answer: answerTable(raw) }
}

export type TableTold = ReturnType<typeof tableAnswered>

/** The thickest bars for the edges and the lowest that keep tips off the table, as soon as part and holes are known: before any bar is chosen. @throws Refusal as `tableCase` */
export function barsFor(texts: TableTexts, unit: LengthUnit) {
  const { question } = readTableCase(tableCase({ ...texts, thickness: '1 mm', length: '', inboard: '' }, unit))
  return { ...thickestAtEdges(question), lowMm: tableOf(question).lowMm }
}

const isBlank = ({ diameter, across, along }: HoleTexts): boolean => [diameter, across, along].every((text) => text.trim() === '')
