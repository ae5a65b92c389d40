import type { ShopSnapshot } from '#model/snapshot.ts'
import { CheckScreen } from '#web/inspect/check/check-screen.tsx'
import { DoneScreen } from '#web/inspect/done/done-screen.tsx'
import { Landing } from '#web/inspect/landing/landing.tsx'
import { arriving } from '#web/parts/arriving.ts'
import { Link } from '#web/parts/link.tsx'
import '#web/styles/rack.css'
import '#web/styles/inspect.css'

const BoxScreen = arriving(async () => (await import('#web/inspect/box/box-screen.tsx')).BoxScreen)
const MatesScreen = arriving(async () => (await import('#web/inspect/mates/mates-screen.tsx')).MatesScreen)
const QuickScreen = arriving(async () => (await import('#web/inspect/quick/quick-screen.tsx')).QuickScreen)
const CheckSheetPage = arriving(async () => (await import('#web/inspect/print/check-sheet-page.tsx')).CheckSheetPage)
const CertificatePage = arriving(async () => (await import('#web/inspect/print/certificate-page.tsx')).CertificatePage)

type Props = { readonly shop: ShopSnapshot; readonly rest: readonly string[] }

/** What the readings prove: half-done checks first, then what was proved, and ways to begin. */
export function InspectScreen({ shop, rest: [step, id, print] }: Props) {
  switch (step) {
    case 'check': return print === 'sheet' ? <CheckSheetPage shop={shop} draftId={id ?? ''} /> : <CheckScreen shop={shop} id={id ?? ''} />
    case 'done': return print === 'certificate' ? <CertificatePage shop={shop} checkId={id ?? ''} /> : <DoneScreen shop={shop} id={id ?? ''} />
    case 'box': return <BoxScreen shop={shop} id={id} />
    case 'mates': return <MatesScreen shop={shop} />
    case 'quick': return <QuickScreen shop={shop} id={id} />
    case undefined: return <Landing shop={shop} />
    default: return <div className="page"><h1>There is no page here</h1><p><Link to="/inspect">Go to Inspect</Link></p></div>
  }
}
