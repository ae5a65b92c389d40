import { useMemo, useState } from 'react'
import { viseFrom } from '#engine/rack/vise-from.ts'
import type { BlockAnswer } from '#engine/setup/block/answer-block.ts'
import type { OrderName } from '#engine/setup/block/orders.ts'
import { attempt } from '#model/attempt.ts'
import { wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { chosenSetup } from '#web/setup/beside/chosen-setup.ts'
import { rackHere, type RackPair } from '#web/setup/beside/rack-here.ts'
import { blockAnswered, blockSizes, type BlockTexts, type BlockTyped, isGiven, noSizes } from '#web/setup/block/block-asked.ts'
import { BlockSteps } from '#web/setup/block/block-steps.tsx'
import { useTerms, useUnits } from '#web/units.ts'

/** All six sides of a block, face after face, with one pair for the long ones where one does. */
export function BlockScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms(), pairs = useMemo(() => rackHere(shop, units).pairs.filter(isForWork), [shop, units])
  const [viseId, setViseId] = useState(() => chosenSetup(shop, units, localStorage)?.bench.vise.id ?? ''), [name, setName] = useState<OrderName>('one face stays')
  const [typed, setTyped] = useState<BlockTyped>({ raw: noSizes, finish: noSizes, rod: '' })
  const vises = shop.vises.filter(({ retired }) => !retired), vise = useMemo(() => shop.vises.find(({ id }) => id === viseId), [shop.vises, viseId])
  const block = useMemo(() => (vise && isGiven(typed) ? attempt(() => blockAnswered(typed, vise, pairs, units.length)) : null), [typed, vise, pairs, units.length])
  const answer = block instanceof Refusal ? null : block, order = answer?.orders.find((one) => one.order === name)
  const pairOf = (id: string) => pairs.find((one) => one.id === id)!
  const steps = order && vise ? <BlockSteps order={order} jawMm={viseFrom(vise).jawHeightMm} labelOf={(id) => labelOf(pairOf(id))} />
    : <p className="small">The faces stand here one after the other as soon as the raw and the finished block are known.</p>
  return (
    <BesidePage title="Six-side block" typedFirst sheet={steps}>
      {order ? <OrderAnswer order={order} pairOf={pairOf} /> : null}
      <Choice label="Order" value={name} onChange={setName} options={[{ value: 'one face stays', label: 'one face stays' }, { value: 'roll round', label: 'roll round' }]} />
      <SelectField label={terms.vise} value={viseId} onChange={setViseId} options={vises.map(({ id, name: called }) => ({ value: id, label: called }))} />
      <SizeFields legend="Raw block" more="raw" texts={typed.raw} onChange={(raw) => setTyped({ ...typed, raw })} />
      <SizeFields legend="Finished" more="finished" texts={typed.finish} onChange={(finish) => setTyped({ ...typed, finish })} />
      <div className="field-list"><LengthField label="rod" more="its diameter" value={typed.rod} onChange={(rod) => setTyped({ ...typed, rod })} ifEmpty={wordLength(10, units)} /></div>
      {block instanceof Refusal ? <p className="beside-warn" role="alert">{sayRefusal(block, units)}</p> : null}
      {answer ? <><ShowSum sums={answer.sum} /><Cautions situations={answer.situations} /></> : null}
    </BesidePage>
  )
}

const isForWork = ({ bars }: RackPair): boolean => bars.every(({ trust }) => trust !== 'drill bar')
const labelOf = ({ label, slot, state }: RackPair): string => `${label}, slot ${slot}${state}`
const inBrackets = ({ label, slot, state }: RackPair): string => `${label} (slot ${slot}${state})`

/** Which pairs carry the long faces, and how often bars are changed. */
function OrderAnswer({ order, pairOf }: { readonly order: BlockAnswer['orders'][number]; readonly pairOf: (id: string) => RackPair }) {
  const units = useUnits(), { one: [first, ...others], changes, because } = order
  return (
    <section className="beside-answer" aria-label="Answer" aria-live="polite">
      <h2>{first === undefined ? 'No one pair does for all four long faces' : `One pair for the long faces: ${labelOf(pairOf(first))}`}</h2>
      {others.length > 0 ? <p>Also: {listOf(others.slice(0, 3).map((id) => inBrackets(pairOf(id))))}.</p> : null}
      <p>{changes === 0 ? 'Nothing is changed over all six faces.' : `${changes} ${changes === 1 ? 'change' : 'changes'} of bars over all six faces.`}</p>
      {because.map(({ code, facts }) => <p key={code}>{sayFinding({ code, facts }, units)}</p>)}
    </section>
  )
}

type Sizes = { readonly legend: string; readonly more: string; readonly texts: BlockTexts; readonly onChange: (texts: BlockTexts) => void }

function SizeFields({ legend, more, texts, onChange }: Sizes) {
  return (
    <fieldset className="boxed"><legend>{legend}</legend>
      <div className="field-list">{blockSizes.map((size) => <LengthField key={size} label={size} more={more} value={texts[size]} onChange={(text) => onChange({ ...texts, [size]: text })} />)}</div>
    </fieldset>
  )
}
