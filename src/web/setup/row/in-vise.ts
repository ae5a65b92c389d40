import { questionAt } from '#engine/rack/question-at.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { whyNot } from '#engine/setup/why-not.ts'
import type { Bar } from '#model/bar.ts'
import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import type { Choice } from '#model/setup.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { countedForm } from '#engine/setup/counted-form.ts'

/** The setup on the screen with one pair in one vise: how it comes out there, or why it does not serve. */
export type InVise = { readonly choice: Choice } | { readonly why: readonly Finding[] } | { readonly refused: Refusal }

/** Null where nothing was asked on the screen yet. */
export function inVise(vise: ViseRecord, form: SetupForm, pair: readonly Bar[], settings: ShopRecord): InVise | null {
  if (form.height.trim() === '') return null
  try {
    const question = questionAt(vise, countedForm(form).form, settings, { ways: ['on edge'], most: 1, rejectedMost: 1 })
    const { choices, rejected, window } = chooseBars(question, indexRack(pair)), [choice] = choices, [rejection] = rejected
    if (choice) return { choice }
    return { why: rejection ? whyNot(rejection, { question, window, bars: new Map(pair.map((bar) => [bar.id, bar])) }) : [] }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { refused: error }
  }
}
