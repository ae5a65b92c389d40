import type { Prediction } from '#engine/setup/prediction/prediction.ts'
import { readLengthMm } from '#model/length.ts'
import type { OutcomeFields } from '#model/outcome-record.ts'
import type { Units } from '#model/shop-record.ts'

export type OutcomeTyped = { readonly across: string; readonly along: string }

/** What was foretold, without the shop's own scatter; null where nobody knew the side at the fixed jaw, or nothing was foretold. */
export function foretoldFrom(prediction: Prediction | null): OutcomeFields['foretold'] {
  if (prediction?.status !== 'foretold' || prediction.ways.length !== 1) return null
  const { coming } = prediction.ways[0]!
  if (coming.status !== 'predicted') return null
  const of = ({ meanUm, ownSdUm }: typeof coming.along) => ({ meanUm, sdUm: ownSdUm })
  return { along: of(coming.along), across: of(coming.across) }
}

/** What was measured as a record beside what was foretold. @throws Refusal of `readLengthMm` for `partAcross`, `partAlong` */
export function outcomeFrom(setupId: string, { across, along }: OutcomeTyped, prediction: Prediction | null, unit: Units['length']): OutcomeFields {
  const um = (text: string, field: string) => (text.trim() === '' ? null : readLengthMm(text, unit, field) * 1000)
  return { setupId, foretold: foretoldFrom(prediction), text: { along, across }, measuredUm: { along: um(along, 'partAlong'), across: um(across, 'partAcross') }, retired: false, note: '' }
}
