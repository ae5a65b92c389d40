import type { Finding } from '#model/finding.ts'
import type { Choice } from '#model/setup.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { sayGiveUp, sayWindow } from '#words/say-window.ts'
import { capital } from '#words/wording.ts'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import { engravedElse, figureOf, howItStands, nameOfRest, slotOf } from '#web/setup/answer/say-choice.ts'
import { MakeOne } from '#web/setup/answer/make-one.tsx'
import { SaidAloud } from '#web/setup/answer/said-aloud.tsx'
import { useSaying } from '#web/setup/answer/use-saying.ts'
import { ComesOutShortly } from '#web/setup/predict/comes-out-shortly.tsx'
import { type Answered, isRefused, type Refused } from '#web/setup/view/view-from.ts'

/** The first depth of the answer: the figure, the pair, its slot and one sentence; or what is in the way of an answer. */
export function AnswerHead() {
  const desk = useDesk(), { view } = desk
  return (
    <section className="setup-answer" aria-label="Answer">
      {view.waits ? <Waiting /> : view.refusal !== null ? <Stopped /> : view.answered && <Told answered={view.answered} />}
      <SaidAloud text={spoken(desk)} />
    </section>
  )
}

function Waiting() {
  const { state: { form }, bench } = useDesk()
  return (
    <>
      <h1>{form.shape === 'round' ? 'Diameter' : 'Height'} of the part, then what comes off the top</h1>
      <p className="setup-because">Two numbers, and the pair for {bench.vise.name} stands here. Everything else on the sheet can follow, or stay open.</p>
    </>
  )
}

function Stopped() {
  const { view: { refusal }, units } = useDesk()
  return (
    <>
      <h1>No answer yet</h1>
      {refusal && <p className="setup-refusal">{sayRefusal(refusal, units)}</p>}
    </>
  )
}

function Told({ answered }: { readonly answered: Answered }) {
  const { shown, answer } = answered
  if (shown === null) return <NoBars />
  if (!isRefused(shown)) return <Serves choice={shown} />
  return answer.choices.length > 0 ? <ServesNot refused={shown} /> : <NothingServes answered={answered} />
}

function Serves({ choice }: { readonly choice: Choice }) {
  const { bench, units, terms } = useDesk(), say = useSaying()
  const engraved = engravedElse(choice, bench, units), isMoved = ({ code }: Finding) => code.startsWith('moved')
  const said = choice.because.toSorted((a, b) => Number(isMoved(b)) - Number(isMoved(a))).map(say)
  return (
    <>
      <div className="setup-first">
        <h1 className="big-line">
          <strong className="big">{figureOf(choice, bench, units)}</strong> <span className="name-text">{nameOfRest(choice, bench, units)}</span>
          {engraved && <span className="setup-engraved"> marked {engraved}</span>}
        </h1>
        {choice.bars.length === 0 ? null : <p className="slot-box"><strong className="name-text">{slotOf(choice, bench)}</strong><span>slot</span></p>}
      </div>
      <ComesOutShortly choice={choice} />
      <p className="setup-because"><span className="setup-stand">{capital(howItStands(choice, terms).join(', '))}.</span> {said.join(' ')}</p>
    </>
  )
}

function ServesNot({ refused: { rejection, why } }: { readonly refused: Refused }) {
  const { bench, units, dispatch } = useDesk(), say = useSaying()
  return (
    <>
      <div className="setup-first">
        <h1 className="big-line"><s className="big">{figureOf(rejection, bench, units)}</s> <span className="name-text">{nameOfRest(rejection, bench, units)} does not serve</span></h1>
      </div>
      <p className="setup-refusal">{why.map(say).join(' ')}</p>
      <button type="button" className="press" onClick={() => dispatch({ do: 'look at', chosen: null })}>Back to the first choice</button>
    </>
  )
}

function NothingServes({ answered: { answer } }: { readonly answered: Answered }) {
  const { units } = useDesk(), { window } = answer
  return (
    <>
      <h1 className="big-line">No pair serves</h1>
      <p className="setup-because">{sayWindow(window, units)}</p>
      <MakeOne />
      {window.giveUp === null ? null : <ul className="setup-giveup">{sayGiveUp(window.giveUp, units).map((said) => <li key={said}>{said}</li>)}</ul>}
    </>
  )
}

function NoBars() {
  const { units, view } = useDesk()
  return (
    <>
      <h1 className="big-line">No bars in the rack</h1>
      {view.answered && <p className="setup-because">{sayWindow(view.answered.answer.window, units)}</p>}
      <MakeOne />
    </>
  )
}

/** The answer in one breath for those who hear it. */
function spoken({ view, bench, units, terms }: Desk): string {
  if (view.refusal !== null) return sayRefusal(view.refusal, units)
  if (view.answered === null) return ''
  const { shown, answer } = view.answered
  if (shown === null || isRefused(shown)) return answer.choices.length === 0 ? `No pair serves. ${sayWindow(answer.window, units)}` : ''
  return `${figureOf(shown, bench, units)}, ${nameOfRest(shown, bench, units)}, slot ${slotOf(shown, bench)}, ${howItStands(shown, terms).join(', ')}.`
}
