import type { CutForm, SetupForm } from '#model/setup-form.ts'
import type { SetupFields } from '#model/setup-record.ts'

const form = (more: Partial<Omit<SetupForm, 'wishes'>> & { wishes?: Partial<SetupForm['wishes']> }): SetupForm => ({
  unit: 'mm', shape: 'block', height: '', offTop: '', proud: '', between: '', along: '', cuts: [], hollows: [], use: 'milling', ...more,
  wishes: { grip: '', air: '', holeAir: '', bedAir: '', gap: '', tolerance: '', ...more.wishes },
})
const hole = (diameter: string, across: string, along: string): CutForm => ({
  kind: 'hole', tool: 'drill', diameter, across, from: 'fixed', along, through: true, depth: '', runThrough: '', pointAngle: '', pitch: '', leadThreads: '',
})

/** Invented demo data. Parts that come back, each with its form as it was typed. */
export const demoParts: { readonly [id: string]: { readonly name: string; readonly note: string; readonly form: SetupForm } } = {
  'demo-part-1': { name: 'Clamp plate', note: 'Faced, nothing else.', form: form({ height: '19', offTop: '6', between: '38', along: '60' }) },
  'demo-part-2': {
    name: 'Clamp plate with two holes', note: 'The holes lie over the bar at the fixed jaw.',
    form: form({ height: '19', offTop: '6', between: '38', along: '60', cuts: [hole('8.5', '6', '10'), hole('8.5', '6', '50')] }),
  },
  'demo-part-3': { name: 'Narrow rib', note: '14 between the jaws: thick bars meet.', form: form({ height: '19', offTop: '6', between: '14', along: '60' }) },
  'demo-part-4': {
    name: 'Inch block, 2 × 3 × 7/8', note: 'Drawn in inches, cut in millimetres.',
    form: form({ unit: 'in', height: '7/8', offTop: '3,0 mm', between: '2', along: '3', wishes: { grip: '1/2', air: '1 mm' } }),
  },
  'demo-part-5': {
    name: 'Slotted bracket', note: 'The slot comes out below, near the moving jaw.',
    form: form({
      height: '25', offTop: '1', between: '50', along: '70',
      cuts: [{ kind: 'slot', depth: '25', overJaw: false, runThrough: '', rect: { x0: '-5', x1: '75', y0: '42', y1: '48' } }],
    }),
  },
  'demo-part-6': { name: 'Pin with a flat', note: 'Round, one bar in the middle.', form: form({ shape: 'round', height: '25', offTop: '4', along: '80' }) },
  'demo-part-7': { name: 'Thin cover', note: '6 thin: exactly one height will do.', form: form({ height: '6', offTop: '0,5', between: '50', along: '80', wishes: { grip: '3' } }) },
  'demo-part-8': {
    name: 'Spacer, end squared', note: 'The left end is cut past the jaw.',
    form: form({ height: '30', offTop: '2', between: '45', along: '100', cuts: [{ kind: 'end', side: 'left', stock: '2' }] }),
  },
  'demo-part-9': {
    name: 'Base with a 16 hole', note: 'Drilled through: low bars let the point into the bed.',
    form: form({ height: '40', offTop: '', between: '60', along: '90', use: 'drilling', cuts: [hole('16', '30', '45')] }),
  },
}

type DemoSetup = Omit<SetupFields, 'form' | 'usedAtIso' | 'retired' | 'partId' | 'bars'> & {
  readonly partId: string
  /** Mates of the pair that was taken. */
  readonly mates: string
  readonly daysAgo: number
}

/** Invented demo data. What was set up lately, so that *same as last time* has something to offer. */
export const demoSetups: readonly DemoSetup[] = [
  { title: 'Clamp plate', operation: 'face', viseId: 'demo-vise-1', partId: 'demo-part-1', mates: 'C', stand: 'on edge', daysAgo: 1 },
  { title: 'Thin cover', operation: 'face both sides', viseId: 'demo-vise-1', partId: 'demo-part-7', mates: 'I10', stand: 'on edge', daysAgo: 3 },
  { title: 'Narrow rib', operation: 'face', viseId: 'demo-vise-1', partId: 'demo-part-3', mates: 'T6', stand: 'on edge', daysAgo: 8 },
  { title: 'Inch block', operation: 'face', viseId: 'demo-vise-2', partId: 'demo-part-4', mates: 'I6', stand: 'on edge', daysAgo: 2 },
  { title: 'Base', operation: 'drill', viseId: 'demo-vise-2', partId: 'demo-part-9', mates: 'I1', stand: 'on edge', daysAgo: 12 },
]
