import { field, given, needed } from '#words/refusals/input.ts'
import type { Say } from '#words/wording.ts'

/** What is amiss in a file of bars: the file, its columns, a line. The line is named by whoever says it. */
export const rackFileRefusals: { readonly [code: string]: Say } = {
  'csv-not-text': () => 'A character that no text holds; save the table as CSV text and give that.',
  'csv-not-imported': (facts, w) => `Nothing was taken in: ${w.number(facts.count)} ${facts.count === 1 ? 'thing is' : 'things are'} amiss in the file.`,
  'file-empty': () => 'Nothing stands in the file.',
  'no-bars-in-file': () => 'The file has heads and no bars below them.',
  'too-many-lines': (facts, w) => `${given(facts, w)} lines are too many; give at most ${needed(facts, w)} in one file.`,
  'quotes-broken': () => 'The quotes do not close; a quote inside quotes is written twice.',
  'column-unknown': (facts, w) => `There is no column ${given(facts, w)}; known are ${needed(facts, w)}.`,
  'column-twice': (facts, w) => `This is the ${needed(facts, w)} a second time, after ${given(facts, w)}; keep one of them.`,
  'column-missing': (facts, w) => `There is no column for the ${needed(facts, w)}; add one.`,
  'cells-miscounted': (facts, w) => `It has ${w.text(facts.given)} cells where the heads are ${needed(facts, w)}; a text with the separator in it goes into quotes.`,
  'cell-without-head': (facts, w) => `${given(facts, w)} stands in a column without a head; give the column one, or empty it.`,
  'check-twice': (facts, w) => `The check ${given(facts, w)} began on line ${needed(facts, w)} already; each has one line of its own.`,
  'check-not-begun': (facts, w) => `No line before it begins the check ${given(facts, w)}; the line of a check stands above its looks and readings.`,
  'text-too-long': (facts, w) => `${field(facts, w)}: ${w.text(facts.given)} letters are too many; give at most ${needed(facts, w)}.`,
  'mixed-units': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is not in the unit of the column (${unitOf(facts.needed)}); keep to one unit.`,
  'code-unreadable': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is no code of a label; leave it empty, and the bar gets one.`,
  'code-twice': (facts, w) => `${field(facts, w)}: ${given(facts, w)} stands on line ${needed(facts, w)} already; each bar carries a code of its own.`,
}

const unitOf = (needed: unknown): string =>
  (typeof needed === 'object' && needed !== null && 'unit' in needed && typeof needed.unit === 'string' ? needed.unit : '?')
