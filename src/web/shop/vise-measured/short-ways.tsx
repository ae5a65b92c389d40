import { useState } from 'react'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import type { ViseMeasured } from '#model/vise-measured.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { nowIso } from '#web/new-id.ts'
import { emptyMeasured, measuredBy, type MeasuredTexts, type ShortWay } from '#web/shop/vise-measured/measured-texts.ts'
import { useTerms, useUnits } from '#web/units.ts'

type Props = { readonly onKeep: (found: Partial<ViseMeasured>, said: string) => void }

/** One thing of the vise at a time: how, and why it is worth a minute. */
export function ShortWays({ onKeep }: Props) {
  const units = useUnits(), { movingJaw, vise: word, indicator } = useTerms(), [texts, setTexts] = useState<MeasuredTexts>(emptyMeasured), [wrong, setWrong] = useState<{ readonly way: ShortWay; readonly refusal: Refusal } | null>(null)
  const put = (part: Partial<MeasuredTexts>) => setTexts({ ...texts, ...part })
  const keep = (way: ShortWay, said: string) => {
    const measured = attempt(() => measuredBy(way, texts, units, nowIso()))
    if (measured instanceof Refusal) return setWrong({ way, refusal: measured })
    onKeep(measured, said)
    setWrong(null)
  }
  const end = (way: ShortWay, said: string) => (
    <>
      {wrong?.way === way ? <p className="beside-warn" role="alert">{sayRefusal(wrong.refusal, units)}</p> : null}
      <div><button type="button" className="action" onClick={() => keep(way, said)}>Keep {said}</button></div>
    </>
  )
  const places = [`fixed jaw, left`, `fixed jaw, right`, `${movingJaw}, left`, `${movingJaw}, right`]
  return (
    <>
      <div className="field-list"><NumberField label="± µm, one reading" value={texts.u} onChange={(u) => put({ u })} note="standard uncertainty; half a division is usual" /></div>
      <fieldset className="boxed short-way"><legend>Bed, along and across</legend>
        <p>{indicator === 'clock' ? 'Clock' : 'Indicator'} in the spindle, zero at the first corner of the bed, then the other three. What the bed slopes every part on it slopes, whatever the bars.</p>
        <div className="field-list">{places.map((place, k) => <NumberField key={place} label={place} more="µm" value={texts.bed[k]!} onChange={(text) => put({ bed: texts.bed.map((one, at) => (at === k ? text : one)) as unknown as MeasuredTexts['bed'] })} {...(k === 0 ? { ifEmpty: '0' } : {})} />)}
          <LengthField label="left to right" value={texts.bedAlong} onChange={(bedAlong) => put({ bedAlong })} /><LengthField label="jaw to jaw" value={texts.bedAcross} onChange={(bedAcross) => put({ bedAcross })} /></div>
        {end('bed', 'bed')}
      </fieldset>
      <fieldset className="boxed short-way"><legend>Fixed jaw</legend>
        <p>A ground square block held snug against it, nothing under it but the bars: what tightening adds is the lift, read apart below, and would count twice here. Read from the fixed side to the side at the {movingJaw}. Clamped, a part takes its slope across from this jaw, not from the bars. + rises from the fixed jaw.</p>
        <div className="field-list"><NumberField label="rises by, µm" value={texts.slope} onChange={(slope) => put({ slope })} /><LengthField label="over" more="the distance read on" value={texts.slopeOver} onChange={(slopeOver) => put({ slopeOver })} /></div>
        {end('jawSlope', 'fixed jaw')}
      </fieldset>
      <fieldset className="boxed short-way"><legend>Jaw lift</legend>
        <p>Block on its bars, jaws snug, zero over the side at the {movingJaw}; tighten to the torque you work with. The first cause of a part that is not down, and the one that grows with every pull at the handle.</p>
        <div className="field-list"><NumberField label="goes up by, µm" value={texts.lift} onChange={(lift) => put({ lift })} /><LengthField label="over" more="the width of the block" value={texts.liftOver} onChange={(liftOver) => put({ liftOver })} /></div>
        {end('jawLift', 'jaw lift')}
      </fieldset>
      <fieldset className="boxed short-way"><legend>Bed in the row</legend>
        <p>One zero on the bed of the first {word}, then on this bed, without moving Z. With it pairs are dealt so that all tops lie alike.</p>
        <div className="field-list"><NumberField label="higher by, µm" value={texts.row} onChange={(row) => put({ row })} /></div>
        {end('rowBed', 'bed in the row')}
      </fieldset>
    </>
  )
}
