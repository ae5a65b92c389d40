import { useEffect, useMemo, useReducer, useState } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { AnswerHead } from '#web/setup/answer/answer-head.tsx'
import { AnswerList } from '#web/setup/answer/answer-list.tsx'
import { FourNumbers } from '#web/setup/answer/four-numbers.tsx'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import { AtDesk, type Desk } from '#web/setup/desk.ts'
import { Options } from '#web/setup/options/options.tsx'
import { Actions } from '#web/setup/saved/actions.tsx'
import { usePredictions } from '#web/setup/predict/use-predictions.ts'
import { SetupSheet } from '#web/setup/sheet/setup-sheet.tsx'
import { draftFrom, keepDraftSoon } from '#web/setup/state/draft.ts'
import { reduceSetup } from '#web/setup/state/reduce-setup.ts'
import { lastViseId } from '#web/setup/state/same-again.ts'
import { formToAsk } from '#web/setup/state/setup-state.ts'
import { useUnserved } from '#web/setup/use-unserved.ts'
import { type Bench, benchFrom } from '#web/setup/view/bench.ts'
import { pictureFrom, withoutAnswer } from '#web/setup/view/picture-from.ts'
import { viewFrom } from '#web/setup/view/view-from.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** The sheet and its answer, worked out anew at each key on a rack that was indexed once. */
export function SetupDesk({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms()
  const [state, dispatch] = useReducer(reduceSetup, units.length, (unit) => draftFrom(localStorage, unit))
  useEffect(() => keepDraftSoon(localStorage, state, window), [state])
  const bench = useBench(shop, state.viseId)
  const asked = useMemo(() => formToAsk(state), [state])
  const view = useMemo(() => viewFrom(asked, bench, state.chosen), [asked, bench, state.chosen])
  const picture = useMemo(() => pictureFrom(asked, view, bench, (bar) => barLabel(bar.id, bench, units), units.length), [asked, view, bench, units])
  const last = useLast(picture) ?? pictureFrom(asked, { ...view, waits: true }, bench, () => '', units.length)!
  const drawn = useMemo(() => picture ?? withoutAnswer(last), [picture, last])
  const foretelling = usePredictions(shop, bench, view, asked.side)
  const desk: Desk = { shop, bench, state, view, foretelling, dispatch, units, terms }
  useUnserved(desk)
  useEnterToAddCut()
  return (
    <AtDesk value={desk}>
      <div className="setup">
        <form className="setup-form" onSubmit={(event) => event.preventDefault()}><SetupSheet picture={drawn} /></form>
        <AnswerHead />
        <FourNumbers />
        <div className="setup-side"><Options /><AnswerList /></div>
        <Actions />
      </div>
    </AtDesk>
  )
}

/** The vise chosen here, or the last one used; the rack is indexed again only when something of it has changed. */
function useBench(shop: ShopSnapshot, wantedId: string | null): Bench {
  const { shop: settings, vises, bars, checks, events, mates, slots, setups } = shop
  const viseId = vises.some(({ id, retired }) => id === wantedId && !retired) ? wantedId : lastViseId(setups, vises)
  return useMemo(() => benchFrom({ shop: settings, vises, bars, checks, events, mates, slots, setups }, viseId)!, [settings, vises, bars, checks, events, mates, slots, setups, viseId])
}

/** The latest value that was not null: a drawing stays while what is typed cannot be drawn. */
function useLast<Value>(value: Value | null): Value | null {
  const [last, setLast] = useState(value)
  if (value !== null && value !== last) setLast(value)
  return value ?? last
}

/** Enter in the last field goes on to the place where a cut is added. Heard after the field itself, which has then let go. */
function useEnterToAddCut(): void {
  useEffect(() => {
    const onward = ({ key, target }: KeyboardEvent) => {
      if (key === 'Enter' && target instanceof HTMLInputElement && target.closest('.setup-form') && document.activeElement === document.body) document.getElementById('add-cut')?.focus()
    }
    addEventListener('keydown', onward)
    return () => removeEventListener('keydown', onward)
  }, [])
}
