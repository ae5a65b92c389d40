import type { Units } from '#model/shop-record.ts'
import type { ScaleSeries, Views } from '#drafting/setup/frame.ts'
import type { SheetWords } from '#drafting/setup/sheet-words.ts'

export type SheetOptions = {
  readonly widthMm: number
  readonly heightMm: number
  readonly units: Units
  readonly words: SheetWords
  /** `spots` (left out): given sizes are fields named `jaw height offTop between along cuts[i] addCut`; `none`: all are lettered. */
  readonly fields?: 'spots' | 'none'
  /** Left out: both where the paper is high enough, else the section alone. */
  readonly views?: Views
  /** Whether the plan shows the marked end of each bar, all to the left; left out: no. */
  readonly markedEnds?: boolean
  /** Left out: `fitted`. */
  readonly scales?: ScaleSeries
}
