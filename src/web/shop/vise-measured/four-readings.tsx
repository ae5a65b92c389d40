import { useMemo, useState } from 'react'
import { answerGuilty } from '#engine/setup/guilty/answer-guilty.ts'
import { attempt } from '#model/attempt.ts'
import { wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ViseMeasured } from '#model/vise-measured.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital } from '#words/wording.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { nowIso } from '#web/new-id.ts'
import { emptyFour, fourAsked, type FourTexts, measuredByFour } from '#web/shop/vise-measured/measured-texts.ts'
import { useTerms, useUnits } from '#web/units.ts'

type Props = { readonly onKeep: (found: Partial<ViseMeasured>, said: string) => void }

/** Who is guilty: bars, block, bed or the closing of the jaws, out of four readings on one ground block. */
export function FourReadings({ onKeep }: Props) {
  const units = useUnits(), { movingJaw, indicator, vise: word } = useTerms(), [texts, setTexts] = useState<FourTexts>(emptyFour)
  const put = (part: Partial<FourTexts>) => setTexts({ ...texts, ...part })
  const told = useMemo(() => {
    if ([texts.y1, texts.y2, texts.y3].some((text) => text.trim() === '')) return null
    return attempt(() => ({ answer: answerGuilty(fourAsked(texts, units.length)), found: measuredByFour(texts, units.length, nowIso()) }))
  }, [texts, units.length])
  const answer = told === null || told instanceof Refusal ? null : told
  const steps: readonly (readonly [key: 'y1' | 'y2' | 'y3' | 'y4', what: string, why: string])[] = [
    ['y1', 'As it is', `The block on its bars, jaws snug. ${capital(indicator)} at zero over the fixed side, then over the side at the ${movingJaw}: type what it shows.`],
    ['y2', 'Bars exchanged', 'Take the block out, exchange the two bars, block back as it was. What the bars do changes its sign.'],
    ['y3', 'Block turned', 'Bars back as they were first, block turned half round. What the block does changes its sign; the bed does not.'],
    ['y4', 'Tightened', 'All as at first, tightened to the torque you work with: what lift and lean of the jaws add.'],
  ]
  return (
    <>
      <ol className="beside-points" data-counted="">
        {steps.map(([key, what, why]) => (
          <li key={key}><strong>{what}</strong>{why}<div className="field-list"><NumberField label="shows, µm" more={`, ${what.toLowerCase()}`} value={texts[key]} onChange={(text) => put({ [key]: text })} {...(key === 'y4' ? { ifEmpty: 'later' } : {})} /></div></li>
        ))}
      </ol>
      <div className="field-list">
        <LengthField label="between both places" value={texts.over} onChange={(over) => put({ over })} />
        <NumberField label="± µm, one reading" value={texts.u} onChange={(u) => put({ u })} note="standard uncertainty; half a division is usual" />
      </div>
      {told instanceof Refusal ? <p className="beside-warn" role="alert">{sayRefusal(told, units)}</p> : null}
      {answer === null ? null : (
        <section className="beside-answer" aria-label="Answer" aria-live="polite">
          <h2>Who is guilty</h2>
          {answer.answer.findings.map(({ code, facts }) => <p key={code}><strong>{sayFinding({ code, facts }, units)}</strong></p>)}
          {answer.answer.findings.length === answer.answer.order.length ? null : <ul className="beside-points">{answer.answer.order.map((who) => <li key={who}>{capital(who === 'closing' ? 'tightening' : who)}: {wordNumber(answer.answer[who]!.shareUm, units.decimalMark, null, 1)} µm</li>)}</ul>}
          <div><button type="button" className="action main" disabled={answer.found === null} onClick={() => answer.found && onKeep(answer.found, answer.found.jawLift ? 'bed across and jaw lift' : 'bed across')}>Keep bed{texts.y4.trim() === '' ? '' : ' and lift'} with this {word}</button></div>
          {answer.found === null ? <p className="small">To be kept it needs the distance between both places and how good a reading is.</p> : null}
          <ShowSum sums={answer.answer.sum} />
        </section>
      )}
    </>
  )
}
