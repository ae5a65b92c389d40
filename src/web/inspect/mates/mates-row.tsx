import { useMemo, useRef } from 'react'
import { pairMatch } from '#drafting/inspect/pair-match.ts'
import type { MatesProposal } from '#engine/inspect/mates-of-rack.ts'
import type { MeasuredBar } from '#engine/inspect/measured-bar.ts'
import { wordNumber } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { verdictWords } from '#words/verdict-words.ts'
import type { NameOf } from '#words/wording.ts'
import { acceptMates, areMates } from '#web/inspect/mates/accept.ts'
import { pairPicture } from '#web/inspect/mates/pair-picture.ts'
import { sayLeaving } from '#web/inspect/mates/say-mates.ts'
import { newId } from '#web/new-id.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { useRoom } from '#web/setup/sheet/use-room.ts'
import { useUnits } from '#web/units.ts'

type Props = {
  readonly proposal: MatesProposal
  readonly bars: readonly MeasuredBar[]
  readonly shop: ShopSnapshot
  readonly nameOf: NameOf
  /** Null: it is taken with the others of its row. */
  readonly onTake: (() => void) | null
}

/** Two bars that go together: which way round, how near, what is proved, drawn either way. */
export function MatesRow({ proposal, bars, shop, nameOf, onTake }: Props) {
  const units = useUnits(), { bars: [first, second], turnOne, worstUm, uUm, provedToUm, uses, because } = proposal
  const um = (value: number) => wordNumber(value, units.decimalMark, null, 1), already = areMates([first, second], shop.bars)
  const leaving = already || onTake === null ? null : sayLeaving(acceptMates([[first, second]], shop, newId), nameOf)
  return (
    <li className="lot mates-pair">
      <h3 className="name-text">{nameOf(first)} and {nameOf(second)}</h3>
      <p><strong className="name-text">{turnOne ? `Turn ${nameOf(second)} end for end: marked ends opposite.` : 'Marked ends together.'}</strong></p>
      <dl className="facts">
        <div><dt>worst difference</dt><dd>{um(worstUm)} µm</dd></div>
        {uUm === null ? null : <div><dt>standard uncertainty</dt><dd>{um(uUm)} µm</dd></div>}
        {provedToUm === null ? null : <div><dt>proved to</dt><dd>{um(provedToUm)} µm</dd></div>}
      </dl>
      {uses.length === 0 ? null : (
        <ul className="mates-uses">
          {uses.map(({ use, verdict }) => (
            <li key={use}>
              <span className="mark" aria-hidden="true">{verdictWords[verdict].mark}</span> {use}
              <span className={verdict === 'proved' ? 'unseen' : 'small'}>: {verdictWords[verdict].word}</span>
            </li>
          ))}
        </ul>
      )}
      <p className="small">{because.filter(({ code }) => code !== 'mates-differ' && code !== 'mates-good-for').map((finding) => sayFinding(finding, units, nameOf)).join(' ')}</p>
      <Picture proposal={proposal} bars={bars} nameOf={nameOf} />
      {leaving === null ? null : <p className="small">{leaving}</p>}
      {already ? <p className="small">They are mates already.</p> : onTake === null ? null : <div><button type="button" className="action" onClick={onTake}>Make these two mates</button></div>}
    </li>
  )
}

function Picture({ proposal, bars, nameOf }: Pick<Props, 'proposal' | 'bars' | 'nameOf'>) {
  const frame = useRef<HTMLDivElement>(null), widthMm = useRoom(frame)?.widthMm ?? 0, units = useUnits()
  const scene = useMemo(() => {
    const [a, b] = proposal.bars.map((id) => bars.find((bar) => bar.id === id)!) as [MeasuredBar, MeasuredBar]
    const data = widthMm < 60 ? null : pairPicture([a, b], proposal, nameOf, units)
    return data && pairMatch(data, { widthMm, units, profileMm: 24 })
  }, [proposal, bars, widthMm, nameOf, units])
  return <div ref={frame} className="mates-picture">{scene ? <Drawing scene={scene} /> : null}</div>
}
