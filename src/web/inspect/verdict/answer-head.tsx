import type { Checked } from '#engine/inspect/checked.ts'
import type { CheckMethod } from '#model/check-methods.ts'
import { judgedOf } from '#engine/inspect/judged.ts'
import { finestProved, sayUm, sayUses, sayWayRound } from '#web/inspect/verdict/say-verdict.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** The one figure that counts: to how much the bars are proved, and what that makes them good for. */
export function AnswerHead({ answer, method, bars }: { readonly answer: Checked | null; readonly method: CheckMethod; readonly bars: number }) {
  return <section className="setup-answer" aria-label="Answer">{answer === null ? <NothingYet method={method} bars={bars} /> : answer.method === 'rock' ? <Rock answer={answer} /> : <Proved answer={answer} />}</section>
}

function NothingYet({ method, bars }: { readonly method: CheckMethod; readonly bars: number }) {
  const { gauge } = useTerms()
  if (bars > 0 && method === 'rock') return <><h1>Does it lie still?</h1><p className="setup-because">Say it of each bar. It is kept at each touch; anybody can go on with it on another device.</p></>
  return bars === 0
    ? <><h1>Which bars?</h1><p className="setup-because">Pick them from the rack. What is typed is kept at each key; anybody can go on with it on another device.</p></>
    : <><h1>{method === 'micrometer' ? 'Read from the marked end' : 'Set the zero, then read from the marked end'}</h1><p className="setup-because">Enter moves on. A {gauge} that types like a keyboard works as it is.</p></>
}

function Proved({ answer }: { readonly answer: Checked }) {
  const units = useUnits(), judged = judgedOf(answer), { uses, provedToUm, foundUm } = judged, finest = finestProved(judged), way = sayWayRound(answer, units)
  return (
    <>
      {foundUm === null ? <h1>Read on</h1> : provedToUm === null
        ? <h1 className="big-line"><strong className="big">{sayUm(foundUm, units)}</strong> µm read{isNamed(answer) ? ' so far' : ', nothing proved'}</h1>
        : <h1 className="big-line"><strong className="big">{sayUm(provedToUm, units, { up: true })}</strong> µm proved to</h1>}
      {finest === null ? null : <p className="setup-stand">Fit for {finest}</p>}
      {uses.length > 0 ? <p className="setup-because">{sayUses(uses)}</p> : foundUm === null ? <p className="setup-because">Two whole stations at least tell a shape.</p> : null}
      {way === null ? null : <p className="setup-because">{way}</p>}
      <output className="unseen">{provedToUm === null ? '' : `Proved to ${sayUm(provedToUm, units, { up: true })} µm`}</output>
    </>
  )
}

/** Without an instrument nothing can be proved, however much is read. */
const isNamed = ({ findings }: Checked): boolean => findings.every(({ code }) => code !== 'instrument-not-named')

function sayRock(rocking: number, tried: number): string {
  if (tried === 0) return 'Not tried yet'
  if (tried === 1) return rocking === 1 ? 'It rocks' : 'It lies still'
  return rocking === 0 ? 'All lie still' : `${rocking} of ${tried} rock`
}

function Rock({ answer: { bars } }: { readonly answer: Checked }) {
  const tried = bars.filter(({ look }) => look !== null && look.rock !== 'not tried'), rocking = tried.filter(({ look }) => look?.rock === 'rocks')
  return (
    <>
      <h1 className="big-line">{sayRock(rocking.length, tried.length)}</h1>
      <p className="setup-because">Tells whether a bar lies still, not how high it is.</p>
    </>
  )
}
