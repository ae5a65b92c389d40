import { questionAt } from '#engine/rack/question-at.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { whyNot } from '#engine/setup/why-not.ts'
import { attempt } from '#model/attempt.ts'
import type { Finding } from '#model/finding.ts'
import { type Facts, Refusal } from '#model/refusal.ts'
import type { Choice, Rejection, SetupAnswer, SetupQuestion } from '#model/setup.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { type CountedForm, countedForm, fieldOnScreen } from '#engine/setup/counted-form.ts'
import type { Bench } from '#web/setup/view/bench.ts'
import { choiceKey, fromKey, isSameRest } from '#web/setup/view/choice-key.ts'
import { neighboursOf } from '#web/setup/view/nearest.ts'

/** A candidate that does not serve, with its reasons and their figures. */
export type Refused = { readonly rejection: Rejection; readonly why: readonly Finding[] }

/** Why there is no answer. `path` is the field on the screen, null where none can be named. */
export type Stop = { readonly code: string; readonly facts: Facts; readonly path: string | null }

/** What the rack says to a question that could be asked. */
export type Answered = {
  readonly question: SetupQuestion
  readonly answer: SetupAnswer
  /** The one looked at: what was tapped if it is still among them, else the first choice, else the nearest. */
  readonly shown: Choice | Refused | null
  /** Just outside the heights that work, nearest first. */
  readonly nearest: readonly Refused[]
}

export type SetupView = {
  /** Nobody has given a height yet: there is nothing to ask. */
  readonly waits: boolean
  readonly refusal: Stop | null
  readonly answered: Answered | null
  readonly counted: CountedForm
}

const mostShown = 30

/** Everything the Set up screen shows, from what was typed and the bench: one question to the engine, and one for each neighbour. */
export function viewFrom(form: SetupForm, bench: Bench, chosen: string | null): SetupView {
  const counted = countedForm(form)
  if (form.height.trim() === '') return { waits: true, refusal: null, answered: null, counted }
  const answered = attempt(() => answeredFrom(questionAt(bench.vise, counted.form, bench.settings, { most: mostShown, rejectedMost: 0 }), bench, chosen))
  if (answered instanceof Refusal) return { waits: false, refusal: stopFrom(answered, counted), answered: null, counted }
  return { waits: false, refusal: null, answered, counted }
}

export function isRefused(shown: Choice | Refused): shown is Refused {
  return 'rejection' in shown
}

/** Why one candidate is refused, asked of its bars alone; null where it serves, or cannot be tried that way at all. */
export function refusedAlone({ bars: ids, stand }: Pick<Rejection, 'bars' | 'stand'>, { question, answer }: Pick<Answered, 'question' | 'answer'>, { bars }: Bench): Refused | null {
  const alone = indexRack(ids.flatMap((id) => bars.get(id) ?? []))
  const rejection = chooseBars({ ...question, ways: [stand], most: 0, rejectedMost: 20 }, alone).rejected.find((one) => one.bars.join() === ids.join())
  return rejection ? { rejection, why: whyNot(rejection, { question, window: answer.window, bars }) } : null
}

function answeredFrom(question: SetupQuestion, bench: Bench, chosen: string | null): Answered {
  const answer = chooseBars(question, bench.rack)
  const asked = { question, answer }, stand = question.part.shape === 'round' ? 'single' : 'on edge'
  const nearest = neighboursOf(bench.rack, stand, answer.window).flatMap(({ bars }) => refusedAlone({ bars, stand }, asked, bench) ?? [])
  const tapped = chosen === null ? null : choiceOf(chosen, answer) ?? refusedAlone(fromKey(chosen), asked, bench)
  return { question, answer, nearest, shown: tapped ?? answer.choices[0] ?? nearest[0] ?? null }
}

const choiceOf = (key: string, { choices }: SetupAnswer): Choice | undefined =>
  choices.find((choice) => choiceKey(choice) === key) ?? choices.find((choice) => isSameRest(choice, fromKey(key)))

function stopFrom({ code, facts }: Refusal, counted: CountedForm): Stop {
  const path = typeof facts['field'] === 'string' ? fieldOnScreen(facts['field'], counted) : null
  return { code, facts: path === null ? facts : { ...facts, field: path }, path }
}
