import { useMemo, useState } from 'react'
import { sides, type Travel } from '#engine/setup/chuck/chuck.ts'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { notNamed, SheetFields, type SheetNamed } from '#web/setup/beside/sheet-named.tsx'
import { ChuckAnswer, ChuckDrawing } from '#web/setup/chuck/chuck-answer.tsx'
import { chuckAnswered, type ChuckTexts, kindsOf, sayKind, takenOf } from '#web/setup/chuck/chuck-asked.ts'
import { ChuckPrint } from '#web/setup/chuck/chuck-print.tsx'
import type { ChuckTold } from '#web/setup/chuck/chuck-sheet-data.ts'
import { useUnits } from '#web/units.ts'

const mostShown = 12

/** A part on the magnetic chuck, blocked in by bars that lie flat. */
export function ChuckScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), rack = useMemo(() => rackHere(shop, units), [shop, units])
  const [texts, setTexts] = useState<ChuckTexts>({ height: '', across: '', along: '' }), [travel, setTravel] = useState<Travel>('along')
  const [chosen, setChosen] = useState<readonly string[] | null>(null), [named, setNamed] = useState<SheetNamed>(notNamed)
  const chuck = useMemo(() => attempt(() => chuckAnswered(texts, travel, rack.bars, units.length)), [texts, travel, rack, units.length])
  const kinds = useMemo(() => (chuck instanceof Refusal ? [] : kindsOf(chuck.answer.serve, rack, units)), [chuck, rack, units])
  const on = useMemo(() => takenOf(kinds, chosen), [kinds, chosen])
  const told = useMemo((): ChuckTold | null => (chuck instanceof Refusal ? null : { ...chuck, travel, taken: on.flatMap(({ of }) => of).slice(0, sides.length) }), [chuck, travel, on])
  const isTyped = Object.values(texts).every((text) => text.trim() !== '')
  if (named.printed !== null && told !== null) return <ChuckPrint shop={shop} told={told} rack={rack} named={named} printed={named.printed} onBack={() => setNamed({ ...named, printed: null })} />
  const drawing = told ? <ChuckDrawing told={told} rack={rack} /> : <p className="small">The part and the bars around it are drawn here as soon as its sizes are there.</p>
  const toTake = kinds.slice(0, mostShown).map((kind) => ({ value: kind.key, label: sayKind(kind, rack, units) }))
  return (
    <BesidePage title="On the magnetic chuck" typedFirst sheet={drawing}>
      <p>Bars lie flat around the part, across the poles, lower than the part and at least half its height: they keep it from sliding and tipping.</p>
      <div className="field-list">
        <LengthField label="height" more="of the part" value={texts.height} onChange={(height) => setTexts({ ...texts, height })} />
        <LengthField label="along" more="of the part" value={texts.along} onChange={(along) => setTexts({ ...texts, along })} />
        <LengthField label="across" more="of the part" value={texts.across} onChange={(across) => setTexts({ ...texts, across })} />
      </div>
      <Choice label="The table travels" value={travel} onChange={setTravel} options={[{ value: 'along', label: 'along the part' }, { value: 'across', label: 'across it' }]} />
      {chuck instanceof Refusal && isTyped ? <p className="beside-warn" role="alert">{sayRefusal(chuck, units)}</p> : null}
      {told ? (
        <>
          <ChuckAnswer told={told} rack={rack} />
          {kinds.length === 0 ? null : <Toggles label="Bars that serve" options={toTake} chosen={on.map(({ key }) => key)} onChange={setChosen} />}
          <p className="small">Demagnetise them before they go back to the rack: chips stick to magnetised bars.</p>
          <SheetFields named={named} onChange={setNamed} isReady={told.taken.length > 0} />
          <ShowSum sums={told.answer.sum} />
        </>
      ) : null}
      <Cautions situations={['magnetic chuck']} />
    </BesidePage>
  )
}
