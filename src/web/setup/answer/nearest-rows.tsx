import { sayOffer } from '#words/say-offer.ts'
import { useDesk } from '#web/setup/desk.ts'
import { RestRow } from '#web/setup/answer/rest-row.tsx'
import { barLabel, nameOfRest } from '#web/setup/answer/say-choice.ts'
import { useSaying } from '#web/setup/answer/use-saying.ts'
import type { Refused } from '#web/setup/view/view-from.ts'

/** Just outside the heights that work: each struck through, with what it is short of and the wish that would have to be given up. */
export function NearestRows() {
  const { view: { answered }, units, bench } = useDesk()
  if (!answered || answered.nearest.length === 0) return null
  // A grip that would be said as 0 is none.
  const offers = answered.answer.offers?.filter(({ wish, toMm }) => wish !== 'gripMm' || toMm >= 0.005) ?? []
  const nameOf = (id: string) => barLabel(id, bench, units)
  return (
    <section>
      <h2 className="setup-rule">Nearest</h2>
      <ul>{answered.nearest.map((refused) => <RefusedRow key={refused.rejection.bars.join(' ')} refused={refused} />)}</ul>
      {offers.length > 0 ? (
        <ul className="setup-lines" aria-label="What giving up a wish would do">
          {offers.map((offer) => <li key={`${offer.wish} ${offer.bars.join(' ')} ${offer.stand}`}>{sayOffer(offer, units, nameOf)}</li>)}
        </ul>
      ) : null}
    </section>
  )
}

export function RefusedRow({ refused: { rejection, why } }: { readonly refused: Refused }) {
  const { units, bench } = useDesk(), say = useSaying()
  return <RestRow rest={rejection} serves={false} lines={[nameOfRest(rejection, bench, units), ...why.map(say)]} />
}
