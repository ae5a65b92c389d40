import { useMemo, useState } from 'react'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { limitUmOf } from '#engine/rack/question-at.ts'
import { mayCarry } from '#model/bar.ts'
import { readSizeMm } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { uses } from '#model/wishes.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import type { MatesAsked } from '#web/inspect/mates/find-mates.ts'
import { MatesFoundList } from '#web/inspect/mates/mates-found.tsx'
import { type MatesTexts, MatesWishFields, noMatesTexts } from '#web/inspect/mates/mates-wish.tsx'
import { useMates } from '#web/inspect/mates/use-mates.ts'
import { Link } from '#web/parts/link.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { rackGroups } from '#web/rack/rack-bars.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { useUnits } from '#web/units.ts'
import '#web/styles/inspect-more.css'

/** The best mates out of the bars that are measured: which, for what, what comes out, and to take it. */
export function MatesScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), facts = useInspectFacts(shop), [texts, setTexts] = useState<MatesTexts>(noMatesTexts)
  const groups = useMemo(() => rackGroups(shop), [shop])
  const measured = useMemo(() => measuredIn(groups, facts), [groups, facts])
  const range = useMemo(() => readFields({
    fromMm: () => (texts.from.trim() === '' ? 0 : readSizeMm(texts.from, units.length, 'heightMm')), toMm: () => (texts.to.trim() === '' ? Infinity : readSizeMm(texts.to, units.length, 'heightMm')),
  }), [texts.from, texts.to, units.length])
  const asked = useMemo((): MatesAsked | null => {
    if ('refused' in range) return null
    const { fromMm, toMm } = range.values
    const ids = new Set(measured.flatMap(({ id, heightMm }) => (heightMm >= fromMm - nearMm && heightMm <= toMm + nearMm && (texts.picked === null || texts.picked.includes(id)) ? [id] : [])))
    return ids.size < 2 ? null : {
      facts: { bars: shop.bars.filter(({ id }) => ids.has(id)), checks: shop.checks, events: shop.events, shop: { limitsUm: shop.shop.limitsUm } },
      wish: texts.vises === 0 ? { want: 'pairs', withinUm: limitUmOf(texts.use, shop.shop.limitsUm) } : { want: 'row', vises: texts.vises },
      limitsUm: Object.fromEntries(uses.map((use) => [use, limitUmOf(use, shop.shop.limitsUm)])),
    }
  }, [measured, range, texts, shop])
  const search = useMates(asked), nameOf = useMemo(() => barNamer(shop.bars.map(({ id }) => id), shop, facts, units), [shop, facts, units])
  return (
    <>
      <AskPerson />
      {search.lots ? <div className="search-line"><progress value={search.lots[0]} max={search.lots[1]} aria-label="Looking for mates" /><button type="button" className="press" onClick={search.stop}>Stop</button></div> : null}
      <div className="page mates">
        <Link to="/inspect" className="back">Inspect</Link>
        <h1>Mates</h1>
        <MatesWishFields texts={texts} onChange={setTexts} refused={'refused' in range ? range.refused : {}} groups={groups} measured={measured.map(({ id }) => id)} />
        {'refused' in range ? null : asked === null ? <NoBars measured={measured.length} />
          : search.answer ? <MatesFoundList shop={shop} asked={asked} answer={search.answer} nameOf={nameOf} />
            : <output>{search.ended === 'fault' ? 'Not found: something failed on this device. Change what is asked, and it is tried anew.' : search.ended === 'stopped' ? 'Stopped. Change what is asked to look again.' : 'Looking for mates'}</output>}
      </div>
    </>
  )
}

/** A height range takes in what people call by it: a measured 24.996 is in from 25. */
const nearMm = 0.05

function NoBars({ measured }: { readonly measured: number }) {
  return measured < 2
    ? <p>Fewer than two bars are measured. Mates are chosen by readings, not by what is marked: <Link to="/inspect">check some bars</Link> first.</p>
    : <p>Fewer than two measured bars are in this choice.</p>
}

/** Bars whose height was measured and that could carry a part: neither retired, nor in work, nor to be drilled into. */
function measuredIn(groups: ReturnType<typeof rackGroups>, { heights }: Pick<InspectFacts, 'heights'>): readonly { readonly id: string; readonly heightMm: number }[] {
  return groups.flatMap(({ bars }) => bars.flatMap(({ record: { id }, trust }) => {
    const height = mayCarry(trust) ? heights(id) : null
    return height?.standing === 'measured' ? [{ id, heightMm: height.heightMm }] : []
  }))
}
