import { useMemo, useState } from 'react'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { answerBlock } from '#engine/setup/block/answer-block.ts'
import type { OrderName } from '#engine/setup/block/orders.ts'
import { readLengthMm, wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { asked } from '#web/setup/beside/asked.ts'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { chosenSetup } from '#web/setup/beside/chosen-setup.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { BlockSteps } from '#web/setup/block/block-steps.tsx'
import { useTerms, useUnits } from '#web/units.ts'

const sizes = [['length', 'lengthMm'], ['width', 'widthMm'], ['height', 'heightMm']] as const
type Texts = { readonly [size in (typeof sizes)[number][0]]: string }
const empty: Texts = { length: '', width: '', height: '' }

/** All six sides of a block, face after face, with one pair for the long ones where one does. */
export function BlockScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms(), pairs = useMemo(() => rackHere(shop, units).pairs.filter(({ bars }) => bars.every(({ trust }) => trust !== 'drill bar')), [shop, units]), vises = shop.vises.filter(({ retired }) => !retired)
  const [viseId, setViseId] = useState(() => chosenSetup(shop, units, localStorage)?.bench.vise.id ?? ''), vise = useMemo(() => shop.vises.find(({ id }) => id === viseId), [shop.vises, viseId])
  const [raw, setRaw] = useState(empty), [finish, setFinish] = useState(empty), [rod, setRod] = useState(''), [name, setName] = useState<OrderName>('one face stays')
  const block = useMemo(() => (vise === undefined || Object.values({ ...raw, f: finish.length, g: finish.width, h: finish.height }).some((text) => text.trim() === '') ? null : asked(() => {
    const of = (texts: Texts, path: string) => Object.fromEntries(sizes.map(([key, mm]) => [mm, readLengthMm(texts[key], units.length, `${path}.${mm}`)]))
    return answerBlock({
      vise: viseFrom(vise), raw: of(raw, 'raw'), finish: of(finish, 'finish'), wishes: { gripMm: 'auto' }, ...(rod.trim() === '' ? {} : { rodMm: readLengthMm(rod, units.length, 'rodMm') }),
      heights: pairs.map(({ id, heightMm, thicknessMm }) => ({ id, heightMm, thicknessMm })),
    })
  })), [raw, finish, rod, vise, pairs, units.length])
  const answer = block && 'answer' in block ? block.answer : null, order = answer?.orders.find((one) => one.order === name)
  const labelOf = (id: string) => { const pair = pairs.find((one) => one.id === id); return pair ? `${pair.label}, slot ${pair.slot}${pair.state}` : id }
  const inBrackets = (id: string) => labelOf(id).replace(/, (slot .*)$/, ' ($1)')
  const fields = (texts: Texts, put: (texts: Texts) => void, more: string) => sizes.map(([key]) => <LengthField key={key} label={key} more={more} value={texts[key]} onChange={(text) => put({ ...texts, [key]: text })} />)
  return (
    <BesidePage title="Six-side block" typedFirst sheet={order && vise ? <BlockSteps order={order} jawMm={viseFrom(vise).jawHeightMm} labelOf={labelOf} /> : <p className="small">The faces stand here one after the other as soon as the raw and the finished block are known.</p>}>
      {order === undefined ? null : (
        <section className="beside-answer" aria-label="Answer" aria-live="polite">
          <h2>{order.one.length > 0 ? `One pair for the long faces: ${labelOf(order.one[0]!)}` : 'No one pair does for all four long faces'}</h2>
          {order.one.length > 1 ? <p>Also: {listOf(order.one.slice(1, 4).map(inBrackets))}.</p> : null}
          <p>{order.changes === 0 ? 'Nothing is changed over all six faces.' : `${order.changes} ${order.changes === 1 ? 'change' : 'changes'} of bars over all six faces.`}</p>
          {order.because.map(({ code, facts }) => <p key={code}>{sayFinding({ code, facts }, units)}</p>)}
        </section>
      )}
      <Choice label="Order" value={name} onChange={setName} options={[{ value: 'one face stays', label: 'one face stays' }, { value: 'roll round', label: 'roll round' }]} />
      <SelectField label={terms.vise} value={viseId} onChange={setViseId} options={vises.map(({ id, name: called }) => ({ value: id, label: called }))} />
      <fieldset className="boxed"><legend>Raw block</legend><div className="field-list">{fields(raw, setRaw, 'raw')}</div></fieldset>
      <fieldset className="boxed"><legend>Finished</legend><div className="field-list">{fields(finish, setFinish, 'finished')}</div></fieldset>
      <div className="field-list"><LengthField label="rod" more="its diameter" value={rod} onChange={setRod} ifEmpty={wordLength(10, units)} /></div>
      {block && 'refusal' in block ? <p className="beside-warn" role="alert">{sayRefusal(block.refusal, units)}</p> : null}
      {answer ? <><ShowSum sums={answer.sum} /><Cautions situations={answer.situations} /></> : null}
    </BesidePage>
  )
}
