import { useDesk } from '#web/setup/desk.ts'
import { pointsOf, sayUnfinished } from '#web/setup/answer/say-points.ts'
import { useSaying } from '#web/setup/answer/use-saying.ts'

/** What to know before using the choice looked at, each as a sentence. */
export function OpenPoints() {
  const { view: { answered, counted }, state: { form }, bench } = useDesk(), say = useSaying()
  if (!answered) return null
  const points = [...pointsOf(answered, form.use, bench).map(say), ...sayUnfinished(counted, form)]
  return points.length === 0 ? null : <ul className="setup-points" aria-label="To know">{points.map((said) => <li key={said}>{said}</li>)}</ul>
}
