import { questionAt } from '#engine/rack/question-at.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack, type RackIndex } from '#engine/setup/index-rack.ts'
import { type Many, manyOf } from '#engine/setup/many/many.ts'
import { type PullList, pullListOf } from '#engine/setup/many/pull-list.ts'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupQuestion, Window } from '#model/setup.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { RackPair } from '#web/setup/beside/rack-here.ts'

/** A saved setup as an operation of the day; `refused`: what was typed there cannot be asked any more. */
export type Operation = { readonly setup: SetupRecord; readonly window: Window | null; readonly refused: Refusal | null }

export type DayList = { readonly operations: readonly Operation[]; readonly list: PullList; readonly many: Many | null }

type Put = { readonly question: SetupQuestion; readonly window: Window }

/** Which pairs serve the setups given, in their order, each asked of its own vise with its fitted jaws. */
export function dayList(shop: ShopSnapshot, setups: readonly SetupRecord[], pairs: readonly RackPair[]): DayList {
  const puts = setups.map((setup) => attempt(() => putOf(shop, setup))), indexes = new Map<string, RackIndex>()
  const indexOf = (pair: RackPair) => {
    if (!indexes.has(pair.id)) indexes.set(pair.id, indexRack(pair.bars))
    return indexes.get(pair.id)!
  }
  const serves = (p: number, k: number): boolean => {
    const put = puts[k]!
    return !(put instanceof Refusal) && chooseBars({ ...put.question, ways: ['on edge'], most: 1, rejectedMost: 0 }, indexOf(pairs[p]!)).choices.length > 0
  }
  const windows = puts.flatMap((put) => (put instanceof Refusal ? [] : [put.window]))
  return {
    operations: setups.map((setup, k) => operationOf(setup, puts[k]!)),
    list: pullListOf(setups.length, pairs.length, serves),
    many: windows.length === 0 ? null : manyOf({ windows, heights: null }),
  }
}

const operationOf = (setup: SetupRecord, put: Put | Refusal): Operation =>
  (put instanceof Refusal ? { setup, window: null, refused: put } : { setup, window: put.window, refused: null })

/** @throws Refusal `unknown-vise`, and of `questionAt` */
function putOf(shop: ShopSnapshot, setup: SetupRecord): Put {
  const vise = shop.vises.find(({ id }) => id === setup.viseId)
  if (!vise) throw new Refusal('unknown-vise', { field: 'viseId', given: setup.viseId, needed: shop.vises.map(({ name }) => name) })
  const question = questionAt(vise, setup.form, shop.shop)
  return { question, window: chooseBars({ ...question, most: 0, rejectedMost: 0 }, indexRack([])).window }
}
