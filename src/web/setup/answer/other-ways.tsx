import { stepJawsOf } from '#engine/rack/step-jaws.ts'
import { waysAroundHoles } from '#engine/setup/around-holes.ts'
import { otherWaysOf } from '#engine/setup/other-ways.ts'
import { saySetupFinding } from '#words/say-setup-finding.ts'
import { useDesk } from '#web/setup/desk.ts'
import { useSaying } from '#web/setup/answer/use-saying.ts'

/** What else would do where nothing in the rack serves, or where the first choice is kept off a jaw. */
export function OtherWays() {
  const { view: { answered }, bench, units } = useDesk(), say = useSaying()
  if (!answered) return null
  const { question, answer, nearest } = answered, first = answer.choices[0] ?? null, around = waysAroundHoles(question, first, bench.rack)
  const ways = first ? around : [...around, ...otherWaysOf(question, answer.window, nearest.map(({ rejection }) => rejection), stepJawsOf(bench.vise))]
  if (ways.length === 0) return null
  return (
    <section>
      <h2 className="setup-rule">Other ways</h2>
      <ul className="setup-lines">{ways.map((way) => <li key={saySetupFinding(way, units)}>{say(way)}</li>)}</ul>
    </section>
  )
}
