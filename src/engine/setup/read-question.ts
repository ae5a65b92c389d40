import type { Bar } from '#model/bar.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupQuestion } from '#model/setup.ts'
import { ways } from '#model/wishes.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { InTheWay, PartInPlan } from '#engine/setup/obstacles.ts'
import { readBar, readBarInPlan } from '#engine/setup/read-bar.ts'
import { mostCuts, readCut, readInTheWay } from '#engine/setup/read-cut.ts'
import { readPart, readPartInPlan, readVise } from '#engine/setup/read-part.ts'
import { defaultWishes, readWishes } from '#engine/setup/read-wishes.ts'
import { refuseImpossible } from '#engine/setup/refuse.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import type { WindowQuestion } from '#engine/setup/window.ts'

/** `seatMm`: the seat to be judged as well, if one was given. */
export type WindowCase = { readonly question: WindowQuestion; readonly seatMm: number | null }
export type PlacesCase = {
  readonly part: PartInPlan
  readonly holes: readonly InTheWay[]
  readonly bars: readonly BarInPlan[]
  readonly wishes: WindowQuestion['wishes']
}
export type SetupCase = { readonly question: SetupQuestion; readonly bars: readonly Bar[] }

/**
 * A raw `window` case with every default filled in.
 *
 * @throws Refusal with a code of `malformedCodes`, then with one of `refuseImpossible`
 */
export function readWindowCase(raw: unknown): WindowCase & Ignored {
  const { value: { seatMm, ...question }, ignored } = readCase(raw, (object) => ({ ...readMain(object), seatMm: object.numberOr('seatMm', null) }))
  refuseImpossible(question)
  return { question, seatMm, ignored }
}

/** A raw `places` case; one or two bars. @throws Refusal as `readWindowCase`, and `too-few-bars`, `too-many-bars` */
export function readPlacesCase(raw: unknown): PlacesCase & Ignored {
  const { value, ignored } = readCase(raw, (object) => ({
    part: object.object('part', readPartInPlan)!,
    holes: object.listOrEmpty('holes', readInTheWay, mostCuts),
    bars: object.list('bars', readBarInPlan),
    wishes: object.objectOr('wishes', readWishes, defaultWishes),
  }))
  refuseImpossible({ part: value.part, cuts: value.holes, listedAs: 'holes', wishes: value.wishes, bars: value.bars })
  const given = value.bars.length
  if (given === 0) throw new Refusal('too-few-bars', { field: 'bars', given, needed: 1 })
  if (given > 2) throw new Refusal('too-many-bars', { field: 'bars', given, needed: 2 })
  return { ...value, ignored }
}

/** A raw `setup` case. @throws Refusal as `readWindowCase`, and `bar-id-twice` */
export function readSetupCase(raw: unknown): SetupCase & Ignored {
  const { value: { bars, ...question }, ignored } = readCase(raw, (object) => {
    const most = object.countOr('most', null), rejectedMost = object.countOr('rejectedMost', null), only = object.textsOr('only', null)
    return {
      ...readMain(object),
      ways: object.wordsOr('ways', ways, ways),
      bars: object.list('bars', readBar),
      ...(most === null ? {} : { most }),
      ...(rejectedMost === null ? {} : { rejectedMost }),
      ...(only === null ? {} : { only }),
    }
  })
  refuseImpossible({ ...question, bars })
  return { question, bars, ignored }
}

const readMain = (object: RawObject): WindowQuestion => ({
  vise: object.object('vise', readVise)!,
  part: object.object('part', readPart)!,
  cuts: object.listOrEmpty('cuts', readCut, mostCuts),
  wishes: object.objectOr('wishes', readWishes, defaultWishes),
})
