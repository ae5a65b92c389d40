import type { answerRoute } from '#engine/make/route/answer-route.ts'
import type { PlannedWith } from '#model/job-record.ts'
import type { Route, RouteKind } from '#model/route.ts'
import { sayFinding } from '#words/say-finding.ts'
import { isOpen, routeStatusWords, routeWords, sayBand, sayCost, sayExpectedFrom, sayHours, sayMoney, saySize, sayStep } from '#words/say-make.ts'
import { capital } from '#words/wording.ts'
import { stockNamer } from '#web/make/stock-namer.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly answer: ReturnType<typeof answerRoute>; readonly planned: PlannedWith; readonly onChoose: (route: RouteKind) => void }

/** The ways side by side, the best first; those that are not open stand below with what is missing. */
export function RouteList({ answer, planned, onChoose }: Props) {
  const open = answer.routes.filter(isOpen), blocked = answer.routes.filter((route) => !isOpen(route))
  return (
    <>
      <section aria-labelledby="routes">
        <h2 id="routes">Ways to make them</h2>
        {open.length === 0 ? <p>None is open as things stand: see below what is missing.</p> : null}
        <ul className="mk-routes">{open.map((route) => <RouteCard key={route.kind} route={route} planned={planned} isBest={route.kind === answer.best} onChoose={onChoose} />)}</ul>
      </section>
      {blocked.length > 0 ? (
        <section aria-labelledby="blocked">
          <h2 id="blocked">Not open</h2>
          <ul className="rows">{blocked.map((route) => <Blocked key={route.kind} route={route} planned={planned} />)}</ul>
        </section>
      ) : null}
      <ShowSum sums={answer.sum} />
    </>
  )
}

const blanksShown = 3

function RouteCard({ route, planned, isBest, onChoose }: { readonly route: Route; readonly isBest: boolean } & Pick<Props, 'planned' | 'onChoose'>) {
  const units = useUnits(), nameOf = stockNamer(planned), { kind, status, expected, because, against, cost, hours, days, steel, steps, blanks } = route
  const { mark, word } = routeStatusWords[status], from = sayExpectedFrom(expected)
  const sizes = (which: 'sawn' | 'finished') => `${blanks.slice(0, blanksShown).map((blank) => saySize(blank[which], units)).join('; ')}${blanks.length > blanksShown ? ' …' : ''}`
  return (
    <li className="mk-route" data-best={isBest ? '' : undefined}>
      <h3>{capital(routeWords[kind])}</h3>
      <p><span className="mark">{mark}</span> {word}{isBest ? ', first choice' : ''}{steel ? ` · ${steel}` : ''}</p>
      <dl className="mk-figures">
        <div><dt>cost</dt><dd>{sayMoney(cost.total, units)}</dd></div>
        <div><dt>hours</dt><dd>{sayHours(hours, units)}</dd></div>
        <div><dt>days</dt><dd>{Math.ceil(days)}</dd></div>
      </dl>
      <p className="small">{sayCost(cost, units)}</p>
      <table className="mk-expected">
        <thead><tr><th scope="col"><span className="unseen">of</span></th><th scope="col">count on</th><th scope="col">with care</th></tr></thead>
        <tbody>
          {([['mates', expected.match], ['parallel', expected.parallel]] as const).map(([name, { countOn, careful }]) => (
            <tr key={name}><th scope="row">{name}</th><td>{sayBand(countOn, units)}</td><td>{careful ? sayBand(careful, units) : '–'}</td></tr>
          ))}
        </tbody>
      </table>
      {from === '' ? null : <p className="small">Expected: {from}{expected.checks > 0 ? `, ${expected.checks} own checks` : ''}</p>}
      {because.map((one, at) => <p key={at}>{sayFinding(one, units, nameOf)}</p>)}
      {against.length > 0 ? <><p className="mk-against">Against it</p><ul className="mk-notes">{against.map((one, at) => <li key={at}>{sayFinding(one, units, nameOf)}</li>)}</ul></> : null}
      <details>
        <summary>{steps.length} steps</summary>
        <ol className="mk-steps">{steps.map((step) => <li key={step.kind}>{sayStep(step.kind)} <span className="small">{step.outside ? 'outside' : sayHours(step.hours, units)}</span></li>)}</ol>
        {blanks.length > 0 ? <p className="small">Blanks {sizes('sawn')} for {sizes('finished')}</p> : null}
      </details>
      <button type="button" className={isBest ? 'action main' : 'action'} onClick={() => onChoose(kind)}>Take this way<span className="unseen">: {routeWords[kind]}</span></button>
    </li>
  )
}

function Blocked({ route: { kind, against, because }, planned }: { readonly route: Route } & Pick<Props, 'planned'>) {
  const units = useUnits(), nameOf = stockNamer(planned), why = against.length > 0 ? against : because
  return <li><strong>{capital(routeWords[kind])}</strong><ul className="mk-notes">{why.map((one, at) => <li key={at}>{sayFinding(one, units, nameOf)}</li>)}</ul></li>
}
