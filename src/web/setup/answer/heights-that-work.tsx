import { highReasonWords, lowReasonWords } from '#words/say-window.ts'
import { useDesk } from '#web/setup/desk.ts'
import { inOtherSystem, lengthIn } from '#web/setup/answer/say-numbers.ts'

/** The window of heights, each end with what sets it, in both systems; and what to make where nothing of the rack serves. */
export function HeightsThatWork() {
  const { view: { answered }, units } = useDesk()
  if (!answered) return null
  const { window, make } = answered.answer
  return (
    <section>
      <h2 className="setup-rule">Heights that work</h2>
      {window.giveUp === null ? (
        <dl className="figures setup-heights">
          <div><dt>lowest, for {lowReasonWords[window.lowBecause]}<span className="setup-other">{inOtherSystem(window.lowMm, units)}</span></dt><dd>{lengthIn(window.lowMm, units)}</dd></div>
          <div><dt>highest, for {highReasonWords[window.highBecause]}<span className="setup-other">{inOtherSystem(window.highMm, units)}</span></dt><dd>{lengthIn(window.highMm, units)}</dd></div>
        </dl>
      ) : <p className="setup-lines">None, as the wishes stand.</p>}
      {make === null ? null : <p className="setup-lines"><strong>Make {lengthIn(make.lowMm, units)} to {lengthIn(make.highMm, units)}.</strong> A pair of any height between would serve.</p>}
    </section>
  )
}
