import { useState } from 'react'
import { wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { notNamed, SheetFields, type SheetNamed } from '#web/setup/beside/sheet-named.tsx'
import { TableAnswer, TableDrawing } from '#web/setup/table/table-answer.tsx'
import { BarFields, HoleFields, PartFields, StrapFields } from '#web/setup/table/table-fields.tsx'
import { TablePrint } from '#web/setup/table/table-print.tsx'
import { type TableAtHand, useTable } from '#web/setup/table/use-table.ts'
import { useUnits } from '#web/units.ts'

/** A part on two bars on the table of a drill press or mill, under straps. */
export function TableScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const table = useTable(shop), { texts, put, told, barHeightMm, pair, stateOf, amiss, isBegun } = table, [named, setNamed] = useState<SheetNamed>(notNamed)
  if (named.printed !== null && told !== null && barHeightMm !== null) {
    return <TablePrint shop={shop} told={told} barHeightMm={barHeightMm} pair={pair} stateOf={stateOf} named={named} printed={named.printed} onBack={() => setNamed({ ...named, printed: null })} />
  }
  const isReady = told !== null && barHeightMm !== null && !Object.values(amiss).includes(true)
  return (
    <BesidePage title="On the table" typedFirst sheet={<TableDrawing table={table} />}>
      <p>Two bars on the table of a drill press or mill, the part on them, straps above the bars. Sizes across count from the near edge.</p>
      <TableAnswer table={table} />
      <PartFields texts={texts} put={put} />
      <HoleFields holes={texts.holes} onChange={(holes) => put({ holes })} />
      <BarFields texts={texts} put={put} putBars={table.putBars} />
      <StrapFields straps={texts.straps} onChange={(straps) => put({ straps })} />
      {isBegun ? <OutOfTheRack table={table} /> : null}
      {isBegun ? <SheetFields named={named} onChange={setNamed} isReady={isReady} /> : null}
      {told ? <ShowSum sums={told.answer.sum} /> : null}
      <Cautions situations={told?.answer.situations ?? ['straps']} />
    </BesidePage>
  )
}

const mostShown = 8

/** The lowest pairs of the rack that are high and thin enough, each taken at one tap. */
function OutOfTheRack({ table: { fits, pair, stateOf, take } }: { readonly table: TableAtHand }) {
  const units = useUnits()
  return (
    <section>
      <h3>Out of the rack</h3>
      {fits.length === 0 ? <p>No pair of the rack is high and thin enough.</p> : null}
      <ul className="beside-rows">
        {fits.slice(0, mostShown).map((one) => (
          <li key={one.id}>
            <button type="button" className="action" aria-pressed={one.id === pair?.id} onClick={() => take(one)}>{one.label}, slot {one.slot}: {wordLength(one.thicknessMm, units)} thick{stateOf(one.bars)}</button>
          </li>
        ))}
      </ul>
    </section>
  )
}
