import type { StepPictureData } from '#drafting/make/step-picture.ts'
import type { BarSize } from '#model/bar-size.ts'
import type { Blank } from '#model/blank.ts'
import type { StepKind } from '#model/make-step.ts'
import type { Units } from '#model/shop-record.ts'
import { saySize, sayStep } from '#words/say-make.ts'

type Asked = { readonly blanks: readonly Blank[]; readonly kind: StepKind; readonly units: Units; readonly plain: boolean }

const unknown: BarSize = { heightMm: 30, thicknessMm: 10, lengthMm: 150 }

/** The tallest bar as the step leaves it, and what comes off each side. */
export function stepPictureOf({ blanks, kind, units, plain }: Asked): StepPictureData {
  const blank = blanks.at(-1), size = blank?.stages.findLast(({ after }) => after === kind)?.size ?? (kind === 'saw' ? blank?.sawn : kind === 'inspect' ? blank?.finished : undefined)
  const eachMm = blank?.allowances.reduce((sum, one) => (one.takenBy === kind ? sum + one.eachMm : sum), 0) ?? 0
  const title = sayStep(kind), said = plain || size === undefined ? '' : saySize(size, units)
  return { kind, title, description: said === '' ? title : `${title}: ${said} after it`, size: size ?? blank?.finished ?? unknown, eachMm, said }
}
