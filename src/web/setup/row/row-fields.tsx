import { wordLength, wordNumber } from '#model/length.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { calledMm } from '#words/say-bar.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import type { RowAtHand } from '#web/setup/row/use-row.ts'
import { useTerms, useUnits } from '#web/units.ts'

type Props = { readonly row: RowAtHand }

/** Which vises are in the row, and how their tops are to agree. */
export function ViseFields({ row: { all, typed: { inRow, oneZ }, put } }: Props) {
  const { vise } = useTerms()
  return (
    <>
      <Toggles label={`${capital(vise)}s of the row`} options={all.map(({ id, name }) => ({ value: id, label: name }))} chosen={inRow} onChange={(ids) => put({ inRow: ids })} />
      <Choice label="Z" value={oneZ ? 'one' : 'each'} onChange={(value) => put({ oneZ: value === 'one' })} options={[{ value: 'one', label: 'one Z for all' }, { value: 'each', label: 'a Z each' }]} />
      <p className="small">
        {oneZ
          ? `One program zero for all: the pairs are dealt so that the tops lie as close together as they can. The Z of a ${vise} is what its top still differs from the first.`
          : `Each ${vise} takes the Z that stands beside it: beds may differ, and the pairs are dealt by how alike their two bars are.`}
      </p>
    </>
  )
}

/** How high the beds lie against each other, as typed or as it is in the record. */
export function BedFields({ row }: Props) {
  const { vise, indicator } = useTerms()
  return (
    <fieldset className="boxed"><legend>Heights of the beds, µm</legend>
      <div className="field-list">{row.vises.map((of) => <BedField key={of.id} row={row} vise={of} />)}</div>
      <p className="small">Against each other, with one {indicator} from one zero, + is higher. What stands faintly is in the {vise}’s record.</p>
    </fieldset>
  )
}

function BedField({ row: { typed: { texts: { beds } }, type, asked }, vise: { id, name, measured } }: Props & { readonly vise: ViseRecord }) {
  const units = useUnits(), kept = measured?.rowBed?.um, refused = asked.beds.refused[id]
  return (
    <NumberField
      label={name} more="bed, µm" value={beds[id] ?? ''} onChange={(text) => type({ beds: { ...beds, [id]: text } })}
      error={refused ? sayRefusal(refused, units) : null} {...(kept === undefined ? {} : { ifEmpty: wordNumber(kept, units.decimalMark, null, 1) })}
    />
  )
}

/** The pairs that are dealt: of one height, those that were not left out. */
export function PairFields({ row: { vises, offered, notMeasured, taken, pairs, put } }: Props) {
  const units = useUnits()
  if (taken === null) {
    return <p className="beside-warn">No height has {Math.max(2, vises.length)} measured pairs. {notMeasured > 0 ? `${notMeasured} pairs were never measured here: check them first.` : ''}</p>
  }
  const heights = offered.map(({ meanMm, pairs: of }) => ({ value: String(meanMm), label: `${wordLength(calledMm(meanMm, units), units)} (${of.length})` }))
  const named = taken.pairs.map(({ id, label, marks, heightMm }) => ({ value: id, label: `${label}${marks}: ${wordLength(heightMm, units)}` }))
  const takeOnly = (ids: readonly string[]) => put({ left: taken.pairs.map(({ id }) => id).filter((id) => !ids.includes(id)) })
  return (
    <>
      <Choice label="Pairs of" value={String(taken.meanMm)} onChange={(classAt) => put({ classAt, left: [] })} options={heights} />
      <Toggles label="Pairs to choose from" options={named} chosen={pairs.map(({ id }) => id)} onChange={takeOnly} />
    </>
  )
}

/** A bar or part that lies over two vises of the row, and how it slopes. */
export function AcrossTwo({ row: { vises, typed: { longFrom, texts }, put, type, asked } }: Props) {
  const { vise } = useTerms()
  const neighbours = vises.slice(0, -1).map(({ name }, k) => ({ value: String(k), label: `${name} and ${vises[k + 1]!.name}` }))
  return (
    <section className="beside-answer">
      <h3>A bar or part across two {vise}s</h3>
      {neighbours.length > 1 ? <Choice label="Over" value={longFrom} onChange={(value) => put({ longFrom: value })} options={neighbours} /> : null}
      <div className="field-list">
        <LengthField label="apart" more="middles of the two" value={texts.apart} onChange={(apart) => type({ apart })} />
        <LengthField label="its length" value={texts.length} onChange={(length) => type({ length })} />
      </div>
      {asked.answer?.longBar ? <EndToEnd um={asked.answer.longBar.endToEndUm} /> : null}
    </section>
  )
}

function EndToEnd({ um }: { readonly um: number }) {
  const units = useUnits(), said = wordLength(Math.abs(um) / 1000, units, units.length === 'mm' ? { decimals: 3 } : {})
  return <output><strong>{said} {units.length} end to end</strong>: it {um < 0 ? 'falls' : 'rises'} by what the two beds differ. Shim, or indicate it and set it level.</output>
}
