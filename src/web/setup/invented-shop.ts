import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'

type Pair = {
  readonly name: string
  readonly heightMm: number
  readonly thicknessMm?: number
  readonly lengthMm?: number
  readonly measuredUm?: readonly [number, number]
  readonly odd?: boolean
  readonly looked?: boolean
}

const at = { note: '', person: 'KM', device: 'bench', atIso: '2025-03-04T05:06:07.000Z' }

/** Invented, for tests: one vise with jaws of 45 and the pairs asked for; ids `35-C-1`, `35-C-2`. Looked over unless told otherwise. */
export function inventedShop(pairs: readonly Pair[], jawMm = 45): ShopSnapshot {
  const named = pairs.map((pair) => ({ ...pair, id: `${pair.heightMm}-${pair.name}` }))
  const barIds = (id: string, odd = false) => (odd ? [`${id}-1`] : [`${id}-1`, `${id}-2`])
  const all = named.flatMap((pair) => barIds(pair.id, pair.odd).map((bar) => ({ pair, bar })))
  return {
    shop: {
      id: 'shop', saw: {}, name: 'Invented shop', units: { length: 'mm', decimalMark: '.', words: 'UK' }, paper: 'A4',
      limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 }, due: null, making: null, demo: false,
    },
    people: [], parts: [], setups: [], instruments: [], drafts: [], outcomes: [], machines: [], stock: [], jobs: [], vises: [viseOf(jawMm)],
    mates: named.filter(({ odd }) => !odd).map(({ id, name }) => ({ id, saw: {}, name, note: '' })),
    slots: named.map(({ id, name }) => ({ id: `slot-${id}`, saw: {}, code: 'ABCDEFGH', name: `slot ${name}` })),
    bars: all.map(({ pair, bar }): BarRecord => ({
      id: bar, saw: {}, code: 'ABCDEFGH', name: pair.name, thicknessMm: pair.thicknessMm ?? 6, thicknessStanding: 'marked', lengthMm: pair.lengthMm ?? 100,
      matesId: pair.odd ? null : pair.id, slotId: `slot-${pair.id}`, where: { at: 'slot' }, note: '',
    })),
    checks: all.flatMap(({ pair, bar }) => checksOf(bar, pair)),
    events: all.flatMap(({ pair, bar }): readonly BarEvent[] => (pair.looked === false ? [] : [{ ...at, id: `looked-${bar}`, bar, kind: 'looked over', undoes: null }])),
  }
}

function viseOf(jawMm: number): ViseRecord {
  return {
    id: 'vise', saw: {}, name: 'Mill 1', jawWidthMm: 125, openingMm: 100, fittedJawSetId: 'hard', retired: false, note: '', measured: null,
    jawSets: [{ id: 'hard', name: 'hard, smooth', fixedHeightMm: jawMm, movingHeightMm: jawMm, stepHeightMm: null, face: 'smooth' }],
  }
}

function checksOf(bar: string, { heightMm, measuredUm }: Pair): readonly Check[] {
  const reading = (mm: number) => [{ bar, station: 0, xMm: null, ...onTheFirstLine, text: String(mm), heightMm: mm }]
  const stated: Check = { ...at, id: `stated-${bar}`, method: 'stated', replaces: null, ...nothingTaken, readings: reading(heightMm) }
  if (!measuredUm) return [stated]
  const readMm = heightMm + measuredUm[bar.endsWith('1') ? 0 : 1]! / 1000
  return [stated, { ...at, atIso: '2025-04-04T05:06:07.000Z', id: `measured-${bar}`, method: 'micrometer', replaces: null, ...nothingTaken, readings: reading(readMm) }]
}
