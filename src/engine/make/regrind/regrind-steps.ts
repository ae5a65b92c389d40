import type { Finding } from '#model/finding.ts'
import type { PlannedWith } from '#model/job-record.ts'
import type { MadeBar, MakeStep, ReadingAsked, StepKind } from '#model/make-step.ts'
import type { Order } from '#model/order.ts'
import { layingOf } from '#engine/make/grind/grind.ts'
import { grindingOrder } from '#engine/make/grind/grinding-order.ts'
import type { RegrindWork } from '#engine/make/regrind/regrind-work.ts'
import { cautionsAt, machineOf } from '#engine/make/route/step-list.ts'
import { workOf } from '#engine/make/route/steps.ts'
import { usualTimes } from '#engine/make/route/times.ts'

/** @param limitUm  of the use that is ordered */
export type RegrindQuestionAt = { readonly work: RegrindWork; readonly order: Order; readonly made: readonly MadeBar[]; readonly planned: PlannedWith; readonly limitUm: number }

const start = ['clean and demagnetise', 'stone burrs', 'read before grinding', 'grind the first face'] as const, end = ['demagnetise and cool', 'stone and clean', 'mark anew', 'inspect'] as const
type Step = (typeof start)[number] | 'grind the second face' | (typeof end)[number]

/** Every step of a regrind: bars that are there are cleaned, read, ground, read again and marked anew. Common practice, no source. */
export function regrindStepsOf(asked: RegrindQuestionAt): readonly MakeStep[] {
  const { work, order, planned: { machines, rates } } = asked, kinds: readonly Step[] = work.question.faces === 2 ? [...start, 'grind the second face', ...end] : [...start, ...end]
  return kinds.map((kind): MakeStep => {
    const machine = machineOf[kind] ?? null
    return {
      kind, machine, outside: false, ...workOf(kind, machine, order, { times: usualTimes, machines, handPerHour: rates.handPerHour }, 1), calcs: [],
      content: contentOf(kind, asked), reads: readsAfter(kind, asked), cautions: cautionsAt[kind] ?? [],
      sizes: kind === 'inspect' || kind === lastGrindingOf(work) ? order.heightsMm.map((heightMm) => ({ heightMm, size: { heightMm, thicknessMm: order.thicknessMm, lengthMm: order.lengthMm } })) : [],
    }
  })
}

/** The step that leaves the new height. */
export const lastGrindingOf = ({ question }: Pick<RegrindWork, 'question'>): StepKind => (question.faces === 2 ? 'grind the second face' : 'grind the first face')

function contentOf(step: Step, { work, order, limitUm, made }: RegrindQuestionAt): readonly Finding[] {
  const say = (code: string, facts: Finding['facts'] = {}): readonly Finding[] => [{ code, facts }]
  switch (step) {
    case 'clean and demagnetise': return say('wipe-and-demagnetise')
    case 'stone burrs': return say('stone-what-stands-up')
    case 'read before grinding': return [...work.profiles.map(profileKnown), ...say('read-anew-if-stoned'), ...say('read-the-bow')]
    case 'grind the first face': return [...offInAll(work), ...grindingAt('first', work), ...lowerBars(work)]
    case 'grind the second face': return [...(work.second === null ? [] : say('second-face-from-read', { newHeightMm: work.second.regrind.newHeightMm })), ...grindingAt('second', work)]
    case 'demagnetise and cool': return say('wipe-then-cool')
    case 'stone and clean': return say('stone-edges')
    case 'mark anew': return say('mark-new-height')
    case 'inspect': return say(made.length > 1 ? 'read-at-plate' : 'read-one-at-plate', { limitUm, use: order.use })
  }
}

const profileKnown = ({ id, heightsMm, day }: RegrindWork['profiles'][number]): Finding =>
  ({ code: 'profile-known', facts: { bar: id, places: heightsMm.length, lowestMm: Math.min(...heightsMm), highestMm: Math.max(...heightsMm), day } })

const offInAll = ({ planned, newHeightMm }: RegrindWork): readonly Finding[] => planned.bars.map(({ id, removalHighestUm, removalLowestUm }) =>
  ({ code: 'off-in-all', facts: { bar: id, highestUm: removalHighestUm, lowestUm: removalLowestUm, toMm: newHeightMm(id) } }))

/** The order of grinding one face, with its passes. */
function grindingAt(face: 'first' | 'second', { question, bowMm, planned, second }: RegrindWork): readonly Finding[] {
  const { stages, sparkOut, faces, datumFace, bars } = question, upMm = Math.min(...bars.flatMap(({ heightsMm }) => heightsMm))
  const passes = face === 'second' ? (second?.regrind.passes ?? planned.passesByFace![1]!) : (planned.passesByFace?.[0] ?? planned.passes)
  const total = passes.reduce((sum, one) => sum + one, 0)
  const all = grindingOrder({ sides: 'edges', bars: bars.length, sparkOut }, { passesPerSide: total, ...layingOf(bowMm ?? 0), blockMm: { leastMm: upMm / 2, belowMm: upMm }, stages })
  const secondAt = all.findIndex(({ code }) => code === 'grind-first-side') + 1, dress = all.filter(({ code }) => code === 'grind-last-dress')
  const inStages: readonly Finding[] = [...dress, { code: 'passes-in-stages', facts: { passes, infeedsUm: stages.map(({ infeedUm }) => infeedUm), sparkOut } }]
  if (face === 'first') return [...all.slice(0, secondAt), ...inStages, ...(faces === 1 ? [{ code: 'other-face-taken-as-true', facts: { face: datumFace ?? null } }] : [])]
  return [...all.slice(secondAt).filter(({ code }) => ['grind-loosen-pack', 'grind-turn', 'grind-second-side'].includes(code)), ...all.filter(({ code }) => code === 'grind-block-in'), ...inStages]
}

const lowerBars = ({ question: { bars } }: RegrindWork): readonly Finding[] => bars.flatMap(({ id, lowUm = 0 }) => (lowUm > 0 ? [{ code: 'ground-on-alone', facts: { bar: id, lowUm } }] : []))

function readsAfter(step: Step, { work, made, limitUm }: RegrindQuestionAt): readonly ReadingAsked[] {
  const read = (what: ReadingAsked['what'], places: number, most: number | null = null): ReadingAsked => ({ what, places, least: null, most })
  switch (step) {
    case 'read before grinding': return [read('bow of the edges', 1)]
    case 'grind the first face': return work.question.faces === 2 ? [read('height', 3)] : []
    case 'demagnetise and cool': return [read('height', 3)]
    case 'inspect': return [read('height', 10), ...(made.some(({ matesId }, k) => made.findIndex((one) => one.matesId === matesId) < k) ? [read('difference of mates', 5, limitUm / 1000)] : [])]
    case 'clean and demagnetise':
    case 'stone burrs':
    case 'grind the second face':
    case 'stone and clean':
    case 'mark anew': return []
  }
}
