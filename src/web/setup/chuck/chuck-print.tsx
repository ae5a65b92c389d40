import { useMemo } from 'react'
import { chuckSheetPages } from '#drafting/setup/chuck-sheet.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useDevice } from '#web/device.ts'
import { BesidePrint } from '#web/setup/beside/beside-print.tsx'
import type { RackHere } from '#web/setup/beside/rack-here.ts'
import type { SheetNamed } from '#web/setup/beside/sheet-named.tsx'
import { chuckSheetFrom, type ChuckTold } from '#web/setup/chuck/chuck-sheet-data.ts'
import { sayDay } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

type Props = {
  readonly shop: ShopSnapshot; readonly told: ChuckTold; readonly rack: RackHere
  readonly named: SheetNamed; readonly printed: NonNullable<SheetNamed['printed']>; readonly onBack: () => void
}

/** The sheet of a part on the chuck on paper. What is printed is kept as it was told. */
export function ChuckPrint({ shop, told, rack: { labelOf, slotOf, stateOf }, named: { part, operation }, printed: { id, atIso }, onBack }: Props) {
  const units = useUnits(), { person } = useDevice(), { paper, name } = shop.shop, initials = person?.initials ?? ''
  const data = useMemo(() => chuckSheetFrom({
    told, labelOf, slotOf, codeOf: (bar) => (shop.bars.find((one) => one.id === bar)?.code ?? '').slice(0, 4), trustOf: (bar) => stateOf([bar]).slice(2) || 'trusted',
    units, id, shop: name, part, operation, day: sayDay(atIso), initials,
  }), [told, labelOf, slotOf, stateOf, shop.bars, units, id, name, part, operation, atIso, initials])
  useTold(null, 'chuck sheet', data)
  return <BesidePrint title="Chuck sheet" back="Back to the chuck" onBack={onBack} size={paper} pages={chuckSheetPages(data, paper)} />
}
