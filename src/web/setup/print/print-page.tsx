import { useEffect, useMemo, useRef } from 'react'
import { setupSheetPages } from '#drafting/setup/setup-sheet.ts'
import type { Told } from '#model/setup-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useDevice } from '#web/device.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { Paper } from '#web/parts/paper.tsx'
import { sheetDataFrom } from '#web/setup/print/sheet-data.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { choiceKey, isSameRest } from '#web/setup/view/choice-key.ts'
import { isRefused, viewFrom } from '#web/setup/view/view-from.ts'
import { useUnits } from '#web/units.ts'
import { writeTold } from '#web/write.ts'

/** A kept setup as its sheet on paper. What is printed is kept as it was told. */
export function PrintPage({ shop, id }: { readonly shop: ShopSnapshot; readonly id: string }) {
  const units = useUnits(), { person } = useDevice(), setup = shop.setups.find((one) => one.id === id)
  const bench = useMemo(() => benchFrom(shop, setup?.viseId ?? null), [shop, setup?.viseId])
  const data = useMemo(() => {
    if (!setup || !bench) return null
    const view = viewFrom(setup.form, bench, choiceKey(setup)), { answered } = view, choice = answered?.shown
    if (!answered || !choice || isRefused(choice) || !isSameRest(choice, setup)) return null
    const day = new Date(setup.usedAtIso).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' })
    return sheetDataFrom({ setup, shop, bench, view: { ...view, answered }, choice, units, day, initials: person?.initials ?? '' })
  }, [setup, bench, shop, units, person])
  useTold(id, data)
  if (!setup) return <NoSheet why="There is no such setup" />
  if (!data) return <NoSheet why="The bars of this setup do not serve any more: open it and choose again" />
  const { paper } = shop.shop
  return (
    <div className="setup-print">
      <div className="setup-print-head no-print">
        <Link to="/setup" className="back">Set up</Link>
        <h1>Setup sheet</h1>
        <button type="button" className="action main" onClick={() => print()}>Print</button>
      </div>
      <Paper size={paper}>{setupSheetPages(data, paper).map((scene, at) => <Drawing key={at} scene={scene} medium="print" />)}</Paper>
    </div>
  )
}

function NoSheet({ why }: { readonly why: string }) {
  return <div className="page"><h1>{why}</h1><p><Link to="/setup">Go to Set up</Link></p></div>
}

/** A sheet that was printed is a fact: it is written down once for each print, as the data it was drawn from. */
function useTold(setupId: string, data: object | null): void {
  const latest = useRef(data)
  useEffect(() => { latest.current = data }, [data])
  useEffect(() => {
    const told = () => { if (latest.current !== null) writeTold({ setupId, checkId: null, what: 'setup sheet', data: latest.current as Told['data'] }) }
    addEventListener('beforeprint', told)
    return () => removeEventListener('beforeprint', told)
  }, [setupId])
}
