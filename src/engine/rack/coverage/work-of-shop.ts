import type { CoverageQuestion, SetupOfShop, ViseOfShop } from '#engine/rack/coverage/coverage-question.ts'
import { typicalMix } from '#engine/rack/coverage/typical-mix.ts'
import { questionAt } from '#engine/rack/question-at.ts'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { countedForm } from '#engine/setup/counted-form.ts'
import { attemptOr } from '#model/attempt.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { SetupRecord, Unserved } from '#model/setup-record.ts'
import type { ShopFields } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import type { Way } from '#model/wishes.ts'

/** What is written down about the work of a shop. */
export type WorkFacts = {
  readonly vises: readonly ViseRecord[]
  readonly setups: readonly Pick<SetupRecord, 'id' | 'viseId' | 'form' | 'retired'>[]
  /** Questions that nothing served, once for each day. */
  readonly unserved: readonly Pick<Unserved, 'id' | 'viseId' | 'form'>[]
  readonly shop: Pick<ShopFields, 'limitsUm'>
}

/** Where a line of the work comes from: a saved setup, a question nothing served, or the typical mix. */
export type WorkLine = { readonly from: 'setup'; readonly id: string } | { readonly from: 'unserved'; readonly id: string } | { readonly from: 'typical' }

/** How it is to be counted, as the screen has it. */
export type CountedWays = { readonly stacks: boolean; readonly flat: boolean }

export type WorkOptions = CountedWays & {
  /** This vise alone; null: all. */
  readonly viseId: string | null
  readonly next: CoverageQuestion['next']
}

/** `lines[k]` tells where setup k of the question comes from; `unread`: setups that lack a size or do not go into their vise. `unfinished`: those counted without a cut that lacks one. */
export type WorkOfShop = { readonly question: CoverageQuestion; readonly lines: readonly WorkLine[]; readonly unread: number; readonly unfinished: number }

/** Fewer lines of work than this say little: the typical mix is laid beside them. */
export const fewLines = 5

/**
 * The work of a shop as coverage asks it: each saved setup and each unserved question in its own vise as it is fitted now, and while there are few of
 * them a typical mix. Advised heights only, places among holes counted. Common practice, no source.
 */
export function workOfShop({ vises: all, setups, unserved, shop }: WorkFacts, { viseId, stacks, flat, next }: WorkOptions): WorkOfShop {
  const vises = all.filter((vise) => !vise.retired && (viseId === null || vise.id === viseId)), byId = new Map(vises.map((vise) => [vise.id, vise]))
  const counted: { readonly line: WorkLine; readonly setup: SetupOfShop }[] = []
  let unread = 0, unfinished = 0
  const count = (line: WorkLine, { viseId: at, form }: { readonly viseId: string; readonly form: SetupForm }) => {
    const vise = byId.get(at)
    if (!vise) return
    const typed = countedForm(form), asked = askedOf(vise, typed.form, shop)
    if (asked === null) { unread += 1; return }
    if (typed.unfinished.length > 0) unfinished += 1
    counted.push({ line, setup: { viseId: at, times: 1, asked } })
  }
  for (const setup of setups) if (!setup.retired) count({ from: 'setup', id: setup.id }, setup)
  for (const one of unserved) count({ from: 'unserved', id: one.id }, one)
  if (counted.length < fewLines) for (const setup of typicalMix(vises.map(shopVise), shop)) counted.push({ line: { from: 'typical' }, setup })
  return {
    lines: counted.map(({ line }) => line), unread, unfinished,
    question: { vises: vises.map(shopVise), setups: counted.map(({ setup }) => setup), ways: waysCounted({ stacks, flat }), advisedOnly: true, places: true, next },
  }
}

export const waysCounted = ({ stacks, flat }: CountedWays): readonly Way[] => ['on edge', 'single', 'bed', ...(flat ? ['lying flat' as const] : []), ...(stacks ? ['stack' as const] : [])]

const shopVise = (vise: ViseRecord): ViseOfShop => ({ id: vise.id, ...viseFrom(vise) })

/** Null where what was typed cannot be set up in this vise any more. */
function askedOf(vise: ViseRecord, form: SetupForm, shop: WorkFacts['shop']): SetupOfShop['asked'] | null {
  return attemptOr(() => {
    const { part, cuts, wishes } = questionAt(vise, form, shop)
    return { part, cuts, wishes }
  }, null)
}
