import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Finding } from '#model/finding.ts'
import type { Facts } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { calc } from '#tasks/calc.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

type Step = { readonly findings: readonly Finding[] }
type Answer = {
  readonly refused?: string
  readonly facts?: Facts
  readonly sum?: readonly Sum[]
  readonly meaning?: string
  readonly tellApart?: readonly { readonly cause: string; readonly test: string; readonly remedy: string }[]
  readonly findings?: readonly (Finding | { readonly code: string; readonly index: number })[]
  readonly orders?: readonly { readonly because: readonly Finding[]; readonly steps: readonly Step[] }[]
}

/** Everything an answer holds for a person, as it is said. */
function sentencesOf(answer: Answer): readonly string[] {
  if (answer.refused !== undefined) return [sayRefusal({ code: answer.refused, facts: answer.facts! }, plainUnits)]
  const say = (code: string, facts: Facts = {}) => sayFinding({ code, facts }, plainUnits)
  const { sum = [], meaning, tellApart = [], findings = [], orders = [] } = answer
  return [
    ...sum.map((one) => saySum(one, plainUnits)).flatMap(({ title, inWords, worked }) => [title, inWords, worked]),
    ...(meaning === undefined ? [] : [say(meaning, answer as unknown as Facts)]),
    ...tellApart.flatMap(({ cause, test, remedy }) => [say(cause), say(test), say(remedy)]),
    ...findings.map((one) => ('index' in one ? say(one.code, { index: one.index }) : say(one.code, one.facts))),
    ...orders.flatMap(({ because, steps }) => [...because, ...steps.flatMap((step) => step.findings)]).map(({ code, facts }) => say(code, facts)),
  ]
}

const fixtures = (name: string): readonly unknown[] =>
  (JSON.parse(readFileSync(resolve(import.meta.dirname, `../../fixtures/shop/setup/${name}.json`), 'utf8')) as { readonly cases: readonly unknown[] }).cases

const vise = { jawHeightMm: 45, openingMm: 60 }, finish = { lengthMm: 80, widthMm: 40, heightMm: 25 }
const cases: { readonly [name: string]: readonly unknown[] } = {
  row: [...fixtures('row'), { vises: [], pairs: [] }, { vises: [{ bedUm: 1 }], pairs: [{ id: 'A', meanMm: 3, matchUm: -1 }] },
    { vises: [{ bedUm: 1 }], pairs: [{ id: 'A', meanMm: 3 }], longBar: { apartMm: 200, lengthMm: 300 } }, { vises: [{ bedUm: 1 }, { bedUm: 2 }], pairs: [{ id: 'A', meanMm: 3 }, { id: 'B', meanMm: 3 }], longBar: { apartMm: 200, lengthMm: 300 } }],
  paper: fixtures('paper'), table: fixtures('table'), chuck: fixtures('chuck'),
  fill: [{ targetMm: 21, sizes: [{ id: 'A', sizeMm: 8 }, { id: 'B', sizeMm: 13 }] }, { targetMm: 21, sizes: [] }, { targetMm: 21 }],
  'setup-many': [{ windows: [{ lowMm: 5, highMm: 9 }, { lowMm: 8, highMm: 12 }] }, { windows: [] }],
  guilty: [{ y1Um: 9, y2Um: 0, y3Um: 1, y4Um: 30, uUm: 0.1 }, { y1Um: 9, y2Um: 0, y3Um: 1, y4Um: 3, uUm: 9 }, { y1Um: 9, y2Um: 0, y3Um: 1 }, { y1Um: -9, y2Um: 0, y3Um: -1, uUm: 0.1 }, { y1Um: 9, y2Um: 0, y3Um: 1, uUm: -1 }],
  block: [
    { vise, raw: { lengthMm: 84, widthMm: 43, heightMm: 28 }, finish, heights: [{ id: 'P', heightMm: 40 }] }, { vise, raw: { lengthMm: 84, widthMm: 56, heightMm: 55 }, finish, rodMm: 20 },
    { vise, raw: { lengthMm: 300, widthMm: 43, heightMm: 10 }, finish: { lengthMm: 290, widthMm: 40, heightMm: 9 } }, { vise, raw: finish, finish: { ...finish, widthMm: 50 } },
  ],
}

describe.each(Object.entries(cases))('every answer of %s can be said', (name, given) => {
  it('without a fact that is missing, a code that has no words, or a number that is none', () => {
    const said = (calc(name, given) as readonly Answer[]).flatMap(sentencesOf)
    expect(said.length).toBeGreaterThan(given.length)
    expect(said.filter((text) => /\?|undefined|NaN|Infinity|null|\[object|Note:|Refused:|\{|\}|^$|Mm\b|Um\b/.test(text))).toEqual([])
  })
})
