import { attempt } from '#model/attempt.ts'
import type { Finding } from '#model/finding.ts'
import type { PlannedStep } from '#model/make-plan.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { type CardJob, type Case, cuttingCase, heatCase } from '#engine/make/job/card-cases.ts'
import { answerCutting } from '#engine/make/cutting/answer-cutting.ts'
import { answerHeat } from '#engine/make/heat/answer-heat.ts'
import type { HeatStep } from '#engine/make/heat/heat.ts'
import { cuttingBooks } from '#reference/cutting/cutting-books.ts'
import { makingBooks } from '#reference/making-books.ts'
import { heatBooks } from '#reference/steels/heat-books.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital, listOf, type NameOf } from '#words/wording.ts'

/** What is worked out for a step, in lines for the sheet; what is refused is said as well. */
export function computedLines(job: CardJob, { kind, calcs }: PlannedStep, units: Units, nameOf: NameOf): readonly string[] {
  const isFirst = job.plan.steps.find((step) => step.calcs.some((calc) => calcs.includes(calc)))?.kind === kind // What is to be known is said once.
  const number = (value: number, most = 1) => wordNumber(value, units.decimalMark, null, most), mm = (value: number) => wordLength(value, units, { fractions: false })
  const say = <Answer extends { readonly findings: readonly Finding[] }>(asked: () => Case, answer: (raw: Case) => Answer, lines: (answer: Answer) => readonly string[]): readonly string[] => {
    const got = attempt(() => { const raw = asked(); return raw && answer(raw) })
    if (got === null) return []
    return got instanceof Refusal ? [sayRefusal(got, units)] : [...lines(got), ...(isFirst ? got.findings.map((one) => sayFinding(one, units, nameOf)) : [])]
  }
  const band = (from: number | null, to: number | null) => (from === null || to === null ? '' : from === to ? number(from) : `${number(from)} to ${number(to)}`)
  if (calcs.includes('cutting')) {
    return say(() => cuttingCase(job, kind), (raw) => answerCutting(raw, cuttingBooks), ({ rpm, feedMmPerMin, passes, wall }) =>
      [`Spindle ${number(rpm, 0)} 1/min, feed ${mm(feedMmPerMin)} ${units.length}/min; a side in ${passes.map(({ facesMm, kind: pass }) => `${mm(facesMm)} ${pass}`).join(', ')}; leaves ${number(wall.leftUm)} µm of bending.`])
  }
  if (calcs.includes('heat')) {
    return say(() => heatCase(job, makingBooks.steels), (raw) => answerHeat(raw, heatBooks), ({ steps }) =>
      [steps.filter(({ step }) => (step === 'temper') === (kind !== 'harden')).map((one) => heatLine(one, band)).join('; ')])
  }
  if (!calcs.includes('grind')) return []
  return job.plan.packs.filter(({ side }) => (kind === 'grind the faces') === (side === 'faces')).map(({ bars, clean, ordered, shimsMm }) => {
    const said = [
      `${listOf(bars.map(nameOf))}: ${clean.passes.join(' + ')} passes a side until clean, ${mm(clean.downfeedMm)} off each`,
      ordered === null ? 'the size ordered is not reached' : `down to ${mm(ordered.toMm)} ${ordered.passes.join(' + ')} passes`,
      ...(shimsMm.some((one) => one > 0) ? [`shims ${shimsMm.map(mm).join(', ')}`] : []),
    ]
    return `${said.join('; ')}.`
  })
}

/** `Harden 800 to 830 °C, 20 to 30 min in oil`. */
function heatLine({ step, fromC, toC, fromMin, toMin, medium, times }: HeatStep, band: (from: number | null, to: number | null) => string): string {
  const heat = fromC === null ? '' : ` ${band(fromC, toC)} °C`, time = fromMin === null ? '' : `, ${band(fromMin, toMin)} min`
  return `${capital(step)}${heat}${time}${medium === null ? '' : ` in ${medium}`}${times > 1 ? `, ${times} times` : ''}`
}
