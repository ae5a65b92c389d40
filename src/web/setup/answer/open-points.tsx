import { saySetupFinding } from '#words/say-setup-finding.ts'
import { useDesk } from '#web/setup/desk.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import { pointsOf, sayUnfinished } from '#web/setup/answer/say-points.ts'

/** What to know before using the choice looked at, each as a sentence. */
export function OpenPoints() {
  const { view: { answered, counted }, state: { form }, units, bench } = useDesk()
  if (!answered) return null
  const points = [...pointsOf(answered, form.use, bench).map((finding) => saySetupFinding(finding, units, (id) => barLabel(id, bench, units))), ...sayUnfinished(counted, form)]
  return points.length === 0 ? null : <ul className="setup-points" aria-label="To know">{points.map((said) => <li key={said}>{said}</li>)}</ul>
}
