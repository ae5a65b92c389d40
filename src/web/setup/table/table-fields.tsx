import { wordLength } from '#model/length.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { emptyHole, type HoleTexts, type StrapTexts, type TableTexts } from '#web/setup/table/table-asked.ts'
import { useUnits } from '#web/units.ts'

type Put = (part: Partial<TableTexts>) => void

export function PartFields({ texts, put }: { readonly texts: TableTexts; readonly put: Put }) {
  return (
    <fieldset className="boxed"><legend>Part</legend>
      <div className="field-list">
        <LengthField label="across" more="of the part" value={texts.across} onChange={(across) => put({ across })} />
        <LengthField label="along" more="of the part" value={texts.along} onChange={(along) => put({ along })} />
        <LengthField label="height" more="of the part" value={texts.height} onChange={(height) => put({ height })} />
      </div>
    </fieldset>
  )
}

/** How the bars lie, and their sizes; `putBars`: one of these typed. */
export function BarFields({ texts, put, putBars }: { readonly texts: TableTexts; readonly put: Put; readonly putBars: Put }) {
  const units = useUnits(), ways = [{ value: 'along', label: 'along the edges' }, { value: 'across', label: 'across, at the ends' }]
  return (
    <fieldset className="boxed"><legend>Bars</legend>
      <Choice label="They lie" value={texts.turned ? 'across' : 'along'} onChange={(value) => put({ turned: value === 'across' })} options={ways} />
      <div className="field-list">
        <LengthField label="thickness" more="of a bar" value={texts.thickness} onChange={(thickness) => putBars({ thickness })} />
        <LengthField label="bar height" value={texts.barHeight} onChange={(barHeight) => putBars({ barHeight })} />
        <LengthField label="bar length" value={texts.length} onChange={(length) => putBars({ length })} ifEmpty="as the part" />
        <LengthField label="in from the edge" value={texts.inboard} onChange={(inboard) => put({ inboard })} ifEmpty="0" />
        <LengthField label="clear of holes" more="at least" value={texts.air} onChange={(air) => put({ air })} ifEmpty={wordLength(0.5, units)} />
      </div>
    </fieldset>
  )
}

/** One of a list changed, the rest as it was. */
const withOne = <One extends object>(list: readonly One[], at: number, part: Partial<One>): readonly One[] => list.map((one, k) => (k === at ? { ...one, ...part } : one))

/** Holes by their diameter and their place. */
export function HoleFields({ holes, onChange }: { readonly holes: readonly HoleTexts[]; readonly onChange: (holes: readonly HoleTexts[]) => void }) {
  return (
    <fieldset className="boxed"><legend>Holes</legend>
      {holes.map((hole, k) => {
        const put = (part: Partial<HoleTexts>) => onChange(withOne(holes, k, part)), more = `of hole ${k + 1}`
        return (
          <div key={k} className="beside-answer">
            <div className="field-list">
              <LengthField label="⌀" more={more} value={hole.diameter} onChange={(diameter) => put({ diameter })} />
              <LengthField label="from near edge" more={more} value={hole.across} onChange={(across) => put({ across })} />
              <LengthField label="from left end" more={more} value={hole.along} onChange={(along) => put({ along })} />
              {hole.through ? null : <LengthField label="depth" more={more} value={hole.depth} onChange={(depth) => put({ depth })} />}
            </div>
            <div className="actions">
              <Toggles label={`Hole ${k + 1}`} options={[{ value: 'through', label: 'through' }]} chosen={hole.through ? ['through'] : []} onChange={(chosen) => put({ through: chosen.length > 0 })} />
              {holes.length > 1 ? <button type="button" className="press" onClick={() => onChange(holes.toSpliced(k, 1))}>Take hole {k + 1} away</button> : null}
            </div>
          </div>
        )
      })}
      <div><button type="button" className="action" onClick={() => onChange([...holes, emptyHole])}>Another hole</button></div>
    </fieldset>
  )
}

/** Where the straps press; left empty, above the middle of a bar. */
export function StrapFields({ straps, onChange }: { readonly straps: readonly StrapTexts[]; readonly onChange: (straps: readonly StrapTexts[]) => void }) {
  return (
    <fieldset className="boxed"><legend>Straps</legend>
      {straps.map((strap, k) => (
        <div key={k} className="field-list">
          <LengthField label={`${k + 1}, from near edge`} more="of the strap" value={strap.across} onChange={(across) => onChange(withOne(straps, k, { across }))} ifEmpty="above a bar" />
          <LengthField label={`${k + 1}, from left end`} more="of the strap" value={strap.along} onChange={(along) => onChange(withOne(straps, k, { along }))} ifEmpty="middle" />
        </div>
      ))}
      <div className="actions">
        <button type="button" className="action" disabled={straps.length >= 8} onClick={() => onChange([...straps, { along: '', across: '' }])}>Another strap</button>
        {straps.length > 2 ? <button type="button" className="action" onClick={() => onChange(straps.slice(0, -1))}>One strap less</button> : null}
      </div>
    </fieldset>
  )
}
