import { useMemo } from 'react'
import { answerHeat } from '#engine/make/heat/answer-heat.ts'
import type { HeatStep } from '#engine/make/heat/heat.ts'
import { heatCase } from '#engine/make/job/card-cases.ts'
import { attempt } from '#model/attempt.ts'
import { wordNumber } from '#model/length.ts'
import { makingBooks } from '#reference/making-books.ts'
import { heatBooks } from '#reference/steels/heat-books.ts'
import { saySource } from '#words/say-source.ts'
import { capital } from '#words/wording.ts'
import { cardJobOf } from '#web/make/job/cards/card-job.ts'
import { Computed } from '#web/make/job/cards/computed.tsx'
import { ToolField } from '#web/make/job/cards/tool-field.tsx'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { useUnits } from '#web/units.ts'

/** The schedule out of the steel's table, for the hardness asked for; outside the table nothing is told. */
export function HeatCard({ job, view }: StepProps) {
  const { decimalMark } = useUnits(), number = (value: number) => wordNumber(value, decimalMark, null, 1)
  const answer = useMemo(() => attempt(() => { const asked = heatCase(cardJobOf(job, view), makingBooks.steels); return asked && answerHeat(asked, heatBooks) }), [job, view])
  return (
    <Computed
      title={`Heat treatment${view.route.steel ? ` of ${view.route.steel}` : ''}`} answer={answer}
      fields={<ToolField job={job} field="heat.hrc" label="hardness wanted, HRC" ifEmpty={view.order.hrc === null ? 'as the steel is worked at' : String(view.order.hrc)} refused={answer} />}
    >
      {({ steps, asQuenchedHrc }) => (
        <>
          <div className="mk-wide">
            <table>
              <caption>Minutes count from when the bars have reached the heat</caption>
              <thead><tr><th scope="col">step</th><th scope="col">°C</th><th scope="col">min</th><th scope="col">how</th><th scope="col">source</th></tr></thead>
              <tbody>{steps.map((one, at) => <tr key={at}><th scope="row">{capital(one.step)}</th><td>{band(one.fromC, one.toC, number)}</td><td>{band(one.fromMin, one.toMin, number)}</td><td>{howOf(one)}</td><td className="small">{saySource(one)}</td></tr>)}</tbody>
            </table>
          </div>
          {asQuenchedHrc ? <p>As quenched {number(asQuenchedHrc.from)} to {number(asQuenchedHrc.to)} HRC.</p> : null}
        </>
      )}
    </Computed>
  )
}

const band = (from: number | null, to: number | null, number: (value: number) => string): string => (from === null || to === null ? '–' : from === to ? number(from) : `${number(from)} to ${number(to)}`)
const howOf = ({ medium, times }: HeatStep): string => [medium === null ? '' : `in ${medium}`, times > 1 ? `${times} times` : ''].filter((text) => text !== '').join(', ')
