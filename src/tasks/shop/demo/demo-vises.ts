import type { ViseFields } from '#model/vise-record.ts'

/** Invented demo data. Vises of an invented shop. */
export const demoVises: { readonly [id: string]: ViseFields } = {
  'demo-vise-1': {
    name: 'Mill 1, 125 mm', jawWidthMm: 125, openingMm: 150, fittedJawSetId: 'hard', retired: false, note: 'Handle points to the column.', measured: null,
    jawSets: [
      { id: 'hard', name: 'hard, smooth', fixedHeightMm: 45, movingHeightMm: 45, stepHeightMm: null, face: 'smooth' },
      { id: 'soft', name: 'soft, high', fixedHeightMm: 60, movingHeightMm: 60, stepHeightMm: null, face: 'smooth' },
    ],
  },
  'demo-vise-2': {
    name: 'Mill 2, 6 in', jawWidthMm: 152.4, openingMm: 222.25, fittedJawSetId: 'hard', retired: false, note: '', measured: null,
    jawSets: [{ id: 'hard', name: 'hard, smooth', fixedHeightMm: 44.45, movingHeightMm: 44.45, stepHeightMm: null, face: 'smooth' }],
  },
  'demo-vise-3': {
    name: 'Bench mill', jawWidthMm: 80, openingMm: 65, fittedJawSetId: 'hard', retired: false, note: 'Lifts when closed hard.', measured: null,
    jawSets: [{ id: 'hard', name: 'serrated', fixedHeightMm: 24, movingHeightMm: 24, stepHeightMm: null, face: 'serrated' }],
  },
  'demo-vise-4': {
    name: 'Tool room', jawWidthMm: 150, openingMm: 200, fittedJawSetId: 'worn', retired: false, note: 'Two sets were reground one jaw at a time.', measured: null,
    jawSets: [
      { id: 'worn', name: 'hard, reground', fixedHeightMm: 50, movingHeightMm: 47.5, stepHeightMm: null, face: 'smooth' },
      { id: 'cut', name: 'soft, cut down', fixedHeightMm: 48, movingHeightMm: 41, stepHeightMm: null, face: 'smooth' },
      { id: 'step', name: 'with a step', fixedHeightMm: 50, movingHeightMm: 50, stepHeightMm: 42, face: 'smooth' },
    ],
  },
}
