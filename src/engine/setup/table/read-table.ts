import { Refusal } from '#model/refusal.ts'
import { mostCuts, readCut } from '#engine/setup/read-cut.ts'
import { readPart } from '#engine/setup/read-part.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { defaultWishes, readWishes } from '#engine/setup/read-wishes.ts'
import { refuseImpossible } from '#engine/setup/refuse.ts'
import type { TableBar, TableQuestion } from '#engine/setup/table/table.ts'

/**
 * A raw `table` case: a bar's length lies along the part, or across it where it is `turned`.
 *
 * @throws Refusal with a malformed code, then as `refuseImpossible`, `too-few-bars`, `too-many-bars`
 */
export function readTableCase(raw: unknown): { readonly question: TableQuestion } & Ignored {
  const { value: { bars, ...rest }, ignored } = readCase(raw, (object) => ({
    part: object.object('part', readPart)!,
    cuts: object.listOrEmpty('cuts', readCut, mostCuts),
    bars: object.list('bars', readTableBar),
    straps: object.listOrEmpty('straps', (strap) => ({ xMm: strap.number('xMm'), yMm: strap.number('yMm') })),
    wishes: object.objectOr('wishes', readWishes, defaultWishes),
  }))
  refuseImpossible({ ...rest, bars: bars.map(({ thicknessMm, lengthMm }) => ({ acrossMm: thicknessMm, lengthMm })) })
  const given = bars.length
  if (given < 2) throw new Refusal('too-few-bars', { field: 'bars', given, needed: 2 })
  if (given > 4) throw new Refusal('too-many-bars', { field: 'bars', given, needed: 4 })
  return { question: { ...rest, bars: bars.map(asItStands) }, ignored }
}

type Given = { readonly xMm: number; readonly yMm: number; readonly thicknessMm: number; readonly lengthMm: number; readonly turned: boolean }

const readTableBar = (raw: RawObject): Given => ({
  xMm: raw.number('xMm'), yMm: raw.number('yMm'), thicknessMm: raw.number('thicknessMm'), lengthMm: raw.number('lengthMm'), turned: raw.yesNoOr('turned', false),
})

const asItStands = ({ xMm, yMm, thicknessMm, lengthMm, turned }: Given): TableBar =>
  (turned ? { xMm, yMm, alongMm: thicknessMm, acrossMm: lengthMm } : { xMm, yMm, alongMm: lengthMm, acrossMm: thicknessMm })
