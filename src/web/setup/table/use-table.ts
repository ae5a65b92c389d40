import { useMemo, useState } from 'react'
import { doOverlap } from '#engine/setup/table/overlap.ts'
import { thickestAtBothMm } from '#engine/setup/table/thickest.ts'
import { attempt } from '#model/attempt.ts'
import { wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { rackHere, type RackPair } from '#web/setup/beside/rack-here.ts'
import { typedLength } from '#web/setup/beside/typed-length.ts'
import { barsFor, emptyTable, tableAnswered, type TableTexts, type TableTold } from '#web/setup/table/table-asked.ts'
import { useUnits } from '#web/units.ts'

/** mm. Sizes that differ by less are one. */
const slackMm = 1e-6

export type TableAtHand = ReturnType<typeof useTable>

/** The table as typed, the pair taken for it, and what comes out of both. */
export function useTable(shop: ShopSnapshot) {
  const units = useUnits(), { pairs, stateOf } = useMemo(() => rackHere(shop, units), [shop, units])
  const [texts, setTexts] = useState<TableTexts>(emptyTable), [pairId, setPairId] = useState<string | null>(null)
  const wanted = useMemo(() => attempt(() => barsFor(texts, units.length)), [texts, units.length])
  const table = useMemo(() => attempt(() => tableAnswered(texts, units.length)), [texts, units.length])
  const bars = wanted instanceof Refusal ? null : wanted, told = table instanceof Refusal ? null : table
  const mostMm = bars && thickestAtBothMm(bars), lowMm = bars?.lowMm ?? 0
  const fits = pairs.filter(({ thicknessMm, heightMm }) => (mostMm === null || thicknessMm <= mostMm + slackMm) && heightMm >= lowMm - slackMm)
  const pair = pairs.find(({ id }) => id === pairId) ?? null, height = typedLength(texts.barHeight, units.length, 'bars[0].heightMm', null)
  const barHeightMm = pair?.heightMm ?? height.mm, amiss = { isTooLow: barHeightMm !== null && barHeightMm < lowMm - slackMm, ...amissIn(told) }
  const isBegun = texts.across !== '' && texts.along !== '' && texts.height !== ''
  // What is still to be typed is not told as a fault: nothing was given there.
  const refusal = height.refused ?? (wanted instanceof Refusal ? wanted : table instanceof Refusal && texts.thickness !== '' ? table : null)
  const put = (part: Partial<TableTexts>) => setTexts({ ...texts, ...part })
  return {
    texts, told, mostMm, lowMm, fits, pair, stateOf, barHeightMm, amiss, isBegun, refusal: isBegun && refusal?.facts['given'] !== null ? refusal : null,
    put,
    /** A size of the bars typed: they are no longer those of a pair. */
    putBars: (part: Partial<TableTexts>) => { setPairId(null); put(part) },
    take: ({ id, thicknessMm, heightMm, bars: [{ lengthMm }] }: RackPair) => {
      setPairId(id)
      put({ thickness: wordLength(thicknessMm, units), barHeight: wordLength(heightMm, units), length: wordLength(lengthMm, units) })
    },
  }
}

/** What keeps bars from lying as they were asked to. */
function amissIn(told: TableTold | null) {
  if (told === null) return { isOverlapping: false, isFouled: false }
  const { question: { bars: [one, other] }, answer: { fouledHoles } } = told
  return { isOverlapping: doOverlap(one!, other!), isFouled: fouledHoles.some((of) => of.length > 0) }
}
