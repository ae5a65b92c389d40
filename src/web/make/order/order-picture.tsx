import { useMemo } from 'react'
import { ladderDrawing } from '#drafting/make/ladder.ts'
import { attempt } from '#model/attempt.ts'
import type { OrderForm } from '#model/job-record.ts'
import { readLengthMm, wordLength } from '#model/length.ts'
import type { Order } from '#model/order.ts'
import { Refusal } from '#model/refusal.ts'
import { sayHeights } from '#words/say-make.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { useUnits } from '#web/units.ts'

/** All heights to scale beside each other, the jaw behind them where they count down from it. */
export function OrderPicture({ order, form }: { readonly order: Order; readonly form: OrderForm }) {
  const units = useUnits(), { heightsMm, thicknessMm, lengthMm, each, bars } = order
  const scene = useMemo(() => {
    const jawMm = form.heightsBy === 'jaw' ? attempt(() => readLengthMm(form.jawHeight, form.unit)) : null
    return ladderDrawing({
      title: 'What is ordered', description: `Bars of ${sayHeights(heightsMm, units)}, seen from their ends, to scale`,
      bars: heightsMm.map((heightMm) => ({ label: wordLength(heightMm, units), heightMm, thicknessMm })), jaw: jawMm === null || jawMm instanceof Refusal ? null : { heightMm: jawMm, label: `top of the jaw, ${wordLength(jawMm, units)}` },
    }, 164)
  }, [heightsMm, thicknessMm, form, units])
  return (
    <figure className="mk-picture">
      <Drawing scene={scene} />
      <figcaption><strong>{bars} bars</strong>: {each} of each of {heightsMm.length === 1 ? 'one height' : `${heightsMm.length} heights`}, {wordLength(thicknessMm, units)} thick, {wordLength(lengthMm, units)} long</figcaption>
    </figure>
  )
}
