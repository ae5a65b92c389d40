import { useState } from 'react'
import type { MatesOfRack } from '#engine/inspect/mates-of-rack.ts'
import { wordNumber } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf, type NameOf } from '#words/wording.ts'
import { acceptMates, areMates } from '#web/inspect/mates/accept.ts'
import type { MatesAsked, MatesFound } from '#web/inspect/mates/find-mates.ts'
import { MatesRow } from '#web/inspect/mates/mates-row.tsx'
import { sayLeaving } from '#web/inspect/mates/say-mates.ts'
import { newId } from '#web/new-id.ts'
import { StatusLine } from '#web/parts/status-line.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useTerms, useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

type Props = { readonly shop: ShopSnapshot; readonly asked: MatesAsked; readonly answer: MatesFound; readonly nameOf: NameOf }

/** So many are shown at first; each has its drawing. */
const shownAtFirst = 12

/** What was found, best first, and to take one or all of it. */
export function MatesFoundList({ shop, asked, answer, nameOf }: Props) {
  const units = useUnits(), [shown, setShown] = useState(shownAtFirst)
  if ('refused' in answer) return <StatusLine danger>{sayRefusal(answer.refused, units, nameOf)}</StatusLine>
  const { found, bars } = answer, { groups, row, leftOver } = found
  const wanted = row ? [groups.flatMap(({ bars }) => bars)] : groups.map(({ bars }) => bars), open = wanted.filter((group) => !areMates(group, shop.bars))
  // What is new comes first; within that the best.
  const inOrder = row ? groups : [...groups.filter(({ bars }) => !areMates(bars, shop.bars)), ...groups.filter(({ bars }) => areMates(bars, shop.bars))]
  const take = (many: readonly (readonly string[])[]) => {
    const { edits, undo } = acceptMates(many, shop, newId)
    writeDeed({ edits })
    offerUndo(many.length === 1 ? `Mates now: ${listOf(many[0]!.map(nameOf))}.` : `${many.length} pairs are mates now.`, () => { writeDeed({ edits: undo }) })
  }
  return (
    <section className="mates-found" aria-label="What was found">
      <h2>{sayFound(found, asked, bars.length)}</h2>
      <output className="unseen">{sayFound(found, asked, bars.length)}</output>
      {found.findings.map((finding) => <p key={JSON.stringify(finding)} className="small">{sayFinding(finding, units, nameOf)}</p>)}
      {row ? <RowHead row={row} /> : null}
      {open.length > 1 || row ? <TakeAll open={open} shop={shop} nameOf={nameOf} row={row !== null} onTake={() => take(open)} /> : null}
      <ul className="lots">
        {inOrder.slice(0, shown).map((one) => <MatesRow key={one.bars.join()} proposal={one} bars={bars} shop={shop} nameOf={nameOf} onTake={row ? null : () => take([one.bars])} />)}
      </ul>
      {groups.length > shown ? <button type="button" className="action" onClick={() => setShown(shown + shownAtFirst)}>Show more ({groups.length - shown})</button> : null}
      {leftOver.length > 0 ? <p className="small">Left over: {leftOver.length > 20 ? `${leftOver.length} bars` : listOf(leftOver.map(nameOf))}.</p> : null}
    </section>
  )
}

function RowHead({ row: { spreadUm, provedToUm, uses } }: { readonly row: NonNullable<MatesOfRack['row']> }) {
  const { decimalMark } = useUnits(), { vise } = useTerms(), um = (value: number) => `${wordNumber(value, decimalMark, null, 1)} µm`
  const good = uses.flatMap(({ use, verdict }) => (verdict === 'proved' ? [use] : []))
  return (
    <>
      <p>All of them lie within {um(spreadUm)} over all places{provedToUm === null ? '; what they were read with is not known, so nothing is proved' : `, proved to ${um(provedToUm)}`}. {good.length > 0 ? `Fit for ${listOf(good)} by their spread.` : ''}</p>
      <p className="small">Each {vise} takes one of these pairs. All bars become mates of one set.</p>
    </>
  )
}

function TakeAll({ open, shop, nameOf, row, onTake }: { readonly open: readonly (readonly string[])[]; readonly shop: ShopSnapshot; readonly nameOf: NameOf; readonly row: boolean; readonly onTake: () => void }) {
  if (open.length === 0) return <p>These are mates already.</p>
  const leaving = sayLeaving(acceptMates(open, shop, newId), nameOf)
  return (
    <div className="take-all">
      {leaving === null ? null : <p className="small">{leaving}</p>}
      <div><button type="button" className="action main" onClick={onTake}>{row ? 'Make them one set of mates' : `Make all ${open.length} pairs mates`}</button></div>
    </div>
  )
}

function sayFound({ groups, row }: MatesOfRack, { wish }: MatesAsked, bars: number): string {
  if (row) return `The nearest ${2 * groups.length} of ${bars} bars`
  const within = wish.want === 'pairs' ? ` within ${wish.withinUm} µm` : ''
  return groups.length === 0 ? `No pair${within} among ${bars} bars` : `${groups.length === 1 ? '1 pair' : `${groups.length} pairs`}${within} out of ${bars} bars`
}
