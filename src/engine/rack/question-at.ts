import { useLimits } from '#engine/rack/use-limits.ts'
import { viseFrom } from '#engine/rack/vise-from.ts'
import { type AskOptions, questionFrom } from '#engine/setup/form.ts'
import type { SetupForm } from '#model/setup-form.ts'
import type { SetupQuestion } from '#model/setup.ts'
import type { ShopFields } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import type { Use } from '#model/wishes.ts'

/** The shop's own limit for a use, in µm. */
export const limitUmOf = (use: Use, limitsUm: ShopFields['limitsUm']): number => useLimits(limitsUm)[use]

/**
 * What a form asks at a vise of the shop: with its fitted jaws, and with the shop's own limit for the use.
 *
 * @throws Refusal as `questionFrom`
 */
export function questionAt(
  vise: ViseRecord, form: SetupForm, { limitsUm }: Pick<ShopFields, 'limitsUm'>, options: AskOptions = {},
): SetupQuestion {
  const question = questionFrom(form, viseFrom(vise), options)
  return { ...question, wishes: { ...question.wishes, matchUm: limitUmOf(form.use, limitsUm) } }
}
