import { keyWord } from '#words/key-words.ts'
import { makingFields } from '#words/making-fields.ts'
import type { Terms } from '#words/terms.ts'

/**
 * Where in the input something is amiss, as said to a person: `cuts[0].diameterMm` → `hole 1, diameter`.
 *
 * Lists are counted from 1, each in its own order. A name nobody has worded stands in quotes as it was given.
 */
export function sayField(path: string, terms: Terms): string {
  if (path === '') return 'the input'
  const whole = Object.hasOwn(makingFields, path) ? makingFields[path]! : null
  if (whole !== null) return whole
  const steps = path.split('.')
  const key = steps.at(-1)!
  return steps.map((step, at) => sayStep(step, at, key, terms)).filter((word) => word !== '').join(', ')
    .replace(/^(part), (height|diameter|shape|hollows)$/, '$1 $2')
}

const holeKeys = new Set(['x', 'y', 'nearEdge', 'leftEnd', 'diameter', 'across', 'from', 'tool', 'through', 'pointAngle', 'pitch', 'leadThreads'])
const listWords: { readonly [list: string]: string } = {
  cuts: 'cut', holes: 'hole', bars: 'bar', hollows: 'hollow', jawSets: 'jaw set', ways: 'way', only: 'bar', readings: 'reading', straps: 'strap', changes: 'change', pairs: 'pair', windows: 'window', sizes: 'size', setups: 'setup', stages: 'stage', owned: 'owned height', lengths: 'stock length', plates: 'stock plate', steels: 'steel', machines: 'machine', measured: 'measured stock', done: 'step',
}

function sayStep(step: string, at: number, key: string, terms: Terms): string {
  const inList = /^([A-Za-z]*)\[(\d+)\]$/.exec(step)
  if (inList) {
    const [, list = '', index = '0'] = inList
    const isHole = list === 'cuts' && holeKeys.has(key.replace(/(Mm|Deg)$/, ''))
    if (list === 'vises') return `${terms.vise} ${Number(index) + 1}`
    return `${isHole ? 'hole' : Object.hasOwn(listWords, list) ? listWords[list]! : 'entry'} ${Number(index) + 1}`
  }
  if (at === 0 && step === 'wishes' && key !== 'wishes') return ''
  return keyWord(step, terms) ?? `'${step.slice(0, 60)}'`
}
