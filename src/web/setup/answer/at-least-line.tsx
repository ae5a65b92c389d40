import { wordLength } from '#model/length.ts'
import { useDesk } from '#web/setup/desk.ts'
import { notGiven } from '#web/setup/answer/not-given.ts'

/** What the answer rests on, folded to one line: the wishes, and what was not given. A tap unfolds the wishes under the sheet. */
export function AtLeastLine() {
  const { state, dispatch, units, view: { answered } } = useDesk(), { form } = state
  const open = state.drawer?.of === 'wishes', typed = form.wishes.grip.trim()
  const usedMm = answered?.answer.window.gripWishMm, airMm = answered?.question.wishes.airMm
  const grip = typed !== '' && typed.toLowerCase() !== 'auto' ? typed : typeof usedMm === 'number' ? `auto (${wordLength(usedMm, units)})` : 'auto'
  const left = answered ? notGiven(answered.question, answered.answer.findings) : []
  return (
    <button type="button" className="setup-wishes" aria-expanded={open} onClick={() => dispatch({ do: 'pull drawer', drawer: open ? null : { of: 'wishes' } })}>
      <span className="setup-wishes-what">
        <span>At least: grip {grip}{airMm === undefined ? '' : ` · ${wordLength(airMm, units)} clear of the jaws`}</span>
        <span className="setup-open">For {form.use}.{left.length === 0 ? '' : ` Not given: ${left.join(', ')}.`}</span>
      </span>
      <span className="setup-change">{open ? 'close' : 'change'}</span>
    </button>
  )
}
