import type { CheckSheetData, SheetBar } from '#drafting/inspect/check-sheet.ts'
import type { Named } from '#drafting/pieces.ts'
import { cellsOf } from '#engine/inspect/cells.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { readDraft } from '#engine/inspect/read-draft.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import { withUnit, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { barMarks } from '#model/bar-marks.ts'
import { cautionsFor } from '#words/cautions.ts'
import { termsFor } from '#words/terms.ts'
import { capital, type NameOf } from '#words/wording.ts'
import { sayPass } from '#web/inspect/check/plate-data.ts'
import { placesFor } from '#web/inspect/print/places-for.ts'
import { methodWords } from '#web/inspect/print/method-words.ts'
import { sayDay } from '#web/today.ts'

type Asked = {
  readonly draft: DraftRecord
  readonly shop: Pick<ShopSnapshot, 'shop' | 'instruments'>
  readonly facts: InspectFacts
  readonly units: Units
  /** The day it is printed on. */
  readonly day: string
  readonly nameOf: NameOf
}

/** Everything the sheet of a half-done check says. What was chosen stands there, what was not is a line to write on. */
export function checkSheetFrom({ draft, shop, facts, units, day, nameOf }: Asked): CheckSheetData {
  const { form } = draft, { bareUnit } = readDraft(draft, facts), onPlate = form.method === 'compare' || form.method === 'turn-over'
  return {
    title: 'Check sheet', heading: 'Check sheet',
    description: `To fill in by pencil: ${form.bars.map(({ bar }) => nameOf(bar)).join(', ')}.`,
    under: `${capital(methodWords[form.method])}${form.method === 'rock' ? '' : ` · readings in ${bareUnit}${onPlate ? ' from the zero' : ''}`}${form.asFound ? ' · as found' : ''}`,
    code: { label: 'half-done check', value: draft.id.slice(0, 8) },
    foot: [[
      { label: 'Shop', value: shop.shop.name, share: 0.4 }, { label: 'Printed on', value: sayDay(day), share: 0.22 },
      { label: 'Read on', value: '', share: 0.22 }, { label: 'Initials', value: '', share: 0.16 },
    ]],
    taken: takenFrom(draft, shop, units, nameOf),
    howTo: { heading: 'How', lines: [
      ...(onPlate ? ['Let bars, block and plate lie together until they are equally warm.', 'Set the zero, read in the order of the numbers, read the zero again at the end.'] : ['Read in the order of the numbers.']),
      `In brackets the station, counted from the marked end. Type in later under Inspect, half-done check ${draft.id.slice(0, 8)}, in the order of the numbers.`,
    ] },
    markedEnd: 'marked end',
    bars: barsFrom(draft, facts, units, nameOf),
    looks: { heading: 'Look', ticks: ['wiped', 'stoned', 'lies still', 'rocks', ...barMarks], write: ['feeler'] },
    atTheEnd: [
      ...(onPlate ? [{ label: `Zero at the end, ${bareUnit}`, value: form.closing }] : []),
      { label: 'Temperature, °C', value: form.temperature }, { label: 'Note', value: form.note },
    ],
    cautions: { heading: 'Cautions', lines: cautionsFor(new Set(['at the plate']), units) },
  }
}

function takenFrom({ form }: DraftRecord, { instruments }: Asked['shop'], units: Units, nameOf: NameOf): readonly Named[] {
  const tool = (id: string | null): string => {
    const one = instruments.find((each) => each.id === id)
    return one === undefined ? '' : `${one.name}${one.dueOn === null ? '' : `, due ${sayDay(one.dueOn)}`}`
  }
  const onPlate = form.method === 'compare' || form.method === 'turn-over', zero = form.zero.trim()
  return [
    { label: 'Instrument', value: tool(form.instrumentId) },
    ...(onPlate ? [
      { label: 'Plate', value: tool(form.plateId) },
      { label: 'Zero on', value: form.zeroOn === 'bar' ? (form.zeroBar === null ? '' : `${nameOf(form.zeroBar)}, station ${Math.floor(form.stations / 2) + 1}${zero === '' ? '' : `, ${zero}`}`) : zero === '' ? '' : `a block of ${zero}` },
      ...(form.zeroOn === 'block' ? [{ label: `${capital(termsFor(units.words).gauge)} blocks`, value: tool(form.blocksId) }] : []),
    ] : []),
  ]
}

/** Numbers run through all bars, as `cellsOf` orders the entry. */
function barsFrom({ form }: DraftRecord, facts: InspectFacts, units: Units, nameOf: NameOf): readonly SheetBar[] {
  const cells = cellsOf(form).map((cell, index) => ({ ...cell, number: index + 1 }))
  return form.bars.map((own): SheetBar => {
    const record = facts.bars.find(({ id }) => id === own.bar), heightMm = facts.heights(own.bar)?.heightMm ?? null
    const { lengthMm, placesMm } = placesFor(own, form, facts), rows = new Map<string, { number: number; station: number }[]>()
    for (const cell of cells.filter(({ bar }) => bar === own.bar)) {
      const label = sayPass(cell, form)
      rows.set(label, [...rows.get(label) ?? [], { number: cell.number, station: cell.station + 1 }])
    }
    return {
      label: nameOf(own.bar), heightMm, lengthMm,
      sizes: [heightMm === null ? '?' : wordLength(heightMm, units), record ? wordLength(record.thicknessMm, units) : own.thickness || '?', record ? withUnit(record.lengthMm, units) : own.length || '?'].join(' × '),
      stations: form.method === 'rock' || form.method === 'stated' ? [] : placesMm.map((xMm) => ({ xMm, place: wordLength(xMm, units) })),
      rows: [...rows].map(([label, row]) => ({ label, cells: row })),
    }
  })
}
