import { useMemo } from 'react'
import { tableSheetPages } from '#drafting/setup/table-sheet.ts'
import type { Bar } from '#model/bar.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useDevice } from '#web/device.ts'
import { BesidePrint } from '#web/setup/beside/beside-print.tsx'
import type { RackPair } from '#web/setup/beside/rack-here.ts'
import type { SheetNamed } from '#web/setup/beside/sheet-named.tsx'
import type { TableTold } from '#web/setup/table/table-asked.ts'
import { tableSheetFrom } from '#web/setup/table/table-sheet-data.ts'
import { sayDay } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

type Props = {
  readonly shop: ShopSnapshot; readonly told: TableTold; readonly barHeightMm: number; readonly pair: RackPair | null; readonly stateOf: (bars: readonly Bar[]) => string
  readonly named: SheetNamed; readonly printed: NonNullable<SheetNamed['printed']>; readonly onBack: () => void
}

/** The sheet of a part on the table on paper. What is printed is kept as it was told. */
export function TablePrint({ shop, told, barHeightMm, pair, stateOf, named: { part, operation }, printed: { id, atIso }, onBack }: Props) {
  const units = useUnits(), { person } = useDevice(), { paper, name } = shop.shop, initials = person?.initials ?? ''
  const data = useMemo(() => tableSheetFrom({
    told, barHeightMm, pair, trustOf: (bar) => stateOf([bar]).slice(2) || 'trusted',
    units, id, shop: name, part, operation, day: sayDay(atIso), initials,
  }), [told, barHeightMm, pair, stateOf, units, id, name, part, operation, atIso, initials])
  useTold(null, 'table sheet', data)
  return <BesidePrint title="Table sheet" back="Back to the table" onBack={onBack} size={paper} pages={tableSheetPages(data, paper)} />
}
