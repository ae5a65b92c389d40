import { useMemo } from 'react'
import { answerGrind } from '#engine/make/grind/answer-grind.ts'
import { grindCase } from '#engine/make/job/card-cases.ts'
import { attempt } from '#model/attempt.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { PackLeft } from '#model/make-plan.ts'
import { surfaceGrinding } from '#reference/cutting/surface-grinding.ts'
import { sayFinding } from '#words/say-finding.ts'
import { listOf } from '#words/wording.ts'
import { cardJobOf } from '#web/make/job/cards/card-job.ts'
import { Computed } from '#web/make/job/cards/computed.tsx'
import { ToolField } from '#web/make/job/cards/tool-field.tsx'
import { jobNamer } from '#web/make/job/job-namer.ts'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { useUnits } from '#web/units.ts'

const packsShown = 3

/** What comes off each side of every pack, in which passes, from the sizes and the bow as read. */
export function GrindCard(props: StepProps) {
  const { job, view, step } = props, side = step.kind === 'grind the faces' ? 'faces' : 'edges', packs = view.plan.packs.filter((pack) => pack.side === side)
  return (
    <section aria-label="Grinding" className="mk-computed">
      <h3>Wheel</h3>
      <div className="field-list">
        <ToolField job={job} field="grind.wheelWidth" label="width of the wheel" ifEmpty="not said" />
        <ToolField job={job} field="grind.wheelDiameter" label="its diameter" ifEmpty="not said" />
        <ToolField job={job} field="grind.wheelRpm" label="its speed, 1/min" ifEmpty="not said" />
        <ToolField job={job} field="grind.markedRpm" label="marked on it, 1/min" ifEmpty="not said" />
      </div>
      {packs.length === 0 ? <p>{step.state === 'done' ? 'This side is ground.' : 'Nothing is left to grind here.'}</p> : null}
      {packs.slice(0, packsShown).map((pack) => <Pack key={pack.matesId} {...props} pack={pack} />)}
      {packs.length > packsShown ? <details><summary>{packs.length - packsShown} more packs</summary>{packs.slice(packsShown).map((pack) => <Pack key={pack.matesId} {...props} pack={pack} />)}</details> : null}
    </section>
  )
}

function Pack({ shop, job, view, pack }: StepProps & { readonly pack: PackLeft }) {
  const units = useUnits(), nameOf = jobNamer(job, shop), mm = (value: number) => wordLength(value, units, { fractions: false }), { clean, ordered, bars, shimsMm } = pack
  const answer = useMemo(() => attempt(() => answerGrind(grindCase(cardJobOf(job, view), pack), surfaceGrinding)), [job, view, pack])
  return (
    <Computed title={`Pack ${listOf(bars.map(nameOf))}`} answer={answer}>
      {({ order, enough, machineMin }) => (
        <>
          <dl className="mk-figures">
            <div><dt>passes a side until clean</dt><dd>{clean.passes.join(' + ')}</dd></div>
            <div><dt>off each side, {units.length}</dt><dd>{mm(clean.downfeedMm)}</dd></div>
            <div><dt>allowance</dt><dd>{enough === null ? '–' : enough ? 'enough' : '! not enough'}</dd></div>
            {machineMin === null ? null : <div><dt>machine, min</dt><dd>{wordNumber(machineMin, units.decimalMark, null, 0)}</dd></div>}
          </dl>
          <p>
            {ordered === null ? 'The size ordered is not reached clean: the pack becomes lower, no nominal is chased.' : `Down to ${mm(ordered.toMm)} as ordered: ${mm(ordered.downfeedMm)} a side, ${ordered.passes.join(' + ')} passes.`}
            {shimsMm.some((one) => one > 0) ? ` Shims under the hollows: ${bars.map((id, at) => `${nameOf(id)} ${mm(shimsMm[at]!)}`).join(', ')}.` : ''}
          </p>
          <ol className="mk-steps">{order.map((one, at) => <li key={at}>{sayFinding(one, units, nameOf)}</li>)}</ol>
        </>
      )}
    </Computed>
  )
}
