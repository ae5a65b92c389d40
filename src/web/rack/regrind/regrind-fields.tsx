import { readNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { RegrindWish } from '#engine/rack/regrind/regrind-of-shop.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { readFields } from '#web/parts/read-fields.ts'
import { useUnits } from '#web/units.ts'

/** What is asked of the grinder, as typed; numbers in µm but for the spark-out. */
export type RegrindTyped = {
  readonly cleanUp: string
  readonly step: string
  readonly faces: '1' | '2'
  readonly datum: 'A' | 'B' | ''
  readonly infeed: string
  readonly fineInfeed: string
  readonly fineTakes: string
  readonly sparkOut: string
}

/** For a small toolroom grinder; common practice, no source. */
export const usualRegrind: RegrindTyped = { cleanUp: '10', step: '', faces: '1', datum: '', infeed: '10', fineInfeed: '2', fineTakes: '20', sparkOut: '3' }

type Numbers = { cleanUp: number; step: number | null; infeed: number; fineInfeed: number; fineTakes: number; sparkOut: number }
export type Wrong = { readonly [name in keyof Numbers]?: Refusal }

/** The wish out of what was typed, or each field that cannot be read. */
export function readWish(typed: RegrindTyped): { readonly wish: Omit<RegrindWish, 'lowUm'> } | { readonly wrong: Wrong } {
  const read = readFields<Numbers>({
    cleanUp: () => readNumber(typed.cleanUp, 'cleanUpUm'), step: () => (typed.step.trim() === '' ? null : above(readNumber(typed.step, 'stepUm'), 'stepUm')),
    infeed: () => above(readNumber(typed.infeed, 'infeedUm'), 'infeedUm'), fineInfeed: () => above(readNumber(typed.fineInfeed, 'infeedUm'), 'infeedUm'),
    fineTakes: () => notBelow(readNumber(typed.fineTakes, 'takesUm'), 'takesUm'), sparkOut: () => whole(readNumber(typed.sparkOut, 'sparkOut')),
  })
  if ('refused' in read) return { wrong: read.refused }
  const { cleanUp, step, infeed, fineInfeed, fineTakes, sparkOut } = read.values
  if (cleanUp < 0) return { wrong: { cleanUp: new Refusal('wish-negative', { field: 'cleanUpUm', given: cleanUp, needed: 0 }) } }
  return { wish: { cleanUpUm: cleanUp, stepUm: step, faces: typed.faces === '2' ? 2 : 1, datumFace: typed.datum === '' ? null : typed.datum, sparkOut, stages: [{ infeedUm: infeed, takesUm: 0 }, { infeedUm: fineInfeed, takesUm: fineTakes }] } }
}

function above(given: number, field: string): number {
  if (given <= 0) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  return given
}

function notBelow(given: number, field: string): number {
  if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  return given
}

const mostSparkOut = 100

function whole(given: number): number {
  if (!Number.isInteger(given) || given < 0 || given > mostSparkOut) throw new Refusal('value-not-allowed', { field: 'sparkOut', given, needed: `a whole number from 0 to ${mostSparkOut}` })
  return given
}

type Props = { readonly typed: RegrindTyped; readonly onChange: (typed: RegrindTyped) => void; readonly wrong: Wrong }

export function RegrindFields({ typed, onChange, wrong }: Props) {
  const units = useUnits(), field = (name: keyof Numbers & keyof RegrindTyped, label: string, ifEmpty?: string) => (
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
