import { useDesk } from '#web/setup/desk.ts'
import { engravedElse, figureOf, type Rest, slotOf } from '#web/setup/answer/say-choice.ts'
import { choiceKey } from '#web/setup/view/choice-key.ts'

type Props = { readonly rest: Rest; readonly lines: readonly string[]; readonly serves: boolean }

/** One way of resting the part as a row to tap: its height, what it is, its slot. Struck through where it does not serve. */
export function RestRow({ rest, lines, serves }: Props) {
  const { bench, units, dispatch, view: { answered } } = useDesk()
  const key = choiceKey(rest), shown = answered?.shown
  const current = shown ? choiceKey('rejection' in shown ? shown.rejection : shown) === key : false
  const figure = figureOf(rest, bench, units), engraved = engravedElse(rest, bench, units)
  return (
    <li>
      <button type="button" className="setup-row" aria-current={current ? 'true' : undefined} onClick={() => dispatch({ do: 'look at', chosen: key })}>
        <span className="setup-row-height">
          {serves ? <strong className="setup-row-figure">{figure}</strong> : <s className="setup-row-figure">{figure}</s>}
          {engraved && <span className="small">{engraved}</span>}
        </span>
        <span className={serves ? 'setup-row-what' : 'setup-row-what setup-short'}>{lines.map((line) => <span key={line} className="name-text">{line}</span>)}</span>
        <span className="setup-row-slot name-text">{slotOf(rest, bench)}</span>
      </button>
    </li>
  )
}
