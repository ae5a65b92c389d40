import { Refusal } from '#model/refusal.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'
import { refuseIdTwice } from '#engine/read/refuse-twice.ts'
import type { LongBarQuestion } from '#engine/setup/row/long-bar.ts'
import type { RowPair, RowQuestion, RowVise } from '#engine/setup/row/row-question.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

const longestUm = 1000 * longestMm
/** More than any shop has side by side, or in its rack. */
const mostVises = 100, mostPairs = 10_000

/**
 * A raw `row` case; a vise may carry a name of its own (`id`), which nothing hangs on.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (a mean), `difference-negative` (a match), `bar-id-twice` (of pairs), `too-few-vises`, `unknown-vise`,
 * `too-few-pairs`
 */
export function readRowCase(raw: unknown): { readonly question: RowQuestion } & Ignored {
  const { value: question, ignored } = readCase(raw, (object): RowQuestion => ({
    vises: object.list('vises', readRowVise, mostVises),
    pairs: object.list('pairs', readRowPair, mostPairs),
    oneZ: object.yesNoOr('oneZ', true),
    longBar: object.objectOr('longBar', readLongBar, null),
  }))
  refuseUnfit(question)
  return { question, ignored }
}

function readRowVise(raw: RawObject): RowVise {
  if (raw.has('id')) raw.text('id')
  return { bedUm: raw.number('bedUm', longestUm) }
}

const readRowPair = (raw: RawObject): RowPair =>
  ({ id: raw.text('id'), meanMm: raw.number('meanMm'), matchUm: raw.numberOr('matchUm', null, longestUm) })

/** Over the first two vises, unless it says over which (counted from 0). */
const readLongBar = (raw: RawObject): LongBarQuestion => ({ from: raw.countOr('from', 0), to: raw.countOr('to', 1), apartMm: raw.number('apartMm'), lengthMm: raw.number('lengthMm') })

function refuseUnfit({ vises, pairs, longBar }: RowQuestion): void {
  const mean = pairs.findIndex((pair) => pair.meanMm <= touchMm), match = pairs.findIndex((pair) => pair.matchUm !== null && pair.matchUm < 0)
  if (mean !== -1) throw new Refusal('size-not-positive', { field: `pairs[${mean}].meanMm`, given: pairs[mean]!.meanMm, needed: { aboveMm: 0 } })
  for (const name of ['apartMm', 'lengthMm'] as const) {
    if (longBar && longBar[name] <= touchMm) throw new Refusal('size-not-positive', { field: `longBar.${name}`, given: longBar[name], needed: { aboveMm: 0 } })
  }
  if (match !== -1) throw new Refusal('difference-negative', { field: `pairs[${match}].matchUm`, given: pairs[match]!.matchUm, needed: 0 })
  refuseIdTwice(pairs, 'pairs')
  if (vises.length === 0) throw new Refusal('too-few-vises', { field: 'vises', given: 0, needed: 1 })
  for (const name of ['from', 'to'] as const) {
    if (longBar && longBar[name] >= vises.length) throw new Refusal('unknown-vise', { field: `longBar.${name}`, given: longBar[name], needed: [...vises.keys()] })
  }
  if (pairs.length < vises.length) throw new Refusal('too-few-pairs', { field: 'pairs', given: pairs.length, needed: vises.length })
}
