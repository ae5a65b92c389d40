import { useMemo, useState } from 'react'
import { wordLength, wordNumber } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { calledMm } from '#words/say-bar.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital, listOf } from '#words/wording.ts'
import { newId, nowIso } from '#web/new-id.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { Link } from '#web/parts/link.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { chosenSetup } from '#web/setup/beside/chosen-setup.ts'
import { rackHere } from '#web/setup/beside/rack-here.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import { keepRow, lockRow } from '#web/setup/row/lock-row.ts'
import { rowAnswered, type RowTexts } from '#web/setup/row/row-asked.ts'
import { type HeightClass, measuredPairs } from '#web/setup/row/row-pairs.ts'
import { RowPrint } from '#web/setup/row/row-print.tsx'
import { linesOf, RowDrawing, serves } from '#web/setup/row/row-lines.tsx'
import { RowList } from '#web/setup/row/row-list.tsx'
import { useTerms, useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

/** A row of vises: which pair in which, so that all tops are as equal as they can be, and what each vise has to add to its Z. */
export function RowScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms(), all = useMemo(() => shop.vises.filter(({ retired }) => !retired), [shop.vises])
  const chosen = useMemo(() => chosenSetup(shop, units, localStorage), [shop, units]), { classes, notMeasured } = useMemo(() => measuredPairs(shop, rackHere(shop, units).pairs), [shop, units])
  const [inRow, setInRow] = useState<readonly string[]>(() => all.map(({ id }) => id)), [classAt, setClassAt] = useState<string | null>(null), [left, setLeft] = useState<readonly string[]>([])
  const [oneZ, setOneZ] = useState(true), [longFrom, setLongFrom] = useState('0'), [texts, setTexts] = useState<RowTexts>({ beds: {}, apart: '', length: '' }), [printing, setPrinting] = useState<string | null>(null)
  const vises = useMemo(() => all.filter(({ id }) => inRow.includes(id)), [all, inRow])
  const offered = useMemo(() => classes.filter(({ pairs }) => pairs.length >= Math.max(2, vises.length)), [classes, vises])
  const taken = useMemo(() => takenFrom(offered, classAt, chosen?.choice?.bars ?? []), [offered, classAt, chosen])
  const pairs = useMemo(() => (taken?.pairs ?? []).filter(({ id }) => !left.includes(id)), [taken, left])
  const asked = useMemo(() => rowAnswered({ vises, pairs, oneZ, texts, longFrom: Math.min(Number(longFrom), Math.max(0, vises.length - 2)), unit: units.length }), [vises, pairs, oneZ, texts, longFrom, units.length])
  const lines = useMemo(() => (asked.answer === null || chosen === null ? [] : linesOf({ answer: asked.answer, beds: asked.beds.um, vises, pairs, shop, form: chosen.form, units })), [asked, vises, pairs, shop, chosen, units])
  const title = chosen === null || chosen.form.height.trim() === '' ? null : chosen.state.title || sayPart(chosen.form)
  const unfit = lines.filter(({ comesOut }) => !serves(comesOut)).map(({ vise }) => vise.name)
  const deed = { state: chosen?.state ?? null, places: lines.map(({ vise, pair }) => ({ viseId: vise.id, bars: pair.bars.map(({ id }) => id) })), atIso: nowIso(), newId }
  const lock = () => {
    if (deed.state === null) return
    const decision = lockRow(shop, { ...deed, state: deed.state })
    writeDeed({ edits: decision.edits })
    offerUndo(`${listOf(lines.map(({ vise, label }) => `${label} in ${vise.name}`))}: locked together.`, () => { writeDeed({ edits: decision.undo }) })
  }
  const print = () => {
    if (deed.state === null) return
    const kept = keepRow(shop, { ...deed, state: deed.state })
    writeDeed({ edits: kept.edits })
    setPrinting(kept.setupIds[0] ?? null)
  }
  if (printing !== null && asked.answer !== null) return <RowPrint shop={shop} setupId={printing} lines={lines} answer={asked.answer} oneZ={oneZ} title={title ?? ''} operation={chosen?.state.operation ?? ''} onBack={() => setPrinting(null)} />
  const bedField = (id: string, name: string, kept: number | undefined) => (
    <NumberField
      key={id} label={name} more="bed, µm" value={texts.beds[id] ?? ''} onChange={(text) => setTexts({ ...texts, beds: { ...texts.beds, [id]: text } })}
      error={asked.beds.refused[id] ? sayRefusal(asked.beds.refused[id], units) : null} {...(kept === undefined ? {} : { ifEmpty: wordNumber(kept, units.decimalMark, null, 1) })}
    />
  )
  return (
    <BesidePage title={`Row of ${terms.vise}s`} sheet={lines.length > 0 && asked.answer !== null ? <><RowDrawing lines={lines} /><RowList lines={lines} answer={asked.answer} oneZ={oneZ} /></> : <p className="small">The row stands here once its beds and enough measured pairs are known.</p>}>
      <p>{title === null ? 'No part on Set up yet: only the pairs are matched, and there is no sheet to print.' : <>Same setup in all: <strong className="name-text">{title}</strong>.</>}</p>
      <div className="actions">
        <button type="button" className="action main" disabled={lines.length === 0 || unfit.length > 0} onClick={lock}>Lock pairs and {terms.vise}s</button>
        <button type="button" className="action" disabled={lines.length === 0 || unfit.length > 0 || title === null} onClick={print}>Print row sheet</button>
      </div>
      {unfit.length === 0 ? null : <p className="beside-warn">The setup does not serve in {listOf(unfit)}: leave that {terms.vise} out of the row, or take pairs of another height.</p>}
      {asked.refusal ? <p className="beside-warn" role="alert">{sayRefusal(asked.refusal, units)}</p> : null}
      {asked.beds.missing.length > 0 && vises.length > 0 ? <p className="beside-warn">Bed not measured: {listOf(asked.beds.missing)}. Type {asked.beds.missing.length > 1 ? 'their heights against each other' : 'its height against the others of the row'}, or <Link to={`/shop/vise/${vises.find(({ name }) => asked.beds.missing.includes(name))!.id}/measure`}>measure {asked.beds.missing[0]}</Link>.</p> : null}
      {vises.length === 0 ? <p className="beside-warn">No {terms.vise} is in the row: touch those that run this setup.</p> : null}
      <Toggles label={`${capital(terms.vise)}s of the row`} options={all.map(({ id, name }) => ({ value: id, label: name }))} chosen={inRow} onChange={setInRow} />
      <Choice label="Z" value={oneZ ? 'one' : 'each'} onChange={(value) => setOneZ(value === 'one')} options={[{ value: 'one', label: 'one Z for all' }, { value: 'each', label: 'a Z each' }]} />
      <p className="small">{oneZ ? `One program zero for all: the pairs are dealt so that the tops lie as close together as they can. The Z of a ${terms.vise} is what its top still differs from the first.` : `Each ${terms.vise} takes the Z that stands beside it: beds may differ, and the pairs are dealt by how alike their two bars are.`}</p>
      <fieldset className="boxed"><legend>Heights of the beds, µm</legend>
        <div className="field-list">{vises.map(({ id, name, measured }) => bedField(id, name, measured?.rowBed?.um))}</div>
        <p className="small">Against each other, with one {terms.indicator} from one zero, + is higher. What stands faintly is in the {terms.vise}’s record.</p>
      </fieldset>
      {offered.length === 0 ? <p className="beside-warn">No height has {Math.max(2, vises.length)} measured pairs. {notMeasured > 0 ? `${notMeasured} pairs were never measured here: check them first.` : ''}</p>
        : <Choice label="Pairs of" value={String(taken?.meanMm)} onChange={(value) => { setClassAt(value); setLeft([]) }} options={offered.map((one) => ({ value: String(one.meanMm), label: `${wordLength(calledMm(one.meanMm, units), units)} (${one.pairs.length})` }))} />}
      {taken === null ? null : <Toggles label="Pairs to choose from" options={taken.pairs.map(({ id, label, marks, heightMm }) => ({ value: id, label: `${label}${marks}: ${wordLength(heightMm, units)}` }))} chosen={pairs.map(({ id }) => id)} onChange={(ids) => setLeft(taken.pairs.flatMap(({ id }) => (ids.includes(id) ? [] : [id])))} />}
      <section className="beside-answer">
        <h3>A bar or part across two {terms.vise}s</h3>
        {vises.length > 2 ? <Choice label="Over" value={longFrom} onChange={setLongFrom} options={vises.slice(0, -1).map(({ name }, k) => ({ value: String(k), label: `${name} and ${vises[k + 1]!.name}` }))} /> : null}
        <div className="field-list">
          <LengthField label="apart" more="middles of the two" value={texts.apart} onChange={(apart) => setTexts({ ...texts, apart })} />
          <LengthField label="its length" value={texts.length} onChange={(length) => setTexts({ ...texts, length })} />
        </div>
        {asked.answer?.longBar ? <output><strong>{wordLength(Math.abs(asked.answer.longBar.endToEndUm) / 1000, units, units.length === 'mm' ? { decimals: 3 } : {})} {units.length} end to end</strong>: it {asked.answer.longBar.endToEndUm < 0 ? 'falls' : 'rises'} by what the two beds differ. Shim, or indicate it and set it level.</output> : null}
      </section>
      {asked.answer ? <ShowSum sums={asked.answer.sum} /> : null}
      <Cautions situations={['seating', 'loose bar', 'handle off the vise']} />
    </BesidePage>
  )
}

/** The height chosen, else that of the setup on the screen, else the lowest with enough pairs. */
function takenFrom(offered: readonly HeightClass[], classAt: string | null, onScreen: readonly string[]): HeightClass | null {
  const isOnScreen = ({ pairs }: HeightClass) => pairs.some(({ bars }) => bars.some(({ id }) => onScreen.includes(id)))
  return offered.find(({ meanMm }) => String(meanMm) === classAt) ?? offered.find(isOnScreen) ?? offered[0] ?? null
}
