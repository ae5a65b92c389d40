import type { ChuckPictureData } from '#drafting/setup/chuck-picture.ts'
import type { ChuckSheetData } from '#drafting/setup/chuck-sheet.ts'
import type { ChuckAnswer } from '#engine/setup/chuck/answer-chuck.ts'
import type { Travel } from '#engine/setup/chuck/chuck.ts'
import type { Bar } from '#model/bar.ts'
import { withUnit, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { cautionsFor } from '#words/cautions.ts'

export const sideWords = { left: 'left end', right: 'right end', front: 'front', back: 'back' } as const

/** A part on the chuck, what the calculation says of it, and the bars taken, one for each side in the order of the sides. */
export type ChuckTold = {
  readonly part: { readonly betweenJawsMm: number; readonly alongJawsMm: number; readonly heightMm: number }
  readonly answer: ChuckAnswer
  readonly travel: Travel
  readonly taken: readonly Bar[]
}

/** As drawn on the screen and on the sheet; a side without a bar has one as long as itself and as low as may be. */
export function chuckPictureFrom({ part, answer, travel, taken }: ChuckTold, labelOf: (id: string) => string): ChuckPictureData {
  return {
    title: 'On the magnetic chuck', description: 'The part blocked in, from the side and from above.',
    acrossMm: part.betweenJawsMm, alongMm: part.alongJawsMm, heightMm: part.heightMm,
    travel, travels: `travel ${travel}`, chuck: 'magnetic chuck',
    bars: answer.order.map((side, k) => {
      const bar = taken[k], sideMm = side === 'left' || side === 'right' ? part.betweenJawsMm : part.alongJawsMm
      return bar === undefined
        ? { side, longMm: sideMm, wideMm: Math.min(25, 1.2 * part.betweenJawsMm), upMm: answer.lowMm, called: '' }
        : { side, longMm: bar.lengthMm, wideMm: bar.heightMm, upMm: bar.thicknessMm, called: labelOf(bar.id) }
    }),
  }
}

type Asked = {
  readonly told: ChuckTold; readonly units: Units
  readonly labelOf: (id: string) => string; readonly slotOf: (ids: readonly string[]) => string; readonly codeOf: (id: string) => string; readonly trustOf: (bar: Bar) => string
  readonly id: string; readonly shop: string; readonly part: string; readonly operation: string; readonly day: string; readonly initials: string
}

/** Everything the sheet of a part on the chuck says, worded. */
export function chuckSheetFrom({ told, labelOf, slotOf, codeOf, trustOf, units, id, shop, part: named, operation, day, initials }: Asked): ChuckSheetData {
  const { part, answer, travel, taken } = told, length = (mm: number) => wordLength(mm, units)
  const size = [part.alongJawsMm, part.betweenJawsMm, part.heightMm].map(length).join(' × ')
  const cellsOf = (bar: Bar) => {
    const marked = bar.thicknessStanding === 'marked' ? ' marked' : ''
    return [labelOf(bar.id), slotOf([bar.id]), codeOf(bar.id), `${length(bar.thicknessMm)}${marked}`, length(bar.lengthMm), trustOf(bar)]
  }
  const lookFirst = taken.some(({ trust }) => trust === 'look first') ? ['look first' as const] : []
  return {
    title: `Chuck sheet: ${named || size}`, description: `${size}, blocked in by bars that lie flat.`,
    heading: named || size, under: `On the magnetic chuck, travel ${travel}`, picture: chuckPictureFrom(told, labelOf), scale: 'Scale',
    numbers: [
      { label: 'Part, along × across × high', value: `${size} ${units.length}` },
      { label: 'Bars that serve, thick', value: `${length(answer.lowMm)} to ${withUnit(answer.highMm, units)}` },
    ],
    heads: ['In this order', 'Bar', 'Slot', 'Code', `Thick, ${units.length}`, `Long, ${units.length}`, 'Trust'],
    rows: answer.order.map((side, k) => {
      const bar = taken[k]
      return [`${k + 1}  ${sideWords[side]}`, ...(bar === undefined ? ['', '', '', '', '', 'no bar taken'] : cellsOf(bar))]
    }),
    blocks: [
      { heading: 'How they lie', lines: [
        'Flat, tight against the part, across the poles; lower than its top all round. Sides 1 and 2 take the travel: cover them first.',
        'Switch the chuck on, then try part and bars by hand: nothing may move.',
      ] },
      { heading: 'Afterwards', lines: ['Demagnetise the bars before they go back to the rack: chips stick to magnetised bars.'] },
      { heading: 'Cautions', lines: cautionsFor(new Set([...lookFirst, ...answer.situations]), units) },
      { heading: 'What this sheet leaves open', lines: ['Not computed: holding force of the chuck, how far thin work springs back.'] },
    ],
    code: { label: 'Code', value: id.slice(0, 8) },
    foot: {
      shop: { label: 'Shop', value: shop }, part: { label: 'Part', value: named }, operation: { label: 'Operation', value: operation },
      date: { label: 'Date', value: day }, initials: { label: 'Initials', value: initials },
    },
  }
}
