import { useMemo } from 'react'
import { lineOfLifePages } from '#drafting/rack/line-of-life.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { type Histories, useHistories } from '#web/rack/life/use-histories.ts'
import { lifeData } from '#web/rack/print/life-data.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly shop: ShopSnapshot; readonly bars: readonly RackBar[] }

/** The life of a bar or a pair on one page of paper. */
export function LifePage({ shop, bars }: Props) {
  const histories = useHistories(bars, shop), [first] = bars
  if (!first) return <NothingToPrint why="There is no such bar" back={{ to: '/rack', name: 'Rack' }} />
  const back = { to: `/rack/${first.record.id}`, name: 'Bar' }
  if (histories === 'away') return <NothingToPrint why="The shop’s server, which keeps the history, does not answer" back={back} />
  return histories === 'asking' ? <output className="page">Asking the shop</output> : <Pages shop={shop} bars={bars} histories={histories} back={back} />
}

function Pages({ shop, bars, histories, back }: Props & { readonly histories: Histories; readonly back: { readonly to: string; readonly name: string } }) {
  const units = useUnits(), { paper } = shop.shop
  const pages = useMemo(() => lineOfLifePages(lifeData(bars, histories, shop, units), paper), [bars, histories, shop, units, paper])
  return <PrintFrame title="Line of life" back={back} size={paper} pages={pages} />
}
