import { useMemo } from 'react'
import { straightenCase } from '#engine/make/job/card-cases.ts'
import { answerStraighten } from '#engine/make/straighten/answer-straighten.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { Press } from '#model/make-plan.ts'
import { attempt } from '#web/make/facts.ts'
import { cardJobOf } from '#web/make/job/cards/card-job.ts'
import { Computed } from '#web/make/job/cards/computed.tsx'
import { ToolField } from '#web/make/job/cards/tool-field.tsx'
import { jobNamer } from '#web/make/job/job-namer.ts'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { useUnits } from '#web/units.ts'

/** How far to press each bar that bows more than goes on, from the bow as read. */
export function StraightenCard(props: StepProps) {
  const { job, view: { plan: { presses } } } = props, isKnown = (job.tools['straighten.yield'] ?? '').trim() !== ''
  return (
    <section aria-label="Press" className="mk-computed">
      <h3>Press</h3>
      {presses.length === 0 ? <p>No bar bows more than goes on, as far as it was read: type the bow after hardening.</p> : (
        <>
          <div className="field-list">
            <ToolField job={job} field="straighten.yield" label="yield stress, N/mm²" ifEmpty="needed" />
            <ToolField job={job} field="straighten.e" label="elastic modulus, N/mm²" />
          </div>
          {isKnown ? null : <p>{presses.length === 1 ? 'One bar bows' : `${presses.length} bars bow`} more than goes on. How far to press hangs on the yield stress of the steel as it is tempered: take it from the supplier’s sheet.</p>}
          {!isKnown ? null : presses.map((press) => <OnePress key={`${press.bar} ${press.side}`} {...props} press={press} />)}
        </>
      )}
    </section>
  )
}

function OnePress({ shop, job, view, press }: StepProps & { readonly press: Press }) {
  const units = useUnits(), nameOf = jobNamer(job, shop), um = (value: number) => wordNumber(value, units.decimalMark, null, 0), { spanMm, wantedSetUm, side } = press
  const answer = useMemo(() => attempt(() => { const asked = straightenCase(cardJobOf(job, view), press); return asked && answerStraighten(asked) }), [job, view, press])
  return (
    <Computed title={`${nameOf(press.bar)}, bow of the ${side}`} answer={answer}>
      {({ pressDepthUm, forceN, springbackUm }) => (
        <>
          <p>Supports {wordLength(spanMm, units)} apart; over them the bow is {um(wantedSetUm)} µm, and so much has to stay.</p>
          <dl className="mk-figures">
            <div><dt>press down, µm</dt><dd>{pressDepthUm === null ? '–' : um(pressDepthUm)}</dd></div>
            <div><dt>force, N</dt><dd>{forceN === null ? '–' : um(forceN)}</dd></div>
            <div><dt>springs back, µm</dt><dd>{springbackUm === null ? '–' : um(springbackUm)}</dd></div>
          </dl>
        </>
      )}
    </Computed>
  )
}
