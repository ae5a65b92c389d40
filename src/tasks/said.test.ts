import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { SetupAnswer } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import { calc, type RefusedCase } from '#tasks/calc.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayOffer } from '#words/say-offer.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { sayGiveUp, sayWindow } from '#words/say-window.ts'
import { plainUnits } from '#words/terms.ts'

type Answer = (Partial<SetupAnswer> & Partial<SetupAnswer['window']> & { readonly sum: readonly Sum[] }) | RefusedCase

/** Everything an answer holds for a person, as it is said. */
function sentencesOf(answer: Answer): readonly string[] {
  if ('refused' in answer) return [sayRefusal({ code: answer.refused, facts: answer.facts }, plainUnits)]
  const { choices = [], findings = [], offers = [], sum, window } = answer
  return [
    ...sum.map((one) => saySum(one, plainUnits)).flatMap(({ title, inWords, worked }) => [title, inWords, worked]),
    ...[...findings, ...choices.flatMap((choice) => [...choice.because, ...choice.findings])].map((finding) => sayFinding(finding, plainUnits)),
    ...offers.map((offer) => sayOffer(offer, plainUnits)),
    ...(window ? [sayWindow(window, plainUnits), ...(window.giveUp ? sayGiveUp(window.giveUp, plainUnits) : [])] : []),
  ]
}

describe.each(['window', 'places', 'setup'])('every answer of the worked cases of %s can be said', (name) => {
  const { cases } = JSON.parse(readFileSync(resolve(import.meta.dirname, `../../fixtures/shop/setup/${name}.json`), 'utf8')) as { cases: readonly { id: string }[] }
  const said = (calc(name, cases) as readonly Answer[]).map((answer, at) => ({ id: cases[at]!.id, sentences: sentencesOf(answer) }))

  it('without a fact that is missing, a code that has no words, or a number that is none', () => {
    const amiss = said.flatMap(({ id, sentences }) => sentences.filter((text) => /\?|undefined|NaN|Infinity|null|\[object|Note:|Refused:|\{|\}|^$/.test(text)).map((text) => `${id}: ${text}`))
    expect(amiss).toEqual([])
    expect(said.flatMap(({ sentences }) => sentences).length).toBeGreaterThan(300)
  })
})
