import type { ReactNode } from 'react'
import type { DrillPlace } from '#engine/setup/hold/drill-place.ts'
import { wordLength } from '#model/length.ts'
import { drillFactors } from '#reference/cutting/drill-factors.ts'
import { wordingFor } from '#words/wording.ts'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { commonWear, type HoldTyped, points } from '#web/setup/predict/hold-case.ts'

type Props = {
  readonly typed: HoldTyped
  readonly take: (typed: HoldTyped) => void
  readonly groups: readonly { readonly group: string; readonly kc11MPa: number }[]
  readonly drilled: DrillPlace
}

/** What the person knows of clamp, cutter, drill and part; the sizes of the setup are taken from the form. */
export function HoldFields({ typed, take, groups, drilled }: Props) {
  const { units } = useDesk(), w = wordingFor(units), offered = drillFactors.filter(({ kd }) => typed.kd !== String(kd))
  const field = (name: Exclude<keyof HoldTyped, 'point'>, label: string, ifEmpty?: string) => <NumberField label={label} value={typed[name]} {...(ifEmpty === undefined ? {} : { ifEmpty })} onChange={(text) => take({ ...typed, [name]: text })} />
  return (
    <>
      <Group name="Clamp">{field('torqueNm', 'N m at the handle')}{field('lead', `lead of the screw, ${units.length}`)}{field('forceN', 'or N, measured')}</Group>
      <Group name="Milling">
        {field('diameter', `cutter ⌀, ${units.length}`)}{field('teeth', 'teeth')}{field('feed', `feed a tooth, ${units.length}`)}{field('width', `width of cut, ${units.length}`)}{field('helix', 'helix, degrees', '0')}
        <SelectField label="steel, group of VDI 3323" value={typed.group} options={groups.map(({ group, kc11MPa }) => ({ value: group, label: `${group}: ${kc11MPa} N/mm²` }))} onChange={(group) => take({ ...typed, group })} />
      </Group>
      <Group name="Drilling">
        {field('drill', `drill ⌀, ${units.length}`, drilled.largestMm === null ? undefined : wordLength(drilled.largestMm, units))}{field('drillFeed', `feed a turn, ${units.length}`)}{field('kd', 'material factor Kd')}{field('wear', 'wear, sharp is 1', w.number(commonWear))}
      </Group>
      {offered.map(({ what, kd }) => <button key={what} type="button" className="press" onClick={() => take({ ...typed, kd: String(kd) })}>Kd {w.number(kd)}: {what}, from memory of a handbook</button>)}
      <Choice label="Point of the drill" value={typed.point} options={points.map((point) => ({ value: point, label: point }))} onChange={(point) => take({ ...typed, point })} />
      <Group name="Part">{field('yieldMPa', 'yield of the part, N/mm²')}</Group>
    </>
  )
}

function Group({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <fieldset className="comes-out-group">
      <legend>{name}</legend>
      <div className="comes-out-typed">{children}</div>
    </fieldset>
  )
}
