import { blockStep } from '#drafting/setup/block-step.ts'
import type { BlockOrder } from '#engine/setup/block/block.ts'
import type { BlockStep } from '#engine/setup/block/step.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { calledSize } from '#words/say-bar.ts'
import { sayFinding } from '#words/say-finding.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { useTerms, useUnits } from '#web/units.ts'

type Props = { readonly order: BlockOrder; readonly jawMm: number; readonly labelOf: (id: string) => string }

/** Each face with its drawing: what lies where, what carries it, what to mind. */
export function BlockSteps({ order, jawMm, labelOf }: Props) {
  return <ol className="beside-steps">{order.steps.map((step, k) => <OneStep key={step.cut} step={step} place={k + 1} jawMm={jawMm} labelOf={labelOf} />)}</ol>
}

const wide = { widthMm: 44, heightMm: 46 }

function OneStep({ step, place, jawMm, labelOf }: Omit<Props, 'order'> & { readonly step: BlockStep; readonly place: number }) {
  const units = useUnits(), { movingJaw } = useTerms(), { up, down, fixed, moving, rod } = step, beside = step.how === 'past the jaw'
  const scene = blockStep({
    title: `Face ${step.cut}`, description: `${up} up, ${fixed} at the fixed jaw, ${moving} at the ${movingJaw}, ${down} down`, up, down, fixed, moving, rod,
    betweenMm: step.betweenJawsMm, heightMm: step.heightMm, seatMm: step.seatMm ?? step.lowMm, jawMm, offTopMm: beside ? 0 : step.depthMm,
  }, wide)
  return (
    <li className="beside-step">
      <Drawing scene={scene} />
      <div>
        <h3>{place}. Face {step.cut}: {wordLength(step.depthMm, units)} off{step.how === 'standing' ? ', block upright' : beside ? ', beside the jaws' : ''}</h3>
        <p><strong>{restOf(step, labelOf)}</strong>{sayGrip(step, units)}</p>
        <p>{fixed} at the fixed jaw, {moving} at the {movingJaw}, {down} down. Heights that work: {wordLength(step.lowMm, units)} to {wordLength(step.highMm, units)}.</p>
        {step.findings.map(({ code, facts }) => <p key={code} className={code === 'no-pair-serves' ? 'beside-warn' : undefined}>{sayFinding({ code, facts }, units)}</p>)}
      </div>
    </li>
  )
}

/** What carries it. */
function restOf({ rest, pair }: BlockStep, labelOf: Props['labelOf']): string {
  if (rest === 'pair') return labelOf(pair!)
  return rest === 'bed' ? 'On the bed' : rest === null ? 'No pair serves' : 'Any pair'
}

const sayGrip = ({ gripMm, stickOutMm }: BlockStep, units: Units): string => (gripMm === null ? '' : `: grip ${calledSize(gripMm, units)}, ${calledSize(stickOutMm!, units)} above the jaws`)
