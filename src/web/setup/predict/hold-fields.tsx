import type { ReactNode } from 'react'
import type { DrillPlace } from '#engine/setup/hold/drill-place.ts'
import { wordLength } from '#model/length.ts'
import type { Refusal } from '#model/refusal.ts'
import { drillFactors } from '#reference/cutting/drill-factors.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { wordingFor } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { commonWear, type HoldNumber, holdUnit, type HoldUnits, type StillToGive } from '#web/setup/predict/hold-case.ts'
import { points } from '#web/setup/state/at-hand.ts'
import type { HoldField, HoldTyped } from '#web/setup/state/hold-typed.ts'

const names: { readonly [field in HoldNumber]: string } = {
  torqueNm: 'N m at the handle', lead: 'lead of the screw', forceN: 'or N, measured', diameter: 'cutter ⌀', teeth: 'teeth', feed: 'feed a tooth', width: 'width of cut', helix: 'helix, degrees',
  drill: 'drill ⌀', drillFeed: 'feed a turn', kd: 'material factor Kd', wear: 'wear, sharp is 1', yieldMPa: 'yield of the part, N/mm²',
}
const lackNames: { readonly [lack in StillToGive['clamp'][number]]: string } = {
  ...names, group: 'the steel', betweenJaws: 'between jaws', alongJaws: 'along the jaws',
  depth: 'what comes off the top, or a cut over a jaw', clamp: 'the torque with the lead of the screw, or a measured force',
}

type Props = {
  readonly typed: HoldTyped
  readonly units: HoldUnits
  readonly lacks: StillToGive
  readonly groups: readonly { readonly group: string; readonly what: string; readonly kc11MPa: number }[]
  readonly drilled: DrillPlace
  readonly wrong: (field: HoldNumber) => Refusal | null
  readonly take: (field: HoldField, text: string) => void
  readonly enter: (field: HoldNumber | null) => void
}

/** What the person knows of clamp, cutter, drill and part; the sizes of the setup are taken from the form. */
export function HoldFields({ typed, units: typedIn, lacks, groups, drilled, wrong, take, enter }: Props) {
  const { units } = useDesk(), w = wordingFor(units), offered = drillFactors.filter(({ kd }) => typed.kd !== String(kd))
  const group = groups.find((one) => one.group === typed.group)
  const field = (name: HoldNumber, ifEmpty?: string) => {
    const unit = holdUnit(name, typedIn), label = unit === null ? names[name] : `${names[name]}, ${unit}`, refusal = wrong(name)
    return (
      <div onFocus={() => enter(name)} onBlur={() => enter(null)}>
        <NumberField label={label} value={typed[name]} {...(ifEmpty === undefined ? {} : { ifEmpty })} error={refusal && sayRefusal(refusal, units)} onChange={(text) => take(name, text)} />
      </div>
    )
  }
  const largest = drilled.largestMm === null ? undefined : wordLength(drilled.largestMm, { ...units, length: typedIn.form })
  return (
    <>
      <Group name="Clamp" lacks={lacks.clamp}>{field('torqueNm')}{field('lead')}{field('forceN')}</Group>
      <Group name="Milling" lacks={lacks.milling}>
        {field('diameter')}{field('teeth')}{field('feed')}{field('width')}{field('helix', '0')}
        <div className="comes-out-wide">
          <SelectField
            label="steel, group of VDI 3323" value={typed.group} note={group && `${group.what}: ${group.kc11MPa} N/mm²`}
            options={[{ value: '', label: 'not said' }, ...groups.map((one) => ({ value: one.group, label: `${one.group}: ${one.what}` }))]} onChange={(text) => take('group', text)}
          />
        </div>
      </Group>
      <Group name="Drilling" lacks={lacks.drilling}>
        {field('drill', largest)}{field('drillFeed')}{field('kd')}{field('wear', w.number(commonWear))}
      </Group>
      {offered.map(({ what, kd }) => <button key={what} type="button" className="press" onClick={() => take('kd', String(kd))}>Kd {w.number(kd)}: {what}, from memory of a handbook</button>)}
      <Choice label="Point of the drill" value={typed.point} options={points.map((point) => ({ value: point, label: point }))} onChange={(point) => take('point', point)} />
      <Group name="Part" lacks={[]}>{field('yieldMPa')}</Group>
    </>
  )
}

function Group({ name, lacks, children }: { readonly name: string; readonly lacks: StillToGive['clamp']; readonly children: ReactNode }) {
  return (
    <fieldset className="comes-out-group">
      <legend>{name}</legend>
      <div className="comes-out-typed">{children}</div>
      {lacks.length === 0 ? null : <p className="setup-lines setup-open">Still to be given: {lacks.map((lack) => lackNames[lack]).join('; ')}.</p>}
    </fieldset>
  )
}
