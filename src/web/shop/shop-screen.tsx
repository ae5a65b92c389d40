import type { ShopSnapshot } from '#model/snapshot.ts'
import { arriving } from '#web/parts/arriving.ts'
import { Link } from '#web/parts/link.tsx'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { Devices } from '#web/shop/access/devices.tsx'
import { Owner } from '#web/shop/access/owner.tsx'
import { Backups } from '#web/shop/backups/backups.tsx'
import { DeviceSettings } from '#web/shop/device-settings.tsx'
import { InstrumentList } from '#web/shop/instruments/instrument-list.tsx'
import { LimitSettings } from '#web/shop/limit-settings.tsx'
import { MachineList, StockList } from '#web/shop/make-lists.tsx'
import { RateSettings } from '#web/shop/rate-settings.tsx'
import { ShopName } from '#web/shop/shop-name.tsx'
import { UnitSettings } from '#web/shop/unit-settings.tsx'
import { ViseForm } from '#web/shop/vise-form.tsx'
import { ViseList } from '#web/shop/vise-list.tsx'
import '#web/styles/access.css'
import '#web/styles/shop.css'

const InstrumentForm = arriving(async () => (await import('#web/shop/instruments/instrument-form.tsx')).InstrumentForm)
const ViseMeasuredScreen = arriving(async () => (await import('#web/shop/vise-measured/vise-measured-screen.tsx')).ViseMeasuredScreen)
const MachineForm = arriving(async () => (await import('#web/shop/machines/machine-form.tsx')).MachineForm)
const StockForm = arriving(async () => (await import('#web/shop/stock/stock-form.tsx')).StockForm)
const ViseCardPage = arriving(async () => (await import('#web/shop/vise-card-page.tsx')).ViseCardPage)

type Props = { readonly shop: ShopSnapshot; readonly rest: readonly string[] }

/** What the shop has and how it likes its numbers: vises first, then settings. */
export function ShopScreen({ shop, rest: [first, id, what] }: Props) {
  if (first === undefined) return <Settings shop={shop} />
  const vise = shop.vises.find((one) => one.id === id), instrument = shop.instruments.find((one) => one.id === id)
  if (first === 'instrument' && (id === 'new' || instrument !== undefined)) return <InstrumentForm key={id} instrument={instrument ?? null} />
  const machine = shop.machines.find((one) => one.id === id), stock = shop.stock.find((one) => one.id === id)
  if (first === 'machine' && (id === 'new' || machine !== undefined)) return <MachineForm key={id} machine={machine ?? null} />
  if (first === 'stock' && (id === 'new' || stock !== undefined)) return <StockForm key={id} stock={stock ?? null} />
  if (first === 'vise' && id === 'new') return <ViseForm vise={null} />
  if (first !== 'vise' || vise === undefined) return <div className="page"><h1>This is not in the shop</h1><p><Link to="/shop">See the shop</Link></p></div>
  if (what === 'measure') return <ViseMeasuredScreen key={id} vise={vise} />
  return what === 'card' ? <ViseCardPage shop={shop} vise={vise} /> : <ViseForm key={id} vise={vise} />
}

function Settings({ shop }: { readonly shop: ShopSnapshot }) {
  return (
    <>
      <AskPerson />
      <div className="page shop">
        <h1>Shop</h1>
        <ViseList shop={shop} />
        <InstrumentList instruments={shop.instruments} />
        <MachineList machines={shop.machines} />
        <StockList stock={shop.stock} />
        <RateSettings rates={shop.shop.making} />
        <UnitSettings shop={shop} />
        <DeviceSettings />
        <LimitSettings limitsUm={shop.shop.limitsUm} />
        <Devices />
        <Owner />
        <Backups />
        <section>
          <h2>The shop itself</h2>
          <ShopName name={shop.shop.name} paper={shop.shop.paper} />
          {shop.shop.demo ? <p className="small">The invented demo shop is loaded here.</p> : null}
        </section>
        <section>
          <h2>For other programs</h2>
          <p>Every screen works through one interface, and every calculation can be called as data: <a href="/api/openapi.json">its description (OpenAPI)</a>.</p>
        </section>
      </div>
    </>
  )
}
