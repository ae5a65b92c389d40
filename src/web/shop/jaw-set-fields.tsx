import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LengthField } from '#web/parts/length-field.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import type { JawTexts, ViseWrong } from '#web/shop/vise-texts.ts'
import { useTerms, useUnits } from '#web/units.ts'

type Props = {
  readonly jaw: JawTexts
  readonly at: number
  readonly wrong: ViseWrong
  readonly fitted: boolean
  readonly onChange: (part: Partial<JawTexts>) => void
  readonly onFit: () => void
  /** Null: the only jaws, which stay. */
  readonly onDrop: (() => void) | null
}

/** One set of jaws: heights above the bed, a step, faces, and whether they are fitted now. */
export function JawSetFields({ jaw, at, wrong, fitted, onChange, onFit, onDrop }: Props) {
  const units = useUnits(), { movingJaw } = useTerms(), path = `jawSets[${at}]`
  const nameWrong = wrong[`${path}.name`]
  return (
    <fieldset className="boxed jaws">
      <legend className="name-text">{jaw.name || `jaws ${at + 1}`}{fitted ? ', fitted now' : ''}</legend>
      <p className="small">Heights from the bed, where bars stand, to the top of the jaw.</p>
      <div className="field-list">
        <LengthField label="fixed jaw" more="height" value={jaw.fixed} onChange={(fixed) => onChange({ fixed })} refused={wrong[`${path}.fixedHeightMm`]} />
        <LengthField label={movingJaw} more="height" value={jaw.moving} onChange={(moving) => onChange({ moving })} refused={wrong[`${path}.movingHeightMm`]} ifEmpty="alike" />
        <LengthField label="step" more="height above the bed" value={jaw.step} onChange={(step) => onChange({ step })} refused={wrong[`${path}.stepHeightMm`]} ifEmpty="none" />
        <TextField label="name of these jaws" value={jaw.name} onChange={(name) => onChange({ name })} maxLength={40} error={nameWrong ? sayRefusal(nameWrong, units) : null} />
      </div>
      <Choice label="Faces" value={jaw.face} onChange={(face) => onChange({ face })} options={[{ value: 'smooth', label: 'smooth' }, { value: 'serrated', label: 'serrated' }]} />
      <div className="actions">
        {fitted ? null : <button type="button" className="action" onClick={onFit}>Fit these jaws</button>}
        {onDrop ? <button type="button" className="action" onClick={onDrop}>Drop these jaws</button> : null}
      </div>
    </fieldset>
  )
}
