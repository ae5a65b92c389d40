import { lowLimitsOf } from '#engine/setup/window.ts'
import type { Bar } from '#model/bar.ts'
import type { Finding } from '#model/finding.ts'
import type { Facts } from '#model/refusal.ts'
import type { Rejection, RejectionReason, SetupQuestion, Window } from '#model/setup.ts'

type Asked = { readonly question: SetupQuestion; readonly window: Window; readonly bars: ReadonlyMap<string, Sizes> }
type Sizes = Pick<Bar, 'heightMm' | 'thicknessMm'>

/** Each reason of a rejection with the figures that make it plain: by how much, of what. */
export function whyNot(rejection: Rejection, asked: Asked): readonly Finding[] {
  return rejection.reasons.map((code) => ({ code, facts: factsOf(code, rejection, asked) }))
}

function factsOf(code: RejectionReason, rejection: Rejection, { question, window, bars }: Asked): Facts {
  const { seatMm, gripMm } = rejection
  if (code === 'too-high') return question.part.shape === 'round' ? {} : { gripMm: said(Math.max(0, gripMm)), underMm: said(seatMm - window.highMm) }
  if (code === 'too-low') return tooLow(rejection, question)
  if (code === 'too-thick') return tooThick(rejection, question, bars)
  if (code === 'fouled') return { holes: [...rejection.fouledHoles ?? []] }
  return code === 'not-matched' ? { matchUm: differenceUm(rejection, bars), limitUm: question.wishes.matchUm } : {}
}

/** Measured heights carry microns that nobody asks for here: a hundredth of a mm, and microns only where there is less. */
const said = (mm: number): number => (Math.abs(mm) < 0.01 ? micron(mm) : Math.round(mm * 100) / 100)

/** The first limit that stands above the seat; of the cutter how it passes the jaws. */
function tooLow({ seatMm, airMm }: Rejection, question: SetupQuestion): Facts {
  const limits = lowLimitsOf(question), short = (limitMm: number | null) => limitMm !== null && limitMm > seatMm + 1e-6
  if (airMm !== null && short(limits['cutter-over-jaw'])) {
    return airMm < -1e-6 ? { limit: 'cutter-over-jaw', belowMm: said(-airMm) } : nearlyClear(airMm, question.wishes.airMm - airMm)
  }
  const limit = (['drill-tip', 'through-cut'] as const).find((name) => short(limits[name]))
  if (limit === undefined) return {}
  const reachMm = limits[limit]! - question.wishes.bedAirMm
  return { limit, reachMm: micron(reachMm), ...(reachMm > seatMm + 1e-6 ? { intoBedMm: micron(reachMm - seatMm) } : {}), underMm: micron(limits[limit]! - seatMm) }
}

/** Both to the same place, so that what is missing is seen in the number itself. */
const nearlyClear = (airMm: number, underMm: number): Facts =>
  ({ limit: 'cutter-over-jaw', airMm: underMm < 0.01 ? micron(airMm) : said(airMm), underMm: said(underMm) })

/** How far below the part something reaches is worked out from what was typed: to the micron. */
const micron = (mm: number): number => Math.round(mm * 1000) / 1000

/** What two bars leave between them under the part, less than 0 where they meet; one bar alone is simply wider. */
function tooThick({ bars: ids, stand }: Rejection, { part, wishes }: SetupQuestion, bars: ReadonlyMap<string, Sizes>): Facts {
  const across = ids.slice(0, 2).flatMap((id) => bars.get(id) ?? []).map((bar) => (stand === 'lying flat' ? bar.heightMm : bar.thicknessMm))
  if (part.betweenJawsMm === null || stand === 'stack' || across.length === 0) return {}
  const sumMm = across.reduce((sum, mm) => sum + mm, 0)
  return { acrossMm: sumMm / across.length, bars: across.length, betweenMm: part.betweenJawsMm, leftMm: said(part.betweenJawsMm - sumMm), gapMm: wishes.gapMm }
}

function differenceUm({ bars: ids, stand }: Rejection, bars: ReadonlyMap<string, Sizes>): number {
  const sizes = ids.map((id) => bars.get(id)).map((bar) => (stand === 'lying flat' ? bar?.thicknessMm : bar?.heightMm) ?? NaN)
  return Math.abs((sizes[0] ?? NaN) - (sizes[1] ?? NaN)) * 1000
}
