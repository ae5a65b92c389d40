import { useMemo } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { arriving } from '#web/parts/arriving.ts'
import { EmptyShop } from '#web/parts/empty-shop.tsx'
import { Link } from '#web/parts/link.tsx'
import { AddBars } from '#web/rack/add-bars.tsx'
import { BarCard } from '#web/rack/bar-card.tsx'
import { EditBar } from '#web/rack/edit-bar.tsx'
import { ImportBars } from '#web/rack/import-bars.tsx'
import { OfCode } from '#web/rack/of-code.tsx'
import { OutList } from '#web/rack/out/out-list.tsx'
import { type RackGroup, rackGroups } from '#web/rack/rack-bars.ts'
import { RackList } from '#web/rack/rack-list.tsx'
import { RackSummary } from '#web/rack/rack-summary.tsx'
import { SlotCard } from '#web/rack/slot-card.tsx'
import { AskPerson } from '#web/shell/ask-person.tsx'
import '#web/styles/rack.css'
import '#web/styles/rack-more.css'

const CareCardPage = arriving(async () => (await import('#web/rack/print/care-card-page.tsx')).CareCardPage)
const LabelsPage = arriving(async () => (await import('#web/rack/print/labels-page.tsx')).LabelsPage)
const LifePage = arriving(async () => (await import('#web/rack/print/life-page.tsx')).LifePage)
const MissingScreen = arriving(async () => (await import('#web/rack/missing/missing-screen.tsx')).MissingScreen)
const RegrindScreen = arriving(async () => (await import('#web/rack/regrind/regrind-screen.tsx')).RegrindScreen)

type Props = { readonly shop: ShopSnapshot; readonly rest: readonly string[] }
type WithGroups = Props & { readonly groups: readonly RackGroup[] }

/** All bars standing to scale, and beside them the one that was chosen, or what is to be done with the rack; some questions and the prints have the whole width. */
export function RackScreen({ shop, rest }: Props) {
  const groups = useMemo(() => rackGroups(shop), [shop])
  if (groups.length === 0 && rest.length === 0) return <div className="page"><h1>Rack</h1><EmptyShop lacks={shop.vises.length === 0 ? 'both' : 'bars'} /></div>
  switch (rest[0]) {
    case 'care': return <CareCardPage shop={shop} />
    case 'labels': return <LabelsPage shop={shop} groups={groups} first={rest[1] ?? null} />
    case 'missing': return <MissingScreen shop={shop} />
    case 'regrind': return <RegrindScreen shop={shop} groups={groups} first={rest[1] ?? null} />
    case undefined: return <Desk shop={shop} rest={rest} groups={groups} />
    default: {
      const found = rest[1] === 'life' || rest[1] === 'lives' ? barIn(groups, rest[0]) : null
      return found ? <LifePage shop={shop} bars={rest[1] === 'life' ? [found.bar] : found.group.bars} /> : <Desk shop={shop} rest={rest} groups={groups} />
    }
  }
}

function Desk({ shop, rest, groups }: WithGroups) {
  const [step, what] = rest, card = step === undefined ? '' : (barIn(groups, step)?.group.key ?? step)
  return (
    <div className="desk" data-chosen={rest.length > 0 ? '' : undefined}>
      <div className="desk-sheet">
        <AskPerson />
        <RackList groups={groups} shop={shop} chosen={rest[0] ?? null} />
      </div>
      <section key={`${card} ${what ?? ''}`} className="desk-side" aria-label={rest.length > 0 ? 'Chosen' : 'The whole rack'}><Side groups={groups} shop={shop} rest={rest} /></section>
    </div>
  )
}

function Side({ groups, shop, rest: [step, what] }: WithGroups) {
  switch (step) {
    case undefined: return <RackSummary groups={groups} />
    case 'new': return <AddBars shop={shop} />
    case 'import': return <ImportBars />
    case 'out': return <OutList groups={groups} shop={shop} />
    case 'code': return <OfCode typed={what ?? ''} shop={shop} />
    case 'slot': return <SlotCard slotId={what ?? ''} groups={groups} shop={shop} />
    default: {
      const found = barIn(groups, step)
      if (found === null) return <div className="side-page"><h1>This bar is not in the rack</h1><p><Link to="/rack">See all bars</Link></p></div>
      return what === 'edit' ? <EditBar key={step} shop={shop} bar={found.bar} /> : <BarCard key={found.group.key} bar={found.bar} group={found.group} shop={shop} />
    }
  }
}

function barIn(groups: readonly RackGroup[], id: string) {
  const group = groups.find(({ bars }) => bars.some(({ record }) => record.id === id)), bar = group?.bars.find(({ record }) => record.id === id)
  return group && bar ? { group, bar } : null
}
