import type { Finding } from '#model/finding.ts'
import type { SetupQuestion } from '#model/setup.ts'

/** Findings that only say that something was not given. */
export const isNotGiven = (code: string): boolean => code in words

const words: { readonly [code: string]: string } = { 'between-not-given': 'between jaws', 'along-not-given': 'along' }

/** What the answer goes without, in the order in which it is asked: `between jaws, along, holes`. */
export function notGiven({ cuts }: Pick<SetupQuestion, 'cuts'>, findings: readonly Finding[]): readonly string[] {
  return [...findings.flatMap(({ code }) => words[code] ?? []), ...(cuts.some(({ kind }) => kind === 'hole') ? [] : ['holes'])]
}
