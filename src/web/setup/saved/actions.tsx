import { useState } from 'react'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { newId, nowIso } from '#web/new-id.ts'
import { go } from '#web/router.ts'
import { useDesk } from '#web/setup/desk.ts'
import { figureOf, nameOfRest } from '#web/setup/answer/say-choice.ts'
import { SavedSheet } from '#web/setup/saved/saved-sheet.tsx'
import { type Decision, isKept, keepSetup, usePairIn } from '#web/setup/saved/use-pair.ts'
import { isRefused } from '#web/setup/view/view-from.ts'
import { writeDeed } from '#web/write.ts'

/** The actions at the foot: take the pair, save or open, print, and the paper test. */
export function Actions() {
  const desk = useDesk(), { shop, state, view, bench, units, dispatch } = desk
  const [open, setOpen] = useState(false)
  const shown = view.answered?.shown, choice = shown && !isRefused(shown) ? shown : null
  const asked = { state, viseId: bench.vise.id, choice, atIso: nowIso(), newId }
  const write = ({ edits, setupId }: Decision) => { writeDeed({ edits }); dispatch({ do: 'saved', setupId }) }
  const take = () => {
    if (choice === null) return
    const decision = usePairIn(shop, asked), before = state.setupId
    write(decision)
    offerUndo(`${figureOf(choice, bench, units)} ${nameOfRest(choice, bench, units)} is in ${bench.vise.name}; the setup is kept.`, () => {
      writeDeed({ edits: decision.undo })
      dispatch({ do: 'saved', setupId: before })
    })
  }
  const print = () => {
    const kept = shop.setups.find(({ id }) => id === state.setupId)
    if (kept && isKept(kept, asked)) return go(`/setup/print/${kept.id}`)
    const decision = keepSetup(shop, asked)
    write(decision)
    go(`/setup/print/${decision.setupId}`)
  }
  return (
    <div className="setup-actions">
      <button type="button" className="action main" disabled={choice === null} onClick={take}>{choice !== null && choice.bars.length === 0 ? 'Use the bed' : 'Use this pair'}</button>
      <button type="button" className="action" onClick={() => setOpen(true)}>Save / open</button>
      <button type="button" className="action" disabled={choice === null} onClick={print}>Print sheet</button>
      <button type="button" className="action" onClick={() => go('/setup/down')}>Is it down?</button>
      {open ? <SavedSheet onClose={() => setOpen(false)} keep={() => write(keepSetup(shop, asked))} /> : null}
    </div>
  )
}
