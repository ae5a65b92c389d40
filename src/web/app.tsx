import { Suspense, useEffect, useRef } from 'react'
import { arriving } from '#web/parts/arriving.ts'
import { Link } from '#web/parts/link.tsx'
import { NumberPad } from '#web/parts/number-pad.tsx'
import { UndoBar } from '#web/parts/undo-bar.tsx'
import { type Place, type Route, useRoute } from '#web/router.ts'
import { SetupScreen } from '#web/setup/setup-screen.tsx'
import { Coming } from '#web/shell/coming.tsx'
import { Header } from '#web/shell/header.tsx'
import { NewVersion } from '#web/shell/new-version.tsx'
import { PageFault } from '#web/shell/page-fault.tsx'
import { Stranger } from '#web/shell/stranger.tsx'
import { refresh, useShop } from '#web/shop-store.ts'

const InspectScreen = arriving(async () => (await import('#web/inspect/inspect-screen.tsx')).InspectScreen)
const EnrolScreen = arriving(async () => (await import('#web/shop/access/enrol-screen.tsx')).EnrolScreen)
const MakeScreen = arriving(async () => (await import('#web/make/make-screen.tsx')).MakeScreen)
const RackScreen = arriving(async () => (await import('#web/rack/rack-screen.tsx')).RackScreen)
const ShopScreen = arriving(async () => (await import('#web/shop/shop-screen.tsx')).ShopScreen)

const titles: { readonly [place in Place]: string } = { setup: 'Set up', inspect: 'Inspect', rack: 'Rack', make: 'Make', shop: 'Shop' }

export function App() {
  const route = useRoute(), main = useRef<HTMLElement>(null), before = useRef(route.place)
  useEffect(() => {
    document.title = route.place ? `${titles[route.place]} · Twinrest` : 'Twinrest'
    if (before.current !== route.place) main.current?.focus()
    before.current = route.place
  }, [route.place])
  return (
    <>
      <Header place={route.place} />
      <main className="shell-main" ref={main} tabIndex={-1} aria-label={route.place ? titles[route.place] : 'Not found'}>
        <NewVersion />
        <Stranger />
        <PageFault key={route.place}><Suspense fallback={<Coming />}><Screen route={route} /></Suspense></PageFault>
      </main>
      <UndoBar />
      <NumberPad />
    </>
  )
}

function Screen({ route }: { readonly route: Route }) {
  const { shop, server } = useShop()
  if ((route.place === 'shop' && route.rest[0] === 'enrol') || (shop === null && server === 'stranger')) return <EnrolScreen />
  if (shop === null) return <NothingYet server={server} />
  switch (route.place) {
    case 'setup': return <SetupScreen shop={shop} rest={route.rest} />
    case 'inspect': return <InspectScreen shop={shop} rest={route.rest} />
    case 'make': return <MakeScreen shop={shop} rest={route.rest} />
    case 'rack': return <RackScreen shop={shop} rest={route.rest} />
    case 'shop': return <ShopScreen shop={shop} rest={route.rest} />
    case null: return <div className="page"><h1>There is no page here</h1><p><Link to="/setup">Go to Set up</Link></p></div>
  }
}

function NothingYet({ server }: Pick<ReturnType<typeof useShop>, 'server'>) {
  if (server === 'asking') return <output className="page">Asking the shop</output>
  return (
    <div className="page">
      <h1>The shop’s server does not answer</h1>
      <p>{typeof server === 'object' ? `It failed; ${server.fault} finds the reason in its log.` : 'Nothing of the shop is kept on this device yet, so there is nothing to work from.'}</p>
      <p>See that the computer it runs on is switched on and in the same network. Once it has been reached, this device also works without it.</p>
      <div><button type="button" className="action" onClick={() => void refresh()}>Try again</button></div>
    </div>
  )
}
