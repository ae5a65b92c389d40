import type { paperTold } from '#engine/setup/paper/answer-paper.ts'
import { wordLength } from '#model/length.ts'
import type { Facts } from '#model/refusal.ts'
import { sayFinding } from '#words/say-finding.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { useUnits } from '#web/units.ts'

type Props = {
  readonly told: ReturnType<typeof paperTold>
  /** What counts as loose only drags. */
  readonly about: boolean
  readonly topOut: boolean
  readonly onTopOut: (out: boolean) => void
  readonly stripMm: number
  readonly acrossMm: number | null
}

const tops = [{ value: 'out', label: 'An indicator says the top is out' }] as const

/** What the pattern may mean, most likely first, how to tell, how large it is, and what to do. */
export function DownAnswer({ told, about, topOut, onTopOut, stripMm, acrossMm }: Props) {
  const units = useUnits(), { meaning, gapAtLeastMm, wedgeAcrossAtLeastMm, wedgeAlongAtLeastMm, unseenUpToMm, lookAt } = told
  const facts: Facts = { gapAtLeastMm, wedgeAcrossAtLeastMm, wedgeAlongAtLeastMm, unseenUpToMm, lookAt: [...lookAt] }
  const say = (code: string) => sayFinding({ code, facts }, units), length = (mm: number) => wordLength(mm, units)
  return (
    <>
      <section className="beside-answer" aria-label="What it may mean" aria-live="polite">
        <h2>{say(meaning)}</h2>
        {wedgeAcrossAtLeastMm === null || acrossMm === null ? null : (
          <p>The strips lie {length(acrossMm)} apart, so the gap of {length(stripMm)} there is a wedge of {length(wedgeAcrossAtLeastMm)} across the whole part{about ? '' : ', or more'}.</p>
        )}
        {about ? <p>A strip that drags has about its own thickness of room: the size is about that, not at least.</p> : null}
        {told.tellApart.length === 0 ? null : <h3>Most likely first, and how to tell</h3>}
        <ol className="beside-points" data-counted="">
          {told.tellApart.map(({ cause, test, remedy }) => <li key={cause}><strong>{say(cause)}</strong>{say(test)} {say(remedy)}</li>)}
        </ol>
      </section>
      {meaning === 'seated' || meaning === 'look-at-bars' ? <Toggles label="And the top?" options={tops} chosen={topOut ? ['out'] : []} onChange={(chosen) => onTopOut(chosen.length > 0)} /> : null}
      <ShowSum sums={told.sum} />
      <Cautions situations={told.situations} />
    </>
  )
}
