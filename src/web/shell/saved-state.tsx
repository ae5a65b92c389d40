import { useState } from 'react'
import { isPlainHttp } from '#web/access.ts'
import { openClashes } from '#web/keep/open-clashes.ts'
import { OutboxSheet } from '#web/shell/outbox-sheet.tsx'
import { type ShopState, useShop } from '#web/shop-store.ts'

/** Where the work is: on this device or in the shop. Opens what waits, what was refused, and what two people both changed. */
export function SavedState() {
  const [open, setOpen] = useState(false)
  const state = useShop(), clashes = state.shop ? openClashes(state.shop).length : 0
  const { aside, unkept } = state.outbox
  return (
    <>
      <button type="button" className={aside.length + clashes > 0 || unkept || state.server === 'stranger' ? 'saved--trouble' : undefined} onClick={() => setOpen(true)}>
        {sayState(state, clashes)}{isPlainHttp ? <span className="plain-http"> · plain http</span> : null}
      </button>
      <output className="unseen">{sayState(state, clashes)}</output>
      {open ? <OutboxSheet onClose={() => setOpen(false)} /> : null}
    </>
  )
}

function sayState({ server, outbox: { waiting, aside, unkept } }: ShopState, clashes: number): string {
  if (server === 'stranger') return 'Not enrolled'
  if (aside.length > 0) return `${aside.length} not taken`
  if (clashes > 0) return clashes === 1 ? '1 clash' : `${clashes} clashes`
  if (waiting.length > 0) return unkept ? 'Not saved here' : 'Saved here'
  return server === 'here' ? 'Saved in the shop' : server === 'asking' ? 'Asking the shop' : 'Shop away'
}
