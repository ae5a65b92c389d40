import { useMemo, useState } from 'react'
import { answerFill } from '#engine/setup/fill/answer-fill.ts'
import type { Fill } from '#engine/setup/fill/fill.ts'
import { attempt } from '#model/attempt.ts'
import { type LengthUnit, readLengthMm, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { type ChosenSetup, chosenSetup } from '#web/setup/beside/chosen-setup.ts'
import { type RackHere, rackHere } from '#web/setup/beside/rack-here.ts'
import { signedLength } from '#web/setup/row/row-lines.tsx'
import { useTerms, useUnits } from '#web/units.ts'

/** mm. As near as this serves where nobody says otherwise. Common practice, no source. */
const commonToleranceMm = 0.05
/** Fills asked for, and shown: bars of one name and size may stand in for each other. */
const mostAsked = 400, mostShown = 8

type Texts = { readonly gap: string; readonly tolerance: string }
type Size = { readonly id: string; readonly sizeMm: number }

/** Which sizes of the rack fill a gap, fewest pieces first. */
export function FillScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms(), rack = useMemo(() => rackHere(shop, units), [shop, units])
  const chosen = useMemo(() => chosenSetup(shop, units, localStorage), [shop, units])
  const [texts, setTexts] = useState<Texts>({ gap: '', tolerance: '' })
  const sizes = useMemo(() => sizesOf(rack, chosen?.choice?.bars ?? []), [rack, chosen])
  const fill = useMemo(() => (texts.gap.trim() === '' ? null : attempt(() => fillAnswered(texts, sizes, units.length))), [texts, sizes, units.length])
  const gaps = gapsOf(chosen, terms.movingJaw), takeGap = (mm: number) => setTexts({ ...texts, gap: wordLength(mm, units) })
  const filled = fill === null || fill instanceof Refusal ? <p className="small">What fills the gap stands here, fewest pieces first.</p> : <Fills answer={fill} rack={rack} />
  return (
    <BesidePage title="Fillers" typedFirst sheet={filled}>
      <p>
        What keeps an inboard bar off the jaw, what keeps a {terms.movingJaw} from cocking on a part that is off the middle, what to set between two bars.{' '}
        Heights and thicknesses of all bars count, except those of the setup itself.
      </p>
      <div className="field-list">
        <LengthField label="gap to fill" value={texts.gap} onChange={(gap) => setTexts({ ...texts, gap })} />
        <LengthField label="within" value={texts.tolerance} onChange={(tolerance) => setTexts({ ...texts, tolerance })} ifEmpty={wordLength(commonToleranceMm, units)} />
      </div>
      {fill instanceof Refusal ? <p className="beside-warn" role="alert">{sayRefusal(fill, units)}</p> : null}
      {gaps.length === 0 ? null : (
        <section className="beside-answer">
          <h3>Gaps of the setup on the screen</h3>
          <div className="actions">
            {gaps.map(({ what, mm }) => <button key={what} type="button" className="action" onClick={() => takeGap(mm)}>{what}: {wordLength(mm, units)}</button>)}
          </div>
        </section>
      )}
      <p className="small">A filler is no {terms.gauge}: a bar that carries work elsewhere today stays there, and {terms.gauge} blocks are never fillers.</p>
    </BesidePage>
  )
}

/** The ways to fill it, as the answer has them. */
function Fills({ answer: { fills, sum }, rack: { labelOf, slotOf } }: { readonly answer: ReturnType<typeof answerFill>; readonly rack: RackHere }) {
  const units = useUnits(), sayError = (errorMm: number) => (Math.abs(errorMm) < 5e-7 ? 'as wished' : `${signedLength(errorMm, units)} ${units.length}`)
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      {fills.length === 0 ? <p className="beside-warn">Nothing in the rack fills it within that: allow more, or make a filler.</p> : null}
      <ol className="beside-points" data-counted="">
        {distinct(fills, labelOf).map(({ ids, sizesMm, totalMm, errorMm }) => (
          <li key={ids.join() + sizesMm.join()}>
            <strong>{ids.map((id, k) => `${wordLength(sizesMm[k]!, units)} of ${labelOf(id)}`).join(' + ')}</strong>
            {wordLength(totalMm, units)} in all, {sayError(errorMm)}; slot {slotOf(ids)}
          </li>
        ))}
      </ol>
      <ShowSum sums={sum} />
    </section>
  )
}

/** Heights and thicknesses of all bars but those taken. */
function sizesOf({ bars }: RackHere, taken: readonly string[]): readonly Size[] {
  return bars.filter(({ id }) => !taken.includes(id)).flatMap(({ id, heightMm, thicknessMm }) => [{ id, sizeMm: heightMm }, { id, sizeMm: thicknessMm }])
}

/** @throws Refusal of `readLengthMm` and of `answerFill` */
function fillAnswered({ gap, tolerance }: Texts, sizes: readonly Size[], unit: LengthUnit) {
  const targetMm = readLengthMm(gap, unit, 'targetMm'), toleranceMm = tolerance.trim() === '' ? commonToleranceMm : readLengthMm(tolerance, unit, 'toleranceMm')
  return answerFill({ targetMm, toleranceMm, sizes, most: mostAsked })
}

/** Of fills that read alike only the first. */
function distinct(fills: readonly Fill[], labelOf: (id: string) => string): readonly Fill[] {
  const first = new Map<string, Fill>()
  for (const fill of fills) {
    const key = fill.ids.map((id, k) => `${fill.sizesMm[k]!.toFixed(3)} ${labelOf(id)}`).toSorted().join('+')
    if (!first.has(key)) first.set(key, fill)
  }
  return [...first.values()].slice(0, mostShown)
}

/** mm. Between a bar and a jaw less is no gap. */
const leastMm = 0.01

/** Gaps that the setup on the screen leaves open. */
function gapsOf(chosen: ChosenSetup | null, movingJaw: string): readonly { readonly what: string; readonly mm: number }[] {
  const part = chosen?.view.answered?.question.part, choice = chosen?.choice
  if (!chosen || !part || !choice || part.betweenJawsMm === null) return []
  const acrossOf = (id: string | undefined): number => {
    const bar = chosen.bench.bars.get(id ?? '')
    return bar === undefined ? 0 : choice.stand === 'lying flat' ? bar.heightMm : bar.thicknessMm
  }
  const [first, second] = choice.places, endMm = second && part.betweenJawsMm - second.yMm - acrossOf(choice.bars[1])
  return [
    { what: 'beside the part, so that the jaw stays straight', mm: part.betweenJawsMm },
    ...(first && first.yMm > leastMm ? [{ what: 'fixed jaw to bar', mm: first.yMm }] : []),
    ...(first && second ? [{ what: 'between the bars', mm: second.yMm - first.yMm - acrossOf(choice.bars[0]) }] : []),
    ...(endMm !== undefined && endMm > leastMm ? [{ what: `bar to ${movingJaw}`, mm: endMm }] : []),
  ]
}
