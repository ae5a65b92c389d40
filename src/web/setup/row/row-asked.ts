import { answerRow } from '#engine/setup/row/answer-row.ts'
import { attempt } from '#model/attempt.ts'
import { type LengthUnit, readNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { typedLength } from '#web/setup/beside/typed-length.ts'
import type { MeasuredPair } from '#web/setup/row/row-pairs.ts'

/** What was typed about a row; beds by the id of the vise, in µm. */
export type RowTexts = { readonly beds: { readonly [vise: string]: string }; readonly apart: string; readonly length: string }

export type RowAsked = {
  readonly vises: readonly ViseRecord[]
  readonly pairs: readonly MeasuredPair[]
  readonly oneZ: boolean
  readonly texts: RowTexts
  /** The first of the two vises a long bar lies over. */
  readonly longFrom: number
  readonly unit: LengthUnit
}

type Beds = { readonly um: readonly number[]; readonly missing: readonly string[]; readonly refused: { readonly [vise: string]: Refusal } }
export type RowAnswered = { readonly beds: Beds; readonly answer: ReturnType<typeof answerRow> | null; readonly refusal: Refusal | null }

/** The row as it comes out; null as long as a bed is missing or something typed is refused. */
export function rowAnswered({ vises, pairs, oneZ, texts, longFrom, unit }: RowAsked): RowAnswered {
  const beds = bedsOf(vises, texts.beds)
  if (beds.um.length < vises.length || vises.length === 0) return { beds, answer: null, refusal: null }
  const apart = typedLength(texts.apart, unit, 'longBar.apartMm', null), length = typedLength(texts.length, unit, 'longBar.lengthMm', null)
  const longBar = apart.mm === null || length.mm === null || vises.length < 2 ? {} : { longBar: { from: longFrom, to: longFrom + 1, apartMm: apart.mm, lengthMm: length.mm } }
  const answer = apart.refused ?? length.refused ?? attempt(() => answerRow({
    vises: vises.map(({ id }, k) => ({ id, bedUm: beds.um[k] })),
    pairs: pairs.map(({ id, heightMm, matchUm }) => ({ id, meanMm: heightMm, matchUm })),
    oneZ, ...longBar,
  }))
  return answer instanceof Refusal ? { beds, answer: null, refusal: answer } : { beds, answer, refusal: null }
}

/** What was typed, else what the vise's record says. */
function bedsOf(vises: readonly ViseRecord[], typed: RowTexts['beds']): Beds {
  const um: number[] = [], missing: string[] = [], refused: { [vise: string]: Refusal } = {}
  for (const [k, { id, name, measured }] of vises.entries()) {
    const text = typed[id]?.trim() ?? '', kept = measured?.rowBed?.um
    const bed = text === '' ? kept : attempt(() => readNumber(text.replace(/\s*(µm|um)$/, ''), `vises[${k}].bedUm`))
    if (bed === undefined) missing.push(name)
    else if (bed instanceof Refusal) refused[id] = bed
    else um.push(bed)
  }
  return { um, missing, refused }
}
