import { useMemo, useState } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { beginDraft } from '#web/inspect/draft/draft-edits.ts'
import { newDraft, newForm } from '#web/inspect/draft/new-draft.ts'
import { PickBars } from '#web/inspect/pick/pick-bars.tsx'
import { QuickPage } from '#web/inspect/quick/quick-page.tsx'
import { Link } from '#web/parts/link.tsx'
import { rackGroups } from '#web/rack/rack-bars.ts'
import { go } from '#web/router.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { useUnits } from '#web/units.ts'
import '#web/styles/inspect-more.css'

/** A look at bars beside the machine: first which, then one page with all of it. */
export function QuickScreen({ shop, id }: { readonly shop: ShopSnapshot; readonly id: string | undefined }) {
  const draft = shop.drafts.find((one) => one.id === id)
  if (id === undefined) return <Which shop={shop} />
  if (draft === undefined) return <div className="page"><h1>This look is finished</h1><p>It was kept or dropped, here or on another device. <Link to="/inspect">See Inspect</Link></p></div>
  return <QuickPage key={id} shop={shop} draft={draft} />
}

function Which({ shop }: { readonly shop: ShopSnapshot }) {
  const { length } = useUnits(), [chosen, setChosen] = useState<readonly string[]>([]), groups = useMemo(() => rackGroups(shop), [shop])
  const begin = () => {
    const bars = chosen.map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' }))
    go(`/inspect/quick/${beginDraft(newDraft(newForm('micrometer', length, shop, { bars, stations: 2 })))}`, { replace: true })
  }
  return (
    <>
      <AskPerson />
      <div className="page pick-page">
        <Link to="/inspect" className="back">Inspect</Link>
        <h1>Quick look: which bars?</h1>
        <p>Wiped, stoned, no rock, two readings of the micrometer: good enough again for milling and drilling. Fine milling and grinding need a check on the plate.</p>
        <PickBars groups={groups} chosen={chosen} onChange={setChosen} />
        <div className="foot-actions"><button type="button" className="action main" disabled={chosen.length === 0} onClick={begin}>{chosen.length < 2 ? 'Look at this bar' : `Look at these ${chosen.length} bars`}</button></div>
      </div>
    </>
  )
}
