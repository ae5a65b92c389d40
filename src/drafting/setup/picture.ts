import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import type { Place } from '#model/setup.ts'

/** A bar as it stands under the part: its section across the jaws and its place in the plan. */
export type PictureBar = {
  /** What is written on it: `35 C`. */
  readonly label: string
  /** Size across the jaws and size up, as it stands. */
  readonly acrossMm: number
  readonly upMm: number
  readonly lengthMm: number
  /** Null while the part's sizes leave it open: the first is then drawn at the fixed jaw, the second at the moving one, a lone one in the middle. */
  readonly place: Place | null
  /** Height of its underside above the bed: 0, or the lower bar's size in a stack. */
  readonly fromMm: number
  readonly fouled: boolean
}

/** Everything the section and the plan show of a setup; a size nobody has given yet is null and drawn as open. */
export type SetupPicture = {
  readonly fixedJawHeightMm: number
  readonly movingJawHeightMm: number
  readonly jawWidthMm: number | null
  readonly openingMm: number
  readonly shape: Part['shape']
  readonly betweenJawsMm: number | null
  readonly alongJawsMm: number | null
  readonly heightMm: number | null
  readonly hollows: Part['hollows']
  /** Null: a cut whose numbers are still being typed; it has its field but nothing is drawn. */
  readonly cuts: readonly (Cut | null)[]
  /** Height the part rests at; null while there is no answer. */
  readonly seatMm: number | null
  readonly bars: readonly PictureBar[]
  readonly gripMm: number | null
  readonly airMm: number | null
}
