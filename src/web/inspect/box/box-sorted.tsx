import { useMemo } from 'react'
import { readOrFinding } from '#engine/inspect/read-or-finding.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital } from '#words/wording.ts'
import { boxDeed } from '#web/inspect/box/box-deed.ts'
import { LotRow } from '#web/inspect/box/lot-row.tsx'
import { type BoxOutcome, boxOutcome } from '#web/inspect/box/box-outcome.ts'
import { namesToWrite } from '#web/inspect/box/names-to-write.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { newId } from '#web/new-id.ts'
import { StatusLine } from '#web/parts/status-line.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

type Props = { readonly shop: ShopSnapshot; readonly draft: DraftRecord; readonly onBack: () => void }

/** What the box comes to, and what to write on each bar before it is emptied. */
export function BoxSorted({ shop, draft, onBack }: Props) {
  const units = useUnits(), facts = useInspectFacts(shop)
  const numbers = new Map(draft.form.bars.map(({ bar, name }) => [bar, `bar ${name || '?'}`])), nameOf = (bar: string) => numbers.get(bar) ?? '?'
  const [outcome, said] = useMemo(() => readOrFinding(() => boxOutcome(draft, facts)), [draft, facts])
  if (outcome === null) {
    return (
      <div className="page box">
        <h1>Not sorted yet</h1>
        {said ? <StatusLine danger>{sayRefusal(said, units, nameOf)}</StatusLine> : null}
        <div className="foot-actions"><button type="button" className="action main" onClick={onBack}>Back to the bars</button></div>
      </div>
    )
  }
  return <Lots shop={shop} draft={draft} onBack={onBack} outcome={outcome} nameOf={nameOf} />
}

function Lots({ shop, draft, onBack, outcome, nameOf }: Props & { readonly outcome: BoxOutcome; readonly nameOf: (bar: string) => string }) {
  const units = useUnits(), { sorted } = outcome
  const names = namesToWrite(sorted, shop, textsOf(draft, 'name')), marked = textsOf(draft, 'marked'), open = Object.keys(names).filter((bar) => !marked[bar])
  const row = { draft, names, marked, nameOf, outcome }
  const keep = () => {
    const id = newId(), ids = outcome.bars.map((bar) => bar.id)
    writeDeed(boxDeed(outcome, names, draft, id, units))
    offerUndo(`Added out of the box: ${ids.length === 1 ? 'one bar' : `${ids.length} bars`}.`, () => {
      writeDeed({ events: ids.map((bar) => ({ bar, kind: 'gone', undoes: null, note: '' })) })
    })
    go('/rack', { replace: true })
  }
  return (
    <div className="page box">
      <h1>{sayCounts(sorted)}</h1>
      {sorted.findings.map((finding) => <p key={JSON.stringify(finding)}>{capital(sayFinding(finding, units, nameOf))}</p>)}
      <p><strong>Mark the bars before the box is emptied:</strong> write on each what stands in its field, at the end that was read first. That is its marked end.</p>
      <section><h2>Pairs</h2>{sorted.pairs.length === 0 ? <p>None that are near enough.</p> : <ul className="lots">{sorted.pairs.map((pair) => <LotRow key={pair.bars.join()} {...row} bars={pair.bars} because={pair.because} />)}</ul>}</section>
      {sorted.regrind.length > 0 ? <section><h2>Worth grinding again</h2><ul className="lots">{sorted.regrind.map((one) => <LotRow key={one.bars.join()} {...row} bars={one.bars} because={one.because} />)}</ul></section> : null}
      {sorted.drillBars.length > 0 ? <section><h2>To drill into</h2><ul className="lots">{sorted.drillBars.map(({ bar, because }) => <LotRow key={bar} {...row} bars={[bar]} because={because} />)}</ul></section> : null}
      {sorted.scrap.length > 0 ? <section><h2>Scrap</h2><ul className="lots">{sorted.scrap.map(({ bar, because }) => <LotRow key={bar} {...row} bars={[bar]} because={because} />)}</ul></section> : null}
      <p className="small">Kept, they stand in the rack with the readings as found. Pairs are “look first”: wipe, stone and look at them before use. For fine milling and grinding they need a check on the plate.</p>
      <div className="foot-actions">
        {open.length > 0 ? <output className="status">{open.length === 1 ? '1 bar is not marked yet.' : `${open.length} bars are not marked yet.`}</output> : null}
        <button type="button" className="action main" onClick={keep}>Keep them all</button>
        <button type="button" className="action" onClick={onBack}>Back to the bars</button>
      </div>
    </div>
  )
}

function sayCounts({ pairs, regrind, drillBars, scrap }: BoxOutcome['sorted']): string {
  const ground = regrind.reduce((sum, { bars }) => sum + bars.length, 0)
  return [pairs.length === 1 ? '1 pair' : `${pairs.length} pairs`, ...(ground > 0 ? [`${ground} to grind`] : []), ...(drillBars.length > 0 ? [`${drillBars.length} to drill into`] : []), ...(scrap.length > 0 ? [`${scrap.length} scrap`] : [])].join(' · ')
}

/** What was typed or ticked beside the readings, by bar: `name/<bar>`, `marked/<bar>`. */
function textsOf({ typed }: DraftRecord, what: 'name' | 'marked'): { readonly [bar: string]: string } {
  return Object.fromEntries(Object.entries(typed).flatMap(([key, text]) => (key.startsWith(`${what}/`) ? [[key.slice(what.length + 1), text]] : [])))
}
