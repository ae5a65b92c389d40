import type { ShopSnapshot } from '#model/snapshot.ts'
import { EmptyShop } from '#web/parts/empty-shop.tsx'
import { besideScreens } from '#web/setup/beside/beside-screens.tsx'
import { PrintPage } from '#web/setup/print/print-page.tsx'
import { SetupDesk } from '#web/setup/setup-desk.tsx'
import { useUnits } from '#web/units.ts'
import '#web/setup/setup.css'

/** The first screen: a part and a vise, and at once the pair that carries it. `/setup/print/ID` is its sheet on paper, `/setup/down` and others stand beside it. */
export function SetupScreen({ shop, rest: [step, id] }: { readonly shop: ShopSnapshot; readonly rest: readonly string[] }) {
  const units = useUnits(), vises = shop.vises.filter(({ retired }) => !retired)
  if (step === 'print') return <PrintPage shop={shop} id={id ?? ''} />
  const Beside = step !== undefined && Object.hasOwn(besideScreens, step) ? besideScreens[step] : undefined
  if (Beside) return <Beside key={units.length} shop={shop} />
  if (vises.length === 0 || shop.bars.length === 0) {
    return <div className="page"><h1>Set up</h1><EmptyShop lacks={vises.length > 0 ? 'bars' : shop.bars.length > 0 ? 'vises' : 'both'} /></div>
  }
  return <SetupDesk key={units.length} shop={shop} />
}
