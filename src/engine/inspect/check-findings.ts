import type { CheckTool } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'
import type { CheckedBar, CheckedQuestion } from '#engine/inspect/checked.ts'
import { driftToldUm } from '#engine/inspect/reading-findings.ts'
import type { ShapedPair } from '#engine/inspect/shapes.ts'
import type { UseVerdict } from '#engine/inspect/uses-proved.ts'

/** °C. A plate further from 20 than this is told, not corrected for. Common practice, no source. */
const awayToldC = 3

/** What a check as a whole gives reason to look at: what it was taken with, where, how the bars lay, and what it cannot prove. */
export function checkFindings(check: CheckedQuestion, bars: readonly CheckedBar[], pair: ShapedPair | null): readonly Finding[] {
  const measured = check.method !== 'stated' && check.readings.length > 0
  return [
    ...bars.flatMap(({ id, look }): Finding[] => (look?.rock === 'rocks' ? [{ code: 'bar-rocks', facts: { bar: id, feelerUm: look.feelerUm } }] : [])),
    ...(check.closing && Math.abs(check.closing.um) >= driftToldUm ? [{ code: 'zero-drifted', facts: { bar: bars.map(({ id }) => id), driftUm: check.closing.um } }] : []),
    ...overdue(check),
    ...(measured ? [...unknown(check), ...warmth(check)] : []),
    ...tooCoarse(bars, pair),
  ]
}

function overdue({ took, atIso }: CheckedQuestion): readonly Finding[] {
  const day = atIso.slice(0, 10), tools: readonly (CheckTool | null)[] = [took?.instrument ?? null, took?.plate ?? null, took?.blocks ?? null]
  return tools.flatMap((tool) => (tool && tool.dueOn !== null && tool.dueOn < day ? [{ code: 'tool-overdue', facts: { tool: tool.name, dueOn: tool.dueOn, day } }] : []))
}

/** Figures that nobody knows, whose part is missing from the uncertainty. */
function unknown({ took, zero }: CheckedQuestion): readonly Finding[] {
  if (!took) return [{ code: 'instrument-not-named', facts: {} }]
  const { readWith } = took, parts: string[] = []
  if (readWith.limitUm === null) parts.push('instrument')
  if (readWith.method === 'compare' && readWith.plateFlatnessUm === null) parts.push('plate')
  if (readWith.method === 'compare' && readWith.blockLimitUm === null && readWith.blockUUm === null) parts.push(zero?.on === 'bar' ? 'zero bar' : 'block')
  return parts.map((part) => ({ code: 'part-not-known', facts: { part } }))
}

function warmth({ temperature, took }: CheckedQuestion): readonly Finding[] {
  if (!temperature) return took ? [{ code: 'temperature-not-told', facts: {} }] : []
  const awayC = Math.abs(temperature.c - 20)
  return awayC > awayToldC ? [{ code: 'temperature-away', facts: { temperatureC: temperature.c, awayC } }] : []
}

/** Uses that were not proved for want of a finer instrument, bars and their difference apart. */
function tooCoarse(bars: readonly CheckedBar[], pair: ShapedPair | null): readonly Finding[] {
  const judged = bars.flatMap(({ id, uses, uUm }) => (uUm === null ? [] : uses.map((use) => ({ id, use, uUm }))))
  const differences = (pair?.uses ?? []).map((use) => ({ id: bars.map(({ id }) => id), use, uUm: pair!.uncertainty!.difference.u }))
  return [...coarse('parallelism', judged), ...coarse('difference', differences)]
}

type Judged = { readonly id: string | readonly string[]; readonly use: UseVerdict; readonly uUm: number }

function coarse(of: 'parallelism' | 'difference', judged: readonly Judged[]): readonly Finding[] {
  const short = judged.filter(({ use }) => use.verdict === 'not-proved' && use.neededUUm !== null)
  return [...new Set(short.map(({ use }) => use.use))].flatMap((name) => {
    const ones = short.filter(({ use }) => use.use === name), near = ones.filter(({ use }) => use.neededUUm! < finestUUm), far = ones.filter(({ use }) => use.neededUUm! >= finestUUm)
    const { limitUm } = ones[0]!.use, barsOf = (some: readonly Judged[]) => [...new Set(some.flatMap(({ id }) => id))]
    return [
      ...(near.length === 0 ? [] : [{ code: 'value-at-limit', facts: { of, bar: barsOf(near), use: name, limitUm } }]),
      ...(far.length === 0 ? [] : [{ code: 'instrument-too-coarse', facts: {
        of, bar: barsOf(far), use: name, limitUm, provable: far.every((one) => one.use.provable),
        uUm: Math.max(...far.map(({ uUm }) => uUm)), neededUUm: Math.min(...far.map((one) => one.use.neededUUm!)),
      } }]),
    ]
  })
}

/** µm. No instrument of a shop has a standard uncertainty smaller than this: a value that would need one lies on its limit. Common practice, no source. */
const finestUUm = 0.05
