import { Suspense, useState } from 'react'
import type { Finding } from '#model/finding.ts'
import { sides } from '#model/part.ts'
import type { Choice as ChoiceOf } from '#model/setup.ts'
import type { Prediction, WayForetold } from '#engine/setup/prediction/prediction.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { arriving } from '#web/parts/arriving.ts'
import { Choice } from '#web/parts/choice.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { barLabel } from '#web/setup/answer/say-choice.ts'
import { useSaying } from '#web/setup/answer/use-saying.ts'
import { AfterTheCut } from '#web/setup/predict/after-the-cut.tsx'
import { notKnownOnce, sayComesOut, sayContribution, sayFigures } from '#web/setup/predict/say-prediction.ts'
import { saidByPicture, SeatDrawing } from '#web/setup/predict/seat-drawing.tsx'
import '#web/setup/predict/predict.css'
import { isRefused } from '#web/setup/view/view-from.ts'

const HowItHolds = arriving(async () => (await import('#web/setup/predict/how-it-holds.tsx')).HowItHolds)

/** What the part will come out as on the choice looked at. It arrives after the ranking and changes nothing of it. */
export function ComesOut() {
  const { view: { answered }, state: { form }, foretelling, dispatch, units } = useDesk(), shown = answered?.shown ?? null
  if (shown === null || isRefused(shown)) return null
  const prediction = foretelling.of(shown)
  return (
    <section aria-label="What comes out" className="comes-out">
      <h2 className="setup-rule">What comes out</h2>
      <output className="comes-out-said">{prediction === null ? <Waiting /> : sayComesOut(prediction, units) ?? 'Not foretold.'}</output>
      <Choice label="Side at the fixed jaw" value={form.side ?? 'unknown'} options={sides.map((side) => ({ value: side, label: side }))} onChange={(side) => dispatch({ do: 'take side', side })} />
      {prediction === null ? null : <Told choice={shown} prediction={prediction} />}
      <ClampWorth choice={shown} />
      <AfterTheCut choice={shown} prediction={prediction} />
    </section>
  )
}

/** Fetched when it is first opened; what was typed stays when it is folded again. */
function ClampWorth({ choice }: { readonly choice: ChoiceOf }) {
  const [opened, setOpened] = useState(false)
  return (
    <details className="comes-out-more" onToggle={() => setOpened(true)}>
      <summary>What the clamp is worth</summary>
      {opened ? <Suspense><HowItHolds choice={choice} /></Suspense> : null}
    </details>
  )
}

function Waiting() {
  const { foretelling: { done, ended, stop }, units } = useDesk()
  if (ended === 'stopped') return 'Stopped. Change anything, and it is worked out anew.'
  if (ended === 'fault') return 'Not worked out: something failed on this device. Change anything, and it is tried anew.'
  if (ended !== null) return sayRefusal(ended, units)
  return (
    <span className="comes-out-waits">
      <span>Being worked out{done === null ? '' : `, ${Math.floor(100 * done)} %`}</span>
      <progress value={done ?? 0} max={1} aria-label="Prediction" />
      {done === null ? null : <button type="button" className="press" onClick={stop}>Stop</button>}
    </span>
  )
}

function Told({ choice, prediction }: { readonly choice: ChoiceOf; readonly prediction: Prediction }) {
  const say = useSaying()
  if (prediction.status !== 'foretold') return <ul className="setup-points">{prediction.because.map((finding) => <li key={finding.code}>{say(finding)}</li>)}</ul>
  const { ways, common } = notKnownOnce(prediction.ways)
  return <>{ways.map((way) => <Way key={String(way.held)} way={way} choice={choice} alone={ways.length === 1} />)}<NotKnown findings={common} /></>
}

function NotKnown({ findings }: { readonly findings: readonly Finding[] }) {
  const say = useSaying()
  if (findings.length === 0) return null
  return <ul className="setup-lines setup-open" aria-label="Not in it">{findings.map((finding) => <li key={finding.code}>{say(finding)}</li>)}</ul>
}

function Way({ way, choice, alone }: { readonly way: WayForetold; readonly choice: ChoiceOf; readonly alone: boolean }) {
  const { coming, notKnown } = way, say = useSaying(), findings = way.findings.filter(({ code }) => !saidByPicture.includes(code))
  return (
    <section aria-label={way.held ? 'Squared by the fixed jaw' : 'Free on its bars'}>
      {alone ? null : <h3>{way.held ? 'If the fixed jaw squares it' : 'If it lies free on its bars'}</h3>}
      <SeatDrawing way={way} choice={choice} />
      <ul className="setup-points">{findings.map((finding) => <li key={JSON.stringify(finding)}>{say(finding)}</li>)}</ul>
      {coming.status === 'predicted' ? <Figures coming={coming} /> : null}
      <NotKnown findings={notKnown} />
    </section>
  )
}

function Figures({ coming: { across, along, contributions } }: { readonly coming: Extract<WayForetold['coming'], { readonly status: 'predicted' }> }) {
  const { bench, units, terms, view: { answered } } = useDesk(), { part } = answered!.question, nameOf = (id: string) => barLabel(id, bench, units)
  return (
    <details className="comes-out-more">
      <summary>Figures, and what they hang on</summary>
      <dl className="comes-out-figures">
        <div><dt>Across, {terms.movingJaw} less fixed</dt><dd>{sayFigures(across, part.betweenJawsMm!, units)}</dd></div>
        <div><dt>Along, right end less left</dt><dd>{sayFigures(along, part.alongJawsMm!, units)}</dd></div>
      </dl>
      <ol className="setup-lines" aria-label="What it hangs on">{contributions.map((one) => <li key={`${one.of} ${one.bar}`}>{sayContribution(one, units, nameOf)}</li>)}</ol>
    </details>
  )
}
