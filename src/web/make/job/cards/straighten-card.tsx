import { useMemo } from 'react'
import { straightenCase } from '#engine/make/job/card-cases.ts'
import { yieldIndication } from '#engine/make/straighten/yield-indication.ts'
import { answerStraighten } from '#engine/make/straighten/answer-straighten.ts'
import { attempt } from '#model/attempt.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { Press } from '#model/make-plan.ts'
import { yieldRows } from '#reference/steels/yields.ts'
import { saySource } from '#words/say-source.ts'
import { typeTool } from '#web/make/job-edits.ts'
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
          <YieldKnown {...props} />
          {isKnown ? null : <p>{presses.length === 1 ? 'One bar bows' : `${presses.length} bars bow`} more than goes on. How far to press hangs on the yield stress of the steel as it is tempered: take it from the supplier’s sheet.</p>}
          {!isKnown ? null : presses.map((press) => <OnePress key={`${press.bar} ${press.side}`} {...props} press={press} />)}
        </>
      )}
    </section>
  )
}

/** Where the yield stress is from: typed here, or what is published of the steel, for a touch; never taken by itself. */
function YieldKnown({ job, view: { route: { steel }, order, plan } }: StepProps) {
  const units = useUnits(), number = (value: number, decimals = 0) => wordNumber(value, units.decimalMark, null, decimals)
  const read = plan.bars.flatMap(({ hrc }) => (hrc === null ? [] : [hrc])), hrc = read.length > 0 ? Math.min(...read) : order.hrc
  const known = steel === null || hrc === null ? null : yieldIndication(yieldRows, steel, hrc)
  const typed = (job.tools['straighten.yield'] ?? '').trim(), taken = known !== null && typed === String(Math.round(known.yieldMPa))
  const own = typed === '' || taken ? '' : 'The yield stress is the shop’s own. '
  if (known === null) return <p className="small">{own}{hrc === null ? 'Type the hardness that was read; without it nothing published can be looked up.' : `Of ${steel ?? 'this steel'} at ${number(hrc, 1)} HRC no yield stress is published here.`}</p>
  return (
    <>
      <p className="small">{own}Published of {known.steel} at {number(known.hrc, 1)} HRC: about {number(known.yieldMPa)} N/mm² in compression ({saySource(known)}). For bending an indication only: press in small steps.</p>
      {taken ? null : <div className="actions"><button type="button" className="action" onClick={() => typeTool(job.id, 'straighten.yield', String(Math.round(known.yieldMPa)))}>Take {number(known.yieldMPa)}</button></div>}
    </>
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
