import { createContext, type Dispatch, useContext } from 'react'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { Terms } from '#words/terms.ts'
import type { Foretelling } from '#web/setup/predict/use-predictions.ts'
import type { Bench } from '#web/setup/view/bench.ts'
import type { SetupView } from '#web/setup/view/view-from.ts'
import type { SetupAction } from '#web/setup/state/reduce-setup.ts'
import type { SetupState } from '#web/setup/state/setup-state.ts'

/** All that the parts of the Set up screen share: what was typed, what follows from it, and the way to change it. */
export type Desk = {
  readonly shop: ShopSnapshot
  readonly bench: Bench
  readonly state: SetupState
  readonly view: SetupView
  /** Comes after the answer and changes nothing of it. */
  readonly foretelling: Foretelling
  readonly dispatch: Dispatch<SetupAction>
  readonly units: Units
  readonly terms: Terms
}

const DeskContext = createContext<Desk | null>(null)
export const AtDesk = DeskContext.Provider

export function useDesk(): Desk {
  const desk = useContext(DeskContext)
  if (desk === null) throw new Error('a part of the Set up screen stands outside of it')
  return desk
}
