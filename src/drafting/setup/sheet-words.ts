import { termsFor } from '#words/terms.ts'
import type { Units } from '#model/shop-record.ts'

/** The lettering of a setup drawing. */
export type SheetWords = {
  readonly title: string
  /** The drawing in words, for those who do not see it. */
  readonly description: string
  readonly section: string
  readonly plan: string
  readonly fixedJaw: string
  readonly movingJaw: string
  readonly leftEnd: string
  readonly markedEnd: string
  readonly grip: string
  readonly air: string
  readonly fromJaw: string
  readonly face: string
  readonly step: string
  readonly slot: string
  readonly end: string
}

/** The usual lettering; title and description are about this one setup and come from outside. */
export function sheetWords(title: string, description: string, words: Units['words']): SheetWords {
  return {
    title, description, section: 'Section', plan: 'Plan', fixedJaw: 'fixed jaw', movingJaw: termsFor(words).movingJaw, leftEnd: 'left end', markedEnd: 'marked end',
    grip: 'grip', air: 'clear', fromJaw: 'from fixed jaw', face: 'face', step: 'step', slot: 'slot', end: 'end',
  }
}
