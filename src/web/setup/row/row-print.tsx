import { useMemo } from 'react'
import { type RowSheetData, rowSheetPages } from '#drafting/setup/row-sheet.ts'
import type { Row } from '#engine/setup/row/row.ts'
import { withUnit, wordNumber } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { cautionsFor } from '#words/cautions.ts'
import { calledSize } from '#words/say-bar.ts'
import { capital } from '#words/wording.ts'
import { useDevice } from '#web/device.ts'
import { BesidePrint } from '#web/setup/beside/beside-print.tsx'
import { finely, pictureVises, type RowLine, sayRow } from '#web/setup/row/row-lines.tsx'
import { sayDay } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

type Props = {
  readonly shop: ShopSnapshot; readonly setupId: string; readonly title: string; readonly operation: string
  readonly lines: readonly RowLine[]; readonly answer: Row; readonly oneZ: boolean
  readonly onBack: () => void
}

/** The sheet of a row on paper. What is printed is kept as it was told. */
export function RowPrint({ shop, setupId, lines, answer, oneZ, title, operation, onBack }: Props) {
  const units = useUnits(), terms = useTerms(), { person } = useDevice(), { paper } = shop.shop
  const keptAtIso = shop.setups.find(({ id }) => id === setupId)?.usedAtIso, day = keptAtIso === undefined ? '' : sayDay(keptAtIso)
  const data = useMemo((): RowSheetData => ({
    title: `Row sheet: ${title}`, description: sayRow(lines),
    heading: title, under: `${lines.length} ${terms.vise}s, ${oneZ ? 'one Z for all' : 'a Z each'}`,
    vises: pictureVises(lines, units), drawnLarger: 'differences drawn ×',
    heads: [capital(terms.vise), 'Pair', 'Slot', `Seat, ${units.length}`, `Grip, ${units.length}`, `Above the jaws`, `Z, ${units.length}`],
    rows: lines.map(({ vise, label, slot, pair, offset, comesOut }) => {
      const choice = comesOut && 'choice' in comesOut ? comesOut.choice : null, say = (mm: number | undefined) => (mm === undefined ? '–' : calledSize(mm, units))
      return [vise.name, `${label}${pair.marks}`, slot, finely(pair.heightMm, units), say(choice?.gripMm), say(choice?.stickOutMm), offset]
    }),
    blocks: [
      { heading: oneZ ? 'One Z for all' : 'A Z each', lines: [
        `Tops within ${wordNumber(answer.spreadUm, units.decimalMark, null, 1)} µm (${withUnit(answer.spreadUm / 1000, units)}) without the offsets; Z is what each ${terms.vise} adds to the first.`,
        `Pair and ${terms.vise} stay together for the whole run. Marked ends to the left.`,
      ] },
      { heading: 'Is it down?', lines: [`In each ${terms.vise}: a strip of paper between part and bar at each corner, then tighten; none may pull out.`] },
      { heading: 'Cautions', lines: cautionsFor(new Set(['seating', 'loose bar', 'handle off the vise'] as const), units) },
      { heading: 'What this sheet leaves open', lines: ['Not computed: holding force, bending of the part, lift and lean of the jaws. Beds and bars as last measured.'] },
    ],
    code: { label: 'Code', value: setupId.slice(0, 8) },
    foot: {
      shop: { label: 'Shop', value: shop.shop.name }, part: { label: 'Part', value: title }, operation: { label: 'Operation', value: operation },
      date: { label: 'Date', value: day }, initials: { label: 'Initials', value: person?.initials ?? '' },
    },
  }), [lines, answer, oneZ, title, operation, units, terms, person, shop.shop.name, setupId, day])
  useTold({ setupId }, 'row sheet', data)
  return <BesidePrint title="Row sheet" back="Back to the row" onBack={onBack} size={paper} pages={rowSheetPages(data, paper)} />
}
