import { useMemo, useState } from 'react'
import { askedOf, readDraft } from '#engine/inspect/read-draft.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { CheckActions } from '#web/inspect/check/check-actions.tsx'
import { AtCheck, type CheckDesk, type Panel } from '#web/inspect/check/desk.ts'
import { Panels } from '#web/inspect/check/panels/panels.tsx'
import { PlateSheet } from '#web/inspect/check/plate-sheet.tsx'
import { useGauge } from '#web/inspect/serial/use-gauge.ts'
import { AnswerHead } from '#web/inspect/verdict/answer-head.tsx'
import { AnswerList } from '#web/inspect/verdict/answer-list.tsx'
import { Figures } from '#web/inspect/verdict/figures.tsx'
import { barNamer } from '#web/inspect/bar-names.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** The bars on the plate with a field at each station, and beside them what the readings so far prove. */
export function CheckPlate({ shop, draft }: { readonly shop: ShopSnapshot; readonly draft: DraftRecord }) {
  const units = useUnits(), terms = useTerms(), facts = useInspectFacts(shop), { form, typed, looks } = draft
  const [panel, open] = useState<Panel | null>(form.bars.length === 0 ? 'bars' : null), [entered, enter] = useState<string | null>(null)
  const [kept, setKept] = useState<ReadonlySet<string>>(new Set())
  const read = useMemo(() => readDraft({ form, typed, looks }, facts, kept), [form, typed, looks, facts, kept])
  const { bars, mates, checks } = shop
  const nameOf = useMemo(() => barNamer(form.bars.map(({ bar }) => bar), { bars, mates, checks }, facts, units, form.bars), [form.bars, bars, mates, checks, facts, units])
  const current = entered ?? read.cells.find(({ text }) => text === '')?.cell.key ?? null
  const desk: CheckDesk = { shop, draft, read, facts, units, terms, nameOf, panel, open, current, enter, keepAsRead: (cell) => setKept(new Set([...kept, askedOf(cell)])) }
  const gauge = useGauge(draft.id)
  return (
    <AtCheck value={desk}>
      <div className="setup insp">
        <form className="setup-form" onSubmit={(event) => event.preventDefault()}><PlateSheet /></form>
        <AnswerHead answer={read.answer} method={form.method} bars={form.bars.length} />
        <Figures answer={read.answer} />
        <div className="setup-side">
          {panel === null ? null : <Panels panel={panel} gauge={gauge} />}
          <AnswerList answer={read.answer} nameOf={nameOf} />
        </div>
        <CheckActions />
      </div>
    </AtCheck>
  )
}
