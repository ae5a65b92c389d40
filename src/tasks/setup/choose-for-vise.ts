import { barsFrom } from '#engine/rack/bar-from.ts'
import { predictionAt } from '#engine/rack/prediction-at.ts'
import { limitUmOf, questionAt } from '#engine/rack/question-at.ts'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { waysAroundHoles } from '#engine/setup/around-holes.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import type { AskOptions } from '#engine/setup/form.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { type Prediction, predictionOf } from '#engine/setup/prediction/prediction.ts'
import { readSetupCase } from '#engine/setup/read-question.ts'
import type { Finding } from '#model/finding.ts'
import type { Side } from '#model/part.ts'
import { Refusal } from '#model/refusal.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { SetupAnswer, SetupQuestion } from '#model/setup.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { listRack, type RackLine } from '#tasks/rack/list-rack.ts'
import { rackFactsOf } from '#tasks/rack/rack-facts.ts'

/** What was asked, what the rack says to it, and the bars the answer names. `vise` null: its sizes came with the case. */
export type SetupAtVise = {
  readonly vise: ViseRecord | null
  readonly question: SetupQuestion
  readonly answer: SetupAnswer
  /** What would stand at a jaw that holes keep a bar off. */
  readonly aroundHoles: readonly Finding[]
  readonly bars: readonly RackLine[]
  /** Of the best choice, where the side at the fixed jaw was named to foretell with; null: not asked, or nothing serves. */
  readonly prediction: Prediction | null
}

/** The side at the fixed jaw with which to foretell the best choice; left out: not asked. */
type Foretell = { readonly foretell?: Side }

/**
 * What to use for a form at a vise of the shop: worked out from the shop's own facts, whatever a device may have shown.
 *
 * @throws Refusal `unknown-record` for the vise, and as `questionFrom`
 */
export function chooseFromForm(store: Store, { viseId, form, foretell, ...options }: { readonly viseId: string; readonly form: SetupForm } & AskOptions & Foretell): Promise<SetupAtVise> {
  return chosenAt(store, viseId, foretell ?? null, (vise, shop) => questionAt(vise!, form, shop, options))
}

/**
 * What to use for a raw case of `calc setup` with the bars of the shop; unknown keys are refused.
 *
 * @param viseId  the vise of the shop; null: the case brings the sizes of one under `vise`
 * @throws Refusal `unknown-record`, `unknown-key`, and as `readSetupCase`
 */
export function chooseFromCase(store: Store, viseId: string | null, raw: { readonly [key: string]: unknown }, { foretell }: Foretell = {}): Promise<SetupAtVise> {
  return chosenAt(store, viseId, foretell ?? null, (vise, shop) => {
    const strange = ['bars', ...(vise === null ? [] : ['vise'])].filter((key) => Object.hasOwn(raw, key))
    const { question, ignored } = readSetupCase({ ...raw, ...(vise === null ? {} : { vise: viseFrom(vise) }), bars: [] })
    if (strange.length + ignored.length > 0) throw new Refusal('unknown-key', { keys: [...strange, ...ignored] })
    const wishes = raw['wishes'] as { readonly matchUm?: unknown } | null | undefined
    const matchUm = wishes?.matchUm === undefined || wishes.matchUm === null ? limitUmOf(question.wishes.use, shop.limitsUm) : question.wishes.matchUm
    return { ...question, wishes: { ...question.wishes, matchUm } }
  })
}

function chosenAt(store: Store, viseId: string | null, side: Side | null, ask: (vise: ViseRecord | null, shop: ShopRecord) => SetupQuestion): Promise<SetupAtVise> {
  return atOneMoment(store, async (tx) => {
    const vise = viseId === null ? null : await recordOf(tx, 'vise', viseId, 'viseId')
    const facts = await rackFactsOf(tx), question = ask(vise, facts.shop)
    const bars = barsFrom(facts, { viseId }), rack = indexRack(bars), answer = chooseBars(question, rack), [best] = answer.choices, aroundHoles = waysAroundHoles(question, best ?? null, rack)
    const named = new Set([...answer.choices, ...answer.rejected, ...answer.offers ?? []].flatMap(({ bars }) => bars))
    const told = side === null ? null : { checks: facts.checks, instruments: await recordsOf(tx, 'instrument'), outcomes: await recordsOf(tx, 'outcome') }
    const prediction = told === null || side === null || best === undefined ? null : predictionOf(predictionAt(told, { question, bars: new Map(bars.map((bar) => [bar.id, bar])), vise, side }, best))
    return { vise, question, answer, aroundHoles, prediction, bars: (await listRack(tx, { gone: true })).filter((line) => named.has(line.id)) }
  })
}
