import { useMemo } from 'react'
import { stepPicture } from '#drafting/make/step-picture.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { PlannedStep } from '#model/make-plan.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { stepPictureOf } from '#web/make/job/step-picture-of.ts'
import { useUnits } from '#web/units.ts'

/** A step as it is drawn; `plain`: without its sizes, beside its name. */
export function StepDrawing({ view: { route }, step, plain = false }: { readonly view: Pick<JobView, 'route'>; readonly step: PlannedStep; readonly plain?: boolean }) {
  const units = useUnits(), { blanks } = route, { kind } = step
  const scene = useMemo(() => stepPicture(stepPictureOf({ blanks, kind, units, plain })), [blanks, kind, units, plain])
  return <span className="mk-step-drawing" aria-hidden={plain ? true : undefined}><Drawing scene={scene} /></span>
}
