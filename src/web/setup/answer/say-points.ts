import { plateCheckWanted } from '#engine/rack/plate-check-wanted.ts'
import type { Finding } from '#model/finding.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { Use } from '#model/wishes.ts'
import { capital } from '#words/wording.ts'
import { isNotGiven } from '#web/setup/answer/not-given.ts'
import type { CountedForm } from '#engine/setup/counted-form.ts'
import type { Bench } from '#web/setup/view/bench.ts'
import { type Answered, isRefused } from '#web/setup/view/view-from.ts'

/** What to know before using the choice looked at, on the screen and on the sheet alike. */
export function pointsOf({ shown, answer }: Pick<Answered, 'shown' | 'answer'>, use: Use, { provedOf }: Pick<Bench, 'provedOf'>): readonly Finding[] {
  const ofShown = shown && !isRefused(shown) ? [...shown.findings, ...plateCheckWanted(shown.bars, use, provedOf)] : []
  return [...ofShown, ...answer.findings.filter(({ code }) => code !== 'not-computed' && !isNotGiven(code))]
}

/** The cuts and hollows that were begun and do not count yet. */
export function sayUnfinished({ unfinished }: CountedForm, form: SetupForm): readonly string[] {
  return unfinished.map(({ of, line }) => `${of === 'hollow' ? 'Hollow' : capital(form.cuts[line]!.kind)} ${line + 1} is not counted before all its sizes are there.`)
}
