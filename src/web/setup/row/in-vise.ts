import { questionAt } from '#engine/rack/question-at.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { countedForm } from '#engine/setup/counted-form.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { whyNot } from '#engine/setup/why-not.ts'
import { attempt } from '#model/attempt.ts'
import type { Bar } from '#model/bar.ts'
import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import type { Choice } from '#model/setup.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'

/** The setup on the screen with one pair in one vise: how it comes out there, or why it does not serve. */
export type InVise = { readonly choice: Choice } | { readonly why: readonly Finding[] } | { readonly refused: Refusal }

/** Null where nothing was asked on the screen yet. */
export function inVise(vise: ViseRecord, form: SetupForm, pair: readonly Bar[], settings: ShopRecord): InVise | null {
  if (form.height.trim() === '') return null
  const put = attempt(() => servesOrWhy(vise, form, pair, settings))
  return put instanceof Refusal ? { refused: put } : put
}

function servesOrWhy(vise: ViseRecord, form: SetupForm, pair: readonly Bar[], settings: ShopRecord): InVise {
  const question = questionAt(vise, countedForm(form).form, settings, { ways: ['on edge'], most: 1, rejectedMost: 1 })
  const { choices: [choice], rejected: [rejection], window } = chooseBars(question, indexRack(pair))
  if (choice) return { choice }
  return { why: rejection ? whyNot(rejection, { question, window, bars: new Map(pair.map((bar) => [bar.id, bar])) }) : [] }
}
