import { useState } from 'react'
import { betweenNumbers } from '#words/wording.ts'
import type { Prediction } from '#engine/setup/prediction/prediction.ts'
import type { Units } from '#model/shop-record.ts'
import { useDesk } from '#web/setup/desk.ts'
import { RestRow } from '#web/setup/answer/rest-row.tsx'
import { howItStands, nameOfRest } from '#web/setup/answer/say-choice.ts'
import { choiceKey } from '#web/setup/view/choice-key.ts'
import { sayShortly } from '#web/setup/predict/say-prediction.ts'
import { lengthIn } from '#web/setup/answer/say-numbers.ts'

const fewest = 4

/** Everything else out of the rack that serves, best first; the first few until more is asked for. */
export function AlsoWork() {
  const { view: { answered }, foretelling, bench, units, terms } = useDesk()
  const [all, setAll] = useState(false)
  const others = answered?.answer.choices.filter((choice) => choice !== answered.shown) ?? []
  if (others.length === 0) return null
  return (
    <section>
      <h2 className="setup-rule">Also work</h2>
      <ul>
        {(all ? others : others.slice(0, fewest)).map((choice) => (
          <RestRow
            key={choiceKey(choice)} rest={choice} serves
            lines={[
              `${nameOfRest(choice, bench, units)}, ${howItStands(choice, terms).join(', ')}`,
              `grip ${lengthIn(choice.gripMm, units)}${choice.airMm === null ? '' : `${betweenNumbers(units)}${lengthIn(choice.airMm, units)} clear`}`,
              ...sayIfKnown(foretelling.of(choice), units),
            ]}
          />
        ))}
      </ul>
      {all || others.length <= fewest ? null : <button type="button" className="setup-more" onClick={() => setAll(true)}>{others.length - fewest} more</button>}
    </section>
  )
}

const sayIfKnown = (prediction: Prediction | null, units: Units): readonly string[] => (prediction === null ? [] : [sayShortly(prediction, units) ?? []].flat())
