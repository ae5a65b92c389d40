import { useState } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import { Link } from '#web/parts/link.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { RowActions } from '#web/setup/row/row-actions.tsx'
import { AcrossTwo, BedFields, PairFields, ViseFields } from '#web/setup/row/row-fields.tsx'
import { RowDrawing, serves } from '#web/setup/row/row-lines.tsx'
import { RowList } from '#web/setup/row/row-list.tsx'
import { RowPrint } from '#web/setup/row/row-print.tsx'
import { type RowAtHand, useRow } from '#web/setup/row/use-row.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** A row of vises: which pair in which, so that all tops are as equal as they can be, and what each vise has to add to its Z. */
export function RowScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const terms = useTerms(), row = useRow(shop), { asked: { answer }, lines, chosen, title, typed: { oneZ } } = row
  const [printing, setPrinting] = useState<string | null>(null)
  const unfit = lines.filter(({ comesOut }) => !serves(comesOut)).map(({ vise }) => vise.name)
  if (printing !== null && answer !== null) {
    return <RowPrint shop={shop} setupId={printing} lines={lines} answer={answer} oneZ={oneZ} title={title ?? ''} operation={chosen?.state.operation ?? ''} onBack={() => setPrinting(null)} />
  }
  return (
    <BesidePage title={`Row of ${terms.vise}s`} sheet={<Dealt row={row} />}>
      <p>{title === null ? 'No part on Set up yet: only the pairs are matched, and there is no sheet to print.' : <>Same setup in all: <strong className="name-text">{title}</strong>.</>}</p>
      <RowActions shop={shop} row={row} isReady={lines.length > 0 && unfit.length === 0} onPrint={setPrinting} />
      <InTheWay row={row} unfit={unfit} />
      <ViseFields row={row} />
      <BedFields row={row} />
      <PairFields row={row} />
      <AcrossTwo row={row} />
      {answer ? <ShowSum sums={answer.sum} /> : null}
      <Cautions situations={['seating', 'loose bar', 'handle off the vise']} />
    </BesidePage>
  )
}

/** The row as it is dealt. */
function Dealt({ row: { lines, asked: { answer }, typed: { oneZ } } }: { readonly row: RowAtHand }) {
  if (lines.length === 0 || answer === null) return <p className="small">The row stands here once its beds and enough measured pairs are known.</p>
  return <><RowDrawing lines={lines} /><RowList lines={lines} answer={answer} oneZ={oneZ} /></>
}

/** What keeps the row from being dealt or locked. */
function InTheWay({ row: { vises, asked: { refusal, beds: { missing } } }, unfit }: { readonly row: RowAtHand; readonly unfit: readonly string[] }) {
  const units = useUnits(), { vise } = useTerms(), unmeasured = vises.find(({ name }) => missing.includes(name))
  return (
    <>
      {unfit.length === 0 ? null : <p className="beside-warn">The setup does not serve in {listOf(unfit)}: leave that {vise} out of the row, or take pairs of another height.</p>}
      {refusal ? <p className="beside-warn" role="alert">{sayRefusal(refusal, units)}</p> : null}
      {unmeasured ? (
        <p className="beside-warn">
          Bed not measured: {listOf(missing)}. Type {missing.length > 1 ? 'their heights against each other' : 'its height against the others of the row'}, or{' '}
          <Link to={`/shop/vise/${unmeasured.id}/measure`}>measure {unmeasured.name}</Link>.
        </p>
      ) : null}
      {vises.length === 0 ? <p className="beside-warn">No {vise} is in the row: touch those that run this setup.</p> : null}
    </>
  )
}
