/** How bars are kept, for the wall by the rack. Common practice, no source. */
export const careWords = {
  title: 'Care of the bars',
  description: 'Six lines on keeping parallels, to hang by the rack.',
  lines: [
    'Wipe dry after every use. Chips and coolant stay nowhere.',
    'A light film of oil before they go back. Hands leave rust.',
    'No foam, no felt, no damp wood: they hold water. Bars do not touch each other.',
    'A burr: flat stone only, laid flat, two strokes. No file, no emery, no wheel.',
    'Never stamp, punch or engrave a ground face. Mark ends only.',
    'Dropped or knocked: put it aside and say so. It is looked at before it carries a part again.',
  ],
} as const
