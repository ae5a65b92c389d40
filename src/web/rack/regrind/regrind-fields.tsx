import type { Refusal } from '#model/refusal.ts'
import { regrindReaders, type RegrindNumbers, type RegrindTyped, wishOf } from '#engine/rack/regrind/regrind-typed.ts'
import type { RegrindWish } from '#engine/rack/regrind/regrind-of-shop.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { useUnits } from '#web/units.ts'

export type Wrong = { readonly [name in keyof RegrindNumbers]?: Refusal }

/** The wish out of what was typed, or each field that cannot be read. */
export function readWish(typed: RegrindTyped): { readonly wish: Omit<RegrindWish, 'lowUm'> } | { readonly wrong: Wrong } {
  const { cleanUp, step, infeed, fineInfeed, fineTakes, sparkOut } = regrindReaders
  const read = readFields<RegrindNumbers>({
    cleanUp: () => cleanUp(typed), step: () => step(typed), infeed: () => infeed(typed), fineInfeed: () => fineInfeed(typed), fineTakes: () => fineTakes(typed), sparkOut: () => sparkOut(typed),
  })
  return 'refused' in read ? { wrong: read.refused } : { wish: wishOf(read.values, typed) }
}

type Props = { readonly typed: RegrindTyped; readonly onChange: (typed: RegrindTyped) => void; readonly wrong: Wrong }

export function RegrindFields({ typed, onChange, wrong }: Props) {
  const units = useUnits(), field = (name: keyof RegrindNumbers, label: string, ifEmpty?: string) => (
    <NumberField label={label} value={typed[name]} onChange={(text) => onChange({ ...typed, [name]: text })} error={wrong[name] ? sayRefusal(wrong[name], units) : null} {...(ifEmpty === undefined ? {} : { ifEmpty })} />
  )
  return (
    <section className="sign" aria-label="How it is ground">
      <Choice label="Ground" value={typed.faces} onChange={(faces) => onChange({ ...typed, faces })} options={[{ value: '1', label: 'one face' }, { value: '2', label: 'both faces' }]} />
      {typed.faces === '1' ? <Choice label="On the chuck, taken as true" value={typed.datum} onChange={(datum) => onChange({ ...typed, datum })} options={[{ value: 'A', label: 'face A' }, { value: 'B', label: 'face B' }, { value: '', label: 'not said' }]} /> : null}
      <div className="field-list">
        {field('cleanUp', 'µm off each face, at least')}
        {field('step', 'µm: down to a multiple', 'no')}
      </div>
      <details className="sum">
        <summary>Infeeds</summary>
        <div className="field-list">
          {field('infeed', 'µm a pass, rough')}{field('fineInfeed', 'µm a pass, fine')}{field('fineTakes', 'µm left for fine')}{field('sparkOut', 'passes of spark-out')}
        </div>
        <p className="small">What the machine’s and the wheel’s instructions say goes first.</p>
      </details>
    </section>
  )
}
