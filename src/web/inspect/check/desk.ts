import { createContext, useContext } from 'react'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { DraftRead } from '#engine/inspect/read-draft.ts'
import type { ReadCell } from '#engine/inspect/read-cell.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Terms } from '#words/terms.ts'
import type { NameOf } from '#words/wording.ts'

/** What lies open beside the drawing. */
export type Panel = 'bars' | 'method' | 'instruments' | 'stations' | 'zero'

/** All that the parts of the check screen share: what was typed, what follows from it, and where the hand is. */
export type CheckDesk = {
  readonly shop: ShopSnapshot
  readonly draft: DraftRecord
  readonly read: DraftRead
  readonly facts: InspectFacts
  readonly units: Units
  readonly terms: Terms
  readonly nameOf: NameOf
  readonly panel: Panel | null
  readonly open: (panel: Panel | null) => void
  /** Key of the reading that is typed or comes next; null: all are there. */
  readonly current: string | null
  readonly enter: (key: string | null) => void
  /** A reading that was asked about is meant as it stands. */
  readonly keepAsRead: (cell: ReadCell) => void
}

const DeskContext = createContext<CheckDesk | null>(null)
export const AtCheck = DeskContext.Provider

export function useCheckDesk(): CheckDesk {
  const desk = useContext(DeskContext)
  if (desk === null) throw new Error('a part of the check screen stands outside of it')
  return desk
}
