import { useCallback, useMemo } from 'react'
import { rowPicture, type RowPictureVise } from '#drafting/setup/row-picture.ts'
import type { Row } from '#engine/setup/row/row.ts'
import { mmPerInch, wordLength, wordNumber } from '#model/length.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { RoomDrawing } from '#web/setup/beside/room-drawing.tsx'
import { type InVise, inVise } from '#web/setup/row/in-vise.ts'
import type { MeasuredPair } from '#web/setup/row/row-pairs.ts'
import { useUnits } from '#web/units.ts'

/** One vise of the row with its pair. */
export type RowLine = {
  readonly vise: ViseRecord
  readonly pair: MeasuredPair
  readonly label: string
  readonly slot: string
  readonly bedUm: number
  /** What it adds to its Z, worded and in µm. */
  readonly offset: string
  readonly offsetUm: number
  readonly comesOut: InVise | null
}

type Asked = {
  readonly answer: Row
  /** In µm, in the order of the vises. */
  readonly beds: readonly number[]
  readonly vises: readonly ViseRecord[]
  readonly pairs: readonly MeasuredPair[]
  readonly shop: ShopSnapshot
  readonly form: SetupForm
  readonly units: Units
}

/** Nothing on Set up speaks against the pair in its vise. */
export const serves = (of: RowLine['comesOut']): boolean => of === null || 'choice' in of

export function linesOf({ answer, beds, vises, pairs, shop, form, units }: Asked): readonly RowLine[] {
  return vises.map((vise, k): RowLine => {
    const pair = pairs.find(({ id }) => id === answer.assignment[k])!, offsetUm = answer.zOffsetsUm[k]!
    return {
      vise, pair, label: pair.label, slot: pair.slot, bedUm: beds[k]!,
      offsetUm, offset: signedLength(offsetUm / 1000, units), comesOut: inVise(vise, form, pair.bars, shop.shop),
    }
  })
}

export function pictureVises(lines: readonly RowLine[], units: Units): readonly RowPictureVise[] {
  return lines.map(({ vise, label, bedUm, offsetUm, offset }) => {
    const bed = `${signed(bedUm, units, 1)} µm`
    return { name: vise.name, pair: label, bedUm, bed: [`bed ${bed}`, bed], offsetUm, offset: [`Z ${offset}`, offset] }
  })
}

export function RowDrawing({ lines }: { readonly lines: readonly RowLine[] }) {
  const units = useUnits()
  const vises = useMemo(() => pictureVises(lines, units), [lines, units])
  const draw = useCallback(({ widthMm }: { readonly widthMm: number }) => rowPicture({
    title: 'The row', description: sayRow(lines), vises, drawnLarger: (times) => `differences drawn × ${times}`,
  }, widthMm), [lines, vises])
  return <RoomDrawing draw={draw} />
}

/** `V1: 30 A, Z 0; V2: 30 B, Z +0.015`. */
export const sayRow = (lines: readonly RowLine[]): string => lines.map(({ vise, label, offset }) => `${vise.name}: ${label}, Z ${offset}`).join('; ')

/** The height of a measured pair, to a tenth of a µm or as fine as inches are said. */
export const finely = (heightMm: number, units: Units): string => wordLength(heightMm, units, units.length === 'mm' ? { decimals: 4 } : { fractions: false })

/** `+0.015`, `0`, in the units of the person. */
export function signedLength(mm: number, units: Units): string {
  return units.length === 'mm' ? signed(mm, units, 4) : signed(mm / mmPerInch, units, 5)
}

export function signed(value: number, units: Units, places: number): string {
  const said = wordNumber(value, units.decimalMark, null, places)
  return said.startsWith('−') || said === '0' ? said : `+${said}`
}
