import type { Bar } from '#model/bar.ts'
import { Refusal } from '#model/refusal.ts'
import { ways } from '#model/wishes.ts'
import type { CoverageQuestion, SetupOfShop, ViseOfShop } from '#engine/rack/coverage/coverage-question.ts'
import { readBar } from '#engine/setup/read-bar.ts'
import { mostCuts, readCut } from '#engine/setup/read-cut.ts'
import { readPart, readVise } from '#engine/setup/read-part.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { defaultWishes, readWishes } from '#engine/setup/read-wishes.ts'
import { refuseImpossible } from '#engine/setup/refuse.ts'
import { refuseIdTwice } from '#engine/read/refuse-twice.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

const mostSetups = 10_000, mostVises = 50, mostNext = 5, mostTimes = 1e6

/** mm. Heights that one could get, where nobody says otherwise. Common practice, no source. @source SETUP-RULES */
const commonStepMm = 0.5
/** Ways that are counted where nobody says which: all but two high. */
const commonWays = ways.filter((way) => way !== 'stack')

/**
 * A raw `coverage` case with every default filled in.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (vises, bars, what one could get), `lower-jaw-above-higher`, `id-used-twice` (vises),
 * `bar-id-twice`, `too-many` (times, next), `unknown-vise`, and for each setup as `refuseImpossible`
 */
export function readCoverageCase(raw: unknown): { readonly question: CoverageQuestion; readonly bars: readonly Bar[] } & Ignored {
  const { value: { bars, ...question }, ignored } = readCase(raw, (object) => ({
    vises: object.listOrEmpty('vises', readNamedVise, mostVises),
    setups: object.list('setups', readSetup, mostSetups),
    bars: object.list('bars', readBar),
    ways: object.wordsOr('ways', ways, commonWays),
    advisedOnly: object.yesNoOr('advisedOnly', true),
    places: object.yesNoOr('places', false),
    next: object.objectOr('next', readWanted, commonWanted),
  }))
  refuseUnfit(question, bars)
  question.setups.forEach(({ asked }, k) => {
    if ('part' in asked) refuseImpossible(asked, (path) => `setups[${k}].${path}`)
  })
  return { question, bars, ignored }
}

const readNamedVise = (raw: RawObject): ViseOfShop => ({ id: raw.text('id'), ...readVise(raw) })

const readSetup = (raw: RawObject): SetupOfShop => ({
  viseId: raw.has('vise') ? raw.text('vise') : null, times: raw.countOr('times', 1),
  asked: !raw.has('part') && (raw.has('lowMm') || raw.has('highMm')) ? { lowMm: raw.number('lowMm'), highMm: raw.number('highMm') } : {
    part: raw.object('part', readPart)!, cuts: raw.listOrEmpty('cuts', readCut, mostCuts), wishes: raw.objectOr('wishes', readWishes, defaultWishes),
  },
})

const commonWanted = { stepMm: commonStepMm, lowestMm: commonStepMm, thicknessMm: null, most: 3 } as const

function readWanted(raw: RawObject): CoverageQuestion['next'] {
  const stepMm = raw.numberOr('stepMm', commonStepMm)
  return { stepMm, lowestMm: raw.numberOr('lowestMm', stepMm), thicknessMm: raw.numberOr('thicknessMm', null), most: raw.countOr('most', commonWanted.most) }
}

function refuseUnfit({ vises, setups, next }: CoverageQuestion, bars: readonly Bar[]): void {
  const sizes = [
    ...vises.flatMap((vise, k) => (['jawHeightMm', 'lowerJawHeightMm', 'jawWidthMm', 'openingMm'] as const).map((key) => [`vises[${k}].${key}`, vise[key]] as const)),
    ...bars.flatMap((bar, k) => (['heightMm', 'thicknessMm', 'lengthMm'] as const).map((key) => [`bars[${k}].${key}`, bar[key]] as const)),
    ...(['stepMm', 'lowestMm', 'thicknessMm'] as const).map((key) => [`next.${key}`, next[key]] as const),
  ]
  for (const [field, given] of sizes) if (typeof given === 'number' && given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: { aboveMm: 0 } })
  vises.forEach(({ jawHeightMm, lowerJawHeightMm: given = 0 }, k) => {
    if (given > jawHeightMm + touchMm) throw new Refusal('lower-jaw-above-higher', { field: `vises[${k}].lowerJawHeightMm`, given, needed: jawHeightMm })
  })
  const ids = new Set<string>()
  vises.forEach(({ id }, k) => {
    if (ids.has(id)) throw new Refusal('id-used-twice', { field: `vises[${k}].id`, given: id, needed: 'another id' })
    ids.add(id)
  })
  refuseIdTwice(bars, 'bars')
  const counts = [...setups.map(({ times }, k) => [`setups[${k}].times`, times, mostTimes] as const), ['next.most', next.most, mostNext] as const]
  for (const [field, given, needed] of counts) if (given > needed) throw new Refusal('too-many', { field, given, needed })
  setups.forEach(({ viseId }, k) => {
    if (viseId !== null && !ids.has(viseId)) throw new Refusal('unknown-vise', { field: `setups[${k}].vise`, given: viseId, needed: [...ids] })
  })
}
