import { useMemo } from 'react'
import { setupSheetPages } from '#drafting/setup/setup-sheet.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useDevice } from '#web/device.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { sheetDataFrom } from '#web/setup/print/sheet-data.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { choiceKey, isSameRest } from '#web/setup/view/choice-key.ts'
import { isRefused, viewFrom } from '#web/setup/view/view-from.ts'
import { sayDay } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

/** A kept setup as its sheet on paper. What is printed is kept as it was told. */
export function PrintPage({ shop, id }: { readonly shop: ShopSnapshot; readonly id: string }) {
  const units = useUnits(), { person } = useDevice(), setup = shop.setups.find((one) => one.id === id)
  const bench = useMemo(() => benchFrom(shop, setup?.viseId ?? null), [shop, setup?.viseId])
  const data = useMemo(() => {
    if (!setup || !bench) return null
    const view = viewFrom(setup.form, bench, choiceKey(setup)), { answered } = view, choice = answered?.shown
    if (!answered || !choice || isRefused(choice) || !isSameRest(choice, setup)) return null
    const day = sayDay(setup.usedAtIso)
    return sheetDataFrom({ setup, shop, bench, view: { ...view, answered }, choice, units, day, initials: person?.initials ?? '' })
  }, [setup, bench, shop, units, person])
  useTold({ setupId: id }, 'setup sheet', data)
  const back = { to: '/setup', name: 'Set up' }, { paper } = shop.shop
  if (!setup) return <NothingToPrint why="There is no such setup" back={back} />
  if (!data) return <NothingToPrint why="The bars of this setup do not serve any more: open it and choose again" back={back} />
  return <PrintFrame title="Setup sheet" back={back} size={paper} pages={setupSheetPages(data, paper)} />
}
