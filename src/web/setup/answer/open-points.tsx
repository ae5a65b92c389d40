import { sayFinding } from '#words/say-finding.ts'
import { useDesk } from '#web/setup/desk.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import { isNotGiven } from '#web/setup/answer/not-given.ts'
import { isRefused } from '#web/setup/view/view-from.ts'

/** What to know before using the choice looked at, each as a sentence. */
export function OpenPoints() {
  const { view: { answered, counted }, state: { form }, units, bench } = useDesk()
  if (!answered) return null
  const { shown, answer } = answered
  const findings = [...(shown && !isRefused(shown) ? shown.findings : []), ...answer.findings.filter(({ code }) => code !== 'not-computed' && !isNotGiven(code))]
  const unfinished = counted.unfinished.map(({ of, line }) => `${of === 'hollow' ? 'Hollow' : capital(form.cuts[line]!.kind)} ${line + 1} is not counted before all its sizes are there.`)
  const points = [...findings.map((finding) => sayFinding(finding, units, (id) => barLabel(id, bench, units))), ...unfinished]
  return points.length === 0 ? null : <ul className="setup-points" aria-label="To know">{points.map((said) => <li key={said}>{said}</li>)}</ul>
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
