import { Refusal } from '#model/refusal.ts'
import { readPartInPlan } from '#engine/setup/read-part.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import type { PaperQuestion } from '#engine/setup/paper/paper.ts'
import { corners, stripWords, type Corner, type Strips } from '#engine/setup/paper/strips.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A raw `paper` case. @throws Refusal with a malformed code, then `size-not-positive` */
export function readPaperCase(raw: unknown): { readonly question: PaperQuestion } & Ignored {
  const { value: { part, ...rest }, ignored } = readCase(raw, (object) => ({
    part: object.object('part', readPartInPlan)!,
    stripMm: object.number('stripMm'), acrossMm: object.number('acrossMm'), alongMm: object.number('alongMm'),
    strips: object.object('strips', readStrips)!,
    clamped: object.yesNoOr('clamped', true), topOut: object.yesNoOr('topOut', false),
  }))
  const { stripMm, acrossMm, alongMm } = rest, round = part.shape === 'round'
  const sizes = { [round ? 'part.diameterMm' : 'part.betweenJawsMm']: part.betweenJawsMm, 'part.alongJawsMm': part.alongJawsMm, 'part.heightMm': part.heightMm, stripMm, acrossMm, alongMm }
  for (const [field, given] of Object.entries(sizes)) {
    if (given !== null && given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: { aboveMm: 0 } })
  }
  return { question: { part: { betweenJawsMm: part.betweenJawsMm!, alongJawsMm: part.alongJawsMm! }, ...rest }, ignored }
}

const readStrips = (raw: RawObject): Strips =>
  Object.fromEntries(corners.map((corner) => [corner, raw.word(corner, stripWords) ?? 'held'] as const)) as { [corner in Corner]: Strips[Corner] }
