import type { Choice } from '#model/setup.ts'
import { useDesk } from '#web/setup/desk.ts'
import { sayShortly } from '#web/setup/predict/say-prediction.ts'

/** One line under the pair, its place kept while the prediction is on its way; none where nothing is foretold, or nothing will come. */
export function ComesOutShortly({ choice }: { readonly choice: Choice }) {
  const { foretelling, units, view: { answered } } = useDesk(), prediction = foretelling.of(choice), { betweenJawsMm, alongJawsMm } = answered!.question.part
  if (betweenJawsMm === null || alongJawsMm === null || (prediction === null ? foretelling.ended !== null : sayShortly(prediction, units) === null)) return null
  const said = prediction === null ? null : sayShortly(prediction, units)
  return <p className="comes-out-short">{said === null ? '…' : `${said.charAt(0).toUpperCase()}${said.slice(1)}.`}</p>
}
