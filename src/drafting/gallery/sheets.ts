import type { Units } from '#model/shop-record.ts'
import { pictures } from '#drafting/gallery/pictures.ts'
import type { BarCardData } from '#drafting/rack/bar-card.ts'
import type { ShelfData } from '#drafting/rack/shelf.ts'
import type { SetupSheetData } from '#drafting/setup/setup-sheet.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'
import type { ViseCardData } from '#drafting/setup/vise-card.ts'

/** Invented sheets, cards and racks for the gallery. */
export const millimetres: Units = { length: 'mm', decimalMark: '.', words: 'US' }
export const inches: Units = { length: 'in', decimalMark: '.', words: 'US' }

export const setupSheet: SetupSheetData = {
  picture: pictures.inboard, units: millimetres,
  words: sheetWords('Setup sheet, cover plate', 'Cover plate 19 high on pair 35 C in vise 1: section and plan', 'US'),
  scale: 'Scale', stand: 'two bars on edge',
  block: {
    shop: { label: 'Shop', value: 'Demo shop (invented)' }, part: { label: 'Part', value: 'Cover plate 4711' }, operation: { label: 'Operation', value: 'face and drill' },
    code: { label: 'Code', value: '7KQ4M2XP' }, vise: { label: 'Vise', value: 'Mill 1, vise 125' }, jawSet: { label: 'Jaw set', value: 'hard, smooth 45' },
    pair: { label: 'Pair', value: '35 C' }, slot: { label: 'slot', value: 'B4' }, date: { label: 'Date', value: '2025-03-14' }, initials: { label: 'Initials', value: '' },
  },
  numbers: [
    { label: 'seat above the bed', value: '35' }, { label: 'grip', value: '10' }, { label: 'above the jaws', value: '9' }, { label: 'clear of the jaws', value: '3' },
    { label: 'drill tip above the bed', value: '30.9' }, { label: 'match of the pair', value: '1.2 µm' },
  ],
  bars: { heading: 'Bars', lines: ['35 C left at the fixed jaw, 35 C right at the movable jaw.', 'Marked ends to the left.', 'The fixed-side bar stands 10.75 inboard: two 8.5 holes would meet it at the jaw.'] },
  spacer: { heading: 'Keeps the bars in place', lines: ['10.75 between the fixed jaw and the fixed-side bar.'] },
  workStop: { heading: 'Work stop', lines: ['at the', 'distance'] },
  test: { heading: 'Paper test', lines: ['A strip under each corner; tighten, seat with a soft hammer, tighten again. Tick the strips that hold.'] },
  cautions: {
    heading: 'Cautions',
    lines: [
      'Brush the chips out of the vise; air drives them under the bars. Seat the part with a soft hammer, never a hard one on hardened bars or jaws, and do not hit after full tightening.',
      'A bar that can be pushed by hand walks into the cutter: hold it with a spring, or take it out before starting the spindle.',
      'Take the handle off the vise before starting the spindle.',
      'Breaking through is when a drill grabs: ease the feed. No gloves or long sleeves near the spindle.',
      'The instructions of the machine and its supplier, local rules and trained practice go before this list.',
    ],
  },
  notComputed: { heading: 'Not computed', lines: ['holding force (no torque was given), overhang, bending of the part, castings, thin walls.'] },
}

export const viseCard: ViseCardData = {
  title: 'Vise card, mill 1', description: 'What each pair is good for in the vise of mill 1', vise: 'Mill 1, vise 125',
  facts: ['hard jaws, smooth, 45 above the bed', 'Demo shop (invented) · 2025-03-14'],
  headings: { pair: 'pair', slot: 'slot', from: 'finished height from', grip: 'grip', drill: 'largest drill' },
  rows: Array.from({ length: 29 }, (_, i) => {
    const height = 8 + i * 1.25
    return { pair: `${height} ${'ABC'[i % 3]}`, slot: `${'ABCD'[Math.floor(i / 8)]}${(i % 8) + 1}`, from: String(46 - height), grip: String(45 - height), drill: `Ø${Math.floor((height - 2.5) * 3.3)}` }
  }),
  notes: [
    'Finished height: 1 clear of the jaws. Largest drill: 118°, run-through 1.5, tip 1 above the bed.',
    'Wipe bed, bars and part; seat with a soft hammer; take the handle off before starting the spindle.',
  ],
}

export const shelf: ShelfData = {
  title: 'Rack', description: 'All bars standing to scale, lowest first',
  groups: [5, 6, 8, 10, 10, 12, 14, 15, 16, 18, 20, 22, 24, 25, 28, 30, 32, 35, 35, 35, 40, 45, 50].map((heightMm, i) => ({
    id: `bar${i}`, heightMm, thicknessesMm: i % 5 === 4 ? [8] : i % 7 === 3 ? [10, 10, 10, 10] : [6, 6], slot: `${'ABC'[Math.floor(i / 8)]}${(i % 8) + 1}`, away: i % 6 === 5,
  })),
  missingMm: [26, 38, 42],
}

export const inchShelf: ShelfData = {
  ...shelf,
  groups: [8, 10, 12, 14, 16, 18, 20, 22, 24, 26].map((sixteenths, i) => ({ id: `bar${i}`, heightMm: (sixteenths / 16) * 25.4, thicknessesMm: [6.35, 6.35], slot: `C${i + 1}`, away: i === 4 })),
  missingMm: [(11 / 16) * 25.4],
}

export const barCard: BarCardData = { title: 'Bar 35 C', description: 'Height 35.002, thickness 6, length 150', label: '35 C', heightMm: 35.002, thicknessMm: 6, lengthMm: 150, markedEnd: 'marked end' }
