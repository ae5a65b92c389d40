import { readFileSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { rejectionReasons, statuses } from '#model/setup.ts'
import { keyWord } from '#words/key-words.ts'
import { findingWords } from '#words/say-finding.ts'
import { setupFindingWords } from '#words/say-setup-finding.ts'
import { refusalWords } from '#words/say-refusal.ts'
import { statusWords } from '#words/say-place.ts'
import { sumWords } from '#words/say-sum.ts'
import { termsFor } from '#words/terms.ts'
import { highReasonWords, lowReasonWords } from '#words/say-window.ts'

const src = resolve(import.meta.dirname, '..')
const worded = [refusalWords, findingWords, sumWords, statusWords, lowReasonWords, highReasonWords].map((table) => new Set(Object.keys(table)))
const isWorded = (code: string) => worded.some((codes) => codes.has(code)) || keyWord(code, termsFor('US')) !== null

/** Hyphenated texts in the sources that are no codes, each with what it is. */
const noCodes = new Map<string, string>([
  ['cut-bars', 'a calculation'],
  ['cut-plate', 'a calculation'],
  ['profile-window', 'a kind of question about mates'],
  ['turn-over', 'a calculation'],
  ['guard-band', 'a decision rule'],
  ['not-proved', 'a verdict'],
  ['setup-many', 'a calculation'],
  ['seat-elastic', 'a calculation'],
  ['first-start', 'the device that a new shop comes from'],
  ['yes-no', 'how a field lies in its column'],
])

/** Said by `contributorText` inside a sentence; as a finding of its own it belongs to the paper test. */
const insideSentences = new Set(['jaw-lift'])

describe('every code has words', () => {
  const found = ['engine', 'model', 'tasks', 'store', 'server', 'cli', 'web'].flatMap((room) => codesIn(join(src, room), room))

  it('reads the sources at all', () => {
    const codes = new Set(found.map(({ code }) => code))
    // One of each kind, so that a collector that has gone blind is seen: a refusal, a limit, a rejection.
    for (const known of ['not-a-number', 'drill-tip', 'too-low']) expect(codes, known).toContain(known)
  })

  it('words every hyphenated code of engine, model, tasks and store', () => {
    const silent = found.filter(({ code, room }) => ['engine', 'model', 'tasks', 'store'].includes(room) && !isWorded(code) && !noCodes.has(code))
    expect(silent.map(({ code, file }) => `${code} in ${file}`)).toEqual([])
  })

  it('words on the first screen what a choice, its seat, its prediction and its hold can have to say', () => {
    const said = /^src\/engine\/(setup\/([a-z-]+\.ts|(seat|seat-elastic|tilt|hold|prediction)\/)|rack\/(plate-check-wanted|prediction-at)\.ts)/
    const silent = found.filter(({ code, file }) => said.test(file) && Object.hasOwn(findingWords, code) && !Object.hasOwn(setupFindingWords, code) && !insideSentences.has(code))
    expect(found.filter(({ code, file }) => said.test(file) && Object.hasOwn(setupFindingWords, code)).length).toBeGreaterThan(60)
    expect(silent.map(({ code, file }) => `${code} in ${file}`)).toEqual([])
  })

  it('words every refusal thrown or answered at a door', () => {
    const silent = found.filter(({ code, refused }) => refused && !Object.hasOwn(refusalWords, code))
    expect(silent.map(({ code, file }) => `${code} in ${file}`)).toEqual([])
  })

  it('words every reason and status of the answer', () => {
    for (const reason of rejectionReasons) expect(findingWords, reason).toHaveProperty([reason])
    for (const status of statuses) expect(statusWords[status]).not.toBe('')
  })

  it('keeps no words for a refusal nobody makes', () => {
    const used = new Set(found.map(({ code }) => code))
    expect(Object.keys(refusalWords).filter((code) => !used.has(code))).toEqual([])
  })
})

type Found = { readonly code: string; readonly file: string; readonly room: string; readonly refused: boolean }

/** Hyphenated texts in single quotes, and whatever is handed to a Refusal, comments and imports taken away. */
function codesIn(folder: string, room: string): Found[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name)).flatMap((name) => {
    const text = readFileSync(join(folder, name), 'utf8').replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/^\s*\/\/.*$/gm, '').replaceAll(/from '[^']+'|import '[^']+'|import\('[^']+'\)/g, '')
    const refusals = [...text.matchAll(/(?:Refusal|refuse|refused|no)\((?:\d+, )?'([a-z-]+)'/g)].map(([, code]) => ({ code: code!, refused: true }))
    const hyphenated = [...text.matchAll(/'([a-z]+(?:-[a-z]+)+)'/g)].map(([, code]) => ({ code: code!, refused: false }))
    return [...refusals, ...hyphenated].map((one) => ({ ...one, room, file: `src/${room}/${name}` }))
  })
}
