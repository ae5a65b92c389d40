import { viseFrom } from '#engine/rack/vise-from.ts'
import type { StepJaws } from '#engine/setup/other-ways.ts'
import type { ViseRecord } from '#model/vise-record.ts'

/** The jaw sets of a vise that have a step, fitted or not, each with the vise as it would be with them. */
export function stepJawsOf(vise: ViseRecord): readonly StepJaws[] {
  return vise.jawSets.flatMap(({ id, name, stepHeightMm }) => (stepHeightMm === null ? [] : [{ name, stepMm: stepHeightMm, vise: viseFrom({ ...vise, fittedJawSetId: id }) }]))
}
