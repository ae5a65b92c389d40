import { useMemo, useState } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { type ChosenSetup, chosenSetup } from '#web/setup/beside/chosen-setup.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { rowAnswered, type RowTexts } from '#web/setup/row/row-asked.ts'
import { linesOf } from '#web/setup/row/row-lines.tsx'
import { type HeightClass, measuredPairs } from '#web/setup/row/row-pairs.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import { useUnits } from '#web/units.ts'

/** What was chosen and typed about the row. */
export type RowTyped = {
  /** The vises in it, by id. */
  readonly inRow: readonly string[]
  /** The height of its pairs, by their mean; null: nobody chose one. */
  readonly classAt: string | null
  /** Pairs of that height that are left out, by id. */
  readonly left: readonly string[]
  readonly oneZ: boolean
  /** The first of the two vises a long bar lies over, by its place in the row. */
  readonly longFrom: string
  readonly texts: RowTexts
}

export type RowAtHand = ReturnType<typeof useRow>

/** The row as it was chosen and typed, and what comes out of it. */
export function useRow(shop: ShopSnapshot) {
  const units = useUnits(), all = useMemo(() => shop.vises.filter(({ retired }) => !retired), [shop.vises])
  const [typed, setTyped] = useState<RowTyped>(() => ({ inRow: all.map(({ id }) => id), classAt: null, left: [], oneZ: true, longFrom: '0', texts: { beds: {}, apart: '', length: '' } }))
  const { inRow, classAt, left, oneZ, longFrom, texts } = typed
  const chosen = useMemo(() => chosenSetup(shop, units, localStorage), [shop, units])
  const { classes, notMeasured } = useMemo(() => measuredPairs(shop, rackHere(shop, units).pairs), [shop, units])
  const vises = useMemo(() => all.filter(({ id }) => inRow.includes(id)), [all, inRow])
  const offered = useMemo(() => classes.filter(({ pairs }) => pairs.length >= Math.max(2, vises.length)), [classes, vises])
  const taken = useMemo(() => takenFrom(offered, classAt, chosen?.choice?.bars ?? []), [offered, classAt, chosen])
  const pairs = useMemo(() => (taken?.pairs ?? []).filter(({ id }) => !left.includes(id)), [taken, left])
  const longAt = Math.min(Number(longFrom), Math.max(0, vises.length - 2))
  const asked = useMemo(() => rowAnswered({ vises, pairs, oneZ, texts, longFrom: longAt, unit: units.length }), [vises, pairs, oneZ, texts, longAt, units.length])
  const { beds, answer } = asked, form = chosen?.form
  const lines = useMemo(() => (answer && form ? linesOf({ answer, beds: beds.um, vises, pairs, shop, form, units }) : []), [answer, beds, vises, pairs, shop, form, units])
  return {
    all, vises, offered, notMeasured, taken, pairs, asked, lines, chosen, title: titleOf(chosen), typed,
    put: (part: Partial<RowTyped>) => setTyped((now) => ({ ...now, ...part })),
    type: (part: Partial<RowTexts>) => setTyped((now) => ({ ...now, texts: { ...now.texts, ...part } })),
  }
}

/** What the part on Set up is called; null where there is none. */
function titleOf(chosen: ChosenSetup | null): string | null {
  return chosen === null || chosen.form.height.trim() === '' ? null : chosen.state.title || sayPart(chosen.form)
}

/** The height chosen, else that of the setup on the screen, else the lowest with enough pairs. */
function takenFrom(offered: readonly HeightClass[], classAt: string | null, onScreen: readonly string[]): HeightClass | null {
  const isOnScreen = ({ pairs }: HeightClass) => pairs.some(({ bars }) => bars.some(({ id }) => onScreen.includes(id)))
  return offered.find(({ meanMm }) => String(meanMm) === classAt) ?? offered.find(isOnScreen) ?? offered[0] ?? null
}
