import type { BarEvent } from '#model/bar-event.ts'
import type { BarRecord, MatesRecord, SlotRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { InstrumentRecord } from '#model/instrument-record.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { MachineRecord } from '#model/machine-record.ts'
import type { OutcomeRecord } from '#model/outcome-record.ts'
import type { PartRecord, SetupRecord } from '#model/setup-record.ts'
import type { PersonRecord, ShopRecord } from '#model/shop-record.ts'
import type { StockRecord } from '#model/stock-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'

/** The facts of one shop that a screen works from; everything else is derived by the engine. */
export type ShopSnapshot = {
  readonly shop: ShopRecord
  readonly people: readonly PersonRecord[]
  readonly vises: readonly ViseRecord[]
  readonly slots: readonly SlotRecord[]
  readonly mates: readonly MatesRecord[]
  readonly bars: readonly BarRecord[]
  readonly checks: readonly Check[]
  readonly events: readonly BarEvent[]
  readonly parts: readonly PartRecord[]
  readonly setups: readonly SetupRecord[]
  readonly instruments: readonly InstrumentRecord[]
  /** Those that are not finished. */
  readonly drafts: readonly DraftRecord[]
  readonly outcomes: readonly OutcomeRecord[]
  readonly machines: readonly MachineRecord[]
  readonly stock: readonly StockRecord[]
  readonly jobs: readonly JobRecord[]
}
