import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { matesOf, type MatesQuestion, type Paired, type Windowed } from '#engine/inspect/mates.ts'
import { mostAnyUnit, mostBars } from '#engine/inspect/reading-limits.ts'

const kinds = ['pairs', 'profile', 'window', 'profile-window'] as const satisfies readonly MatesQuestion['kind'][]

/**
 * The calculation `mates`: one raw case in, its answer out.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (pairs or vises), `readings-do-not-match-stations`,
 * `too-few-readings` (profiles without a station), `too-few-bars`
 */
export function answerMates(raw: unknown): (Paired | Windowed) & Ignored & { readonly sum: readonly Sum[] } {
  const { value, ignored } = readCase(raw, readMates), question = value!
  refuseUnfit(question)
  const answer = matesOf(question)
  return { ...answer, ignored, sum: [sumOf(question, answer)] }
}

/** Null only beside a complaint: of a case of unknown kind nothing else is looked at. */
function readMates(object: RawObject): MatesQuestion | null {
  const kind = object.word('kind', kinds)
  const heights = () => object.numbers('heights', mostAnyUnit, mostBars), profiles = () => object.numberLists('profiles', mostAnyUnit, mostBars)
  switch (kind) {
    case null: return null
    case 'pairs': return { kind, heights: heights(), k: object.count('k') }
    case 'profile': return { kind, profiles: profiles(), k: object.count('k') }
    case 'window': return { kind, heights: heights(), vises: object.count('vises') }
    case 'profile-window': return { kind, profiles: profiles(), vises: object.count('vises') }
  }
}

function refuseUnfit(question: MatesQuestion): void {
  const [key, pairs] = 'k' in question ? ['k', question.k] : ['vises', question.vises]
  const [list, bars] = 'heights' in question ? ['heights', question.heights] : ['profiles', question.profiles]
  if (pairs < 1) throw new Refusal('size-not-positive', { field: key, given: pairs, needed: { above: 0 } })
  if ('profiles' in question) refuseUneven(question.profiles)
  if (bars.length < 2 * pairs) throw new Refusal('too-few-bars', { field: list, given: bars.length, needed: 2 * pairs })
}

function refuseUneven(profiles: readonly (readonly number[])[]): void {
  const stations = profiles[0]?.length ?? 0
  profiles.forEach((profile, i) => {
    if (profile.length !== stations) throw new Refusal('readings-do-not-match-stations', { field: `profiles[${i}]`, given: profile.length, needed: stations })
  })
  if (profiles.length > 0 && stations === 0) throw new Refusal('too-few-readings', { field: 'profiles[0]', given: 0, needed: 1 })
}

function sumOf(question: MatesQuestion, answer: Paired | Windowed): Sum {
  if ('worst' in answer) return { formula: 'mates-worst', result: { name: 'worst', value: answer.worst }, inputs: { pairs: answer.groups.length, pairsBelow: answer.pairsBelow }, sources: ['BLOSSOM'] }
  const values = 'heights' in question ? answer.bars.map((bar) => question.heights[bar]!) : 'profiles' in question ? answer.bars.flatMap((bar) => question.profiles[bar]!) : []
  return { formula: 'mates-spread', result: { name: 'spread', value: answer.spread }, inputs: { highest: Math.max(...values), lowest: Math.min(...values), bars: answer.bars.length }, sources: ['MATES-SEARCH'] }
}
